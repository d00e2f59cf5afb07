package dev.dogleg.plan;

import dev.dogleg.schedule.DayModel;
import dev.dogleg.schedule.StepTerms;

/**
 * How many water stops are still to come at least, where every visit that counts must be served.
 *
 * <p>Maintainers: s fillings hold s tanks; what was used since the last stop and what is still to
 * be used must fit into one filling more than there are stops to come.
 */
final class TankNeed {
  private final int n;
  private final StepTerms terms;
  private final boolean[] must;
  private final int day;

  /**
   * For days below a value.
   *
   * @param limit a value of this or more is of no interest
   */
  TankNeed(DayModel model, DayValue value, long limit) {
    n = model.size();
    terms = model.steps();
    must = new boolean[n];
    for (int j = 0; j < n; j++) {
      must[j] = terms.water() && limit <= DayValue.BOOKED && value.leftOut(j) >= DayValue.BOOKED;
    }
    day = terms.water() ? stops(new VisitSets(n), 0, 0, 0) : 0;
  }

  /** {@return stops of a whole day, at least; one more than may be where it is impossible} */
  int ofDay() {
    return day;
  }

  /** {@return stops to come, at least, after a set with so much used since the last stop} */
  int stops(VisitSets sets, int set, int fresh, int grey) {
    if (!terms.water()) {
      return 0;
    }
    long freshToUse = fresh;
    long greyToMake = grey;
    for (int j = 0; j < n; j++) {
      if (must[j] && !sets.holds(set, j)) {
        freshToUse += terms.fresh(j);
        greyToMake += terms.grey(j);
      }
    }
    return fillings(freshToUse, greyToMake) - 1;
  }

  private int fillings(long fresh, long grey) {
    int fillings = 1;
    while (fillings <= terms.mostStops() + 1 && !terms.lasts(fresh, grey, fillings)) {
      fillings++;
    }
    return fillings;
  }

  /** {@return stops to come, at least, after one made when a set of the first visits was served} */
  int afterStop(int set) {
    long fresh = 0;
    long grey = 0;
    for (int j = 0; j < n; j++) {
      if (must[j] && (set >>> j & 1) == 0) {
        fresh += terms.fresh(j);
        grey += terms.grey(j);
      }
    }
    return fillings(fresh, grey) - 1;
  }

  /** {@return whether so many stops are enough for having served a set} */
  boolean enough(int stops, int set) {
    long fresh = 0;
    long grey = 0;
    for (int rest = set; rest != 0; rest &= rest - 1) {
      int j = Integer.numberOfTrailingZeros(rest);
      fresh += terms.fresh(j);
      grey += terms.grey(j);
    }
    return terms.lasts(fresh, grey, stops + 1);
  }
}
