package dev.dogleg.plan;

import dev.dogleg.schedule.DayModel;

/**
 * A quick bound for days of many visits: each visit still to serve is reached by its cheapest leg
 * or left out.
 */
final class NearestBound implements CompletionBound {
  private final long[] least;
  private final long home;
  private final CountBound count;
  private final long day;

  NearestBound(DayModel model, DayValue value, LeastLegs legs) {
    int n = model.size();
    count = new CountBound(model, legs);
    least = new long[n];
    long sum = 0;
    long lastLeg = DayValue.NONE;
    for (int j = 0; j < n; j++) {
      least[j] = value.leftOut(j);
      for (int i = 0; i <= n; i++) {
        least[j] = Math.min(least[j], legs.price(i, j));
      }
      sum += least[j];
      lastLeg = Math.min(lastLeg, legs.price(j, model.end()));
    }
    home = lastLeg;
    day = Math.min(value.allLeftOut(), sum + (n == 0 ? 0 : home));
  }

  @Override
  public long after(VisitSets sets, int set, int last, boolean taken, int earliest) {
    long sum = home;
    for (int j = 0; j < least.length; j++) {
      if (!sets.holds(set, j)) {
        sum += least[j];
      }
    }
    return Math.max(sum, count.after(sets, set, taken, earliest));
  }

  @Override
  public int latest(VisitSets sets, int set, int last) {
    return Integer.MAX_VALUE;
  }

  @Override
  public long ofDay() {
    return day;
  }
}
