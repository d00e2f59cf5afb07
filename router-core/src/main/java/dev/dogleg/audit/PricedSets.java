package dev.dogleg.audit;

import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.itinerary.WeekCertificate.Bound;
import dev.dogleg.itinerary.WeekCertificate.Cut;
import dev.dogleg.itinerary.WeekRequest;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;

/**
 * What the prices of a bound come to, in exact whole numbers.
 *
 * <p>Every method throws {@link ArithmeticException} where a number is no long.
 */
final class PricedSets {
  private final List<WeekBooking> bookings;
  private final List<List<Integer>> kinds;

  PricedSets(WeekRequest request, List<List<Integer>> kinds) {
    this.bookings =
        request.bookings().stream().sorted(Comparator.comparing(WeekBooking::id)).toList();
    this.kinds = kinds;
  }

  /** {@return bookings by number} */
  List<WeekBooking> bookings() {
    return bookings;
  }

  /** What leaving a booking out costs in a bound, in parts. */
  long left(Bound bound, int booking) {
    WeekBooking one = bookings.get(booking);
    long objective = bound.counting() ? (one.counted() ? 1 : 0) : one.leftOutSixtieths();
    long left = Math.multiplyExact(objective, bound.parts());
    return one.counted() ? Math.addExact(left, bound.count()) : left;
  }

  /** Whether a booking may be left out of a week within a limit, but for what a part says. */
  boolean mayBeLeft(Bound bound, int limit, int booking) {
    return bound.counting() || limit > 0 || !bookings.get(booking).counted();
  }

  /** The bound that the prices and the least reduced costs give, in parts. */
  long sum(Bound bound, int limit) {
    long sum = -Math.multiplyExact(bound.count(), (long) limit);
    for (long price : bound.cover()) {
      sum = Math.addExact(sum, price);
    }
    for (Cut cut : bound.cuts()) {
      sum = Math.subtractExact(sum, cut.price());
    }
    for (int kind = 0; kind < kinds.size(); kind++) {
      long many = kinds.get(kind).size();
      sum = Math.addExact(sum, Math.multiplyExact(bound.least().get(kind), many));
    }
    return sum;
  }

  /** The reduced cost of a set of bookings: its cost less the prices of a bound, in parts. */
  static long reduced(Bound bound, BitSet set, long costSixtieths) {
    long reduced = bound.counting() ? 0 : Math.multiplyExact(costSixtieths, bound.parts());
    for (int i = set.nextSetBit(0); i >= 0; i = set.nextSetBit(i + 1)) {
      reduced = Math.subtractExact(reduced, bound.cover().get(i));
    }
    for (Cut cut : bound.cuts()) {
      int held = set.get(cut.first()) ? 1 : 0;
      held += set.get(cut.second()) ? 1 : 0;
      held += set.get(cut.third()) ? 1 : 0;
      reduced = held >= 2 ? Math.addExact(reduced, cut.price()) : reduced;
    }
    return reduced;
  }

  /** What lies between a bound and a week of the objective {@code most}, in parts. */
  static long room(Bound bound, long most) {
    return Math.subtractExact(Math.multiplyExact(most, bound.parts()), bound.sum());
  }
}
