package dev.dogleg.audit;

import dev.dogleg.itinerary.DayChoice;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.itinerary.WeekDay;
import dev.dogleg.itinerary.WeekRequest;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The sets of bookings that the audit tried itself, with what each costs on a kind of van-day,
 * extra prices included.
 */
final class TriedSets {
  private final List<OneSet> sets = new ArrayList<>();
  private int size = Integer.MAX_VALUE;
  private boolean all = true;

  /**
   * A set.
   *
   * @param kind kind of van-day
   * @param bookings by number
   * @param costSixtieths least cost of a day that serves them and nobody else, with the prices of
   *     the choices
   */
  record OneSet(int kind, BitSet bookings, long costSixtieths) {}

  /** What a van-day asks: van-days of one such answer are tried once. */
  private record Asked(int kind, DayRequest request, List<Long> extra) {}

  private TriedSets() {}

  /**
   * Tries what the work allows.
   *
   * @param request the week
   * @param bookings its bookings by number
   * @param kinds kinds of van-days
   * @param work seconds of days that may be looked at, shared by the van-days
   */
  static TriedSets of(
      WeekRequest request, List<WeekBooking> bookings, List<List<Integer>> kinds, long work) {
    TriedSets tried = new TriedSets();
    Map<Asked, SetCosts.Tried> known = new HashMap<>();
    long share = work / Math.max(1, request.days().size());
    for (int kind = 0; kind < kinds.size(); kind++) {
      for (int day : kinds.get(kind)) {
        List<Integer> numbers = new ArrayList<>();
        Asked asked = asked(request, bookings, kind, day, numbers);
        if (!known.containsKey(asked)) {
          known.put(asked, new SetCosts(asked.request).upTo(share));
          tried.take(asked, numbers, known.get(asked));
        }
      }
    }
    return tried;
  }

  private static Asked asked(
      WeekRequest request, List<WeekBooking> bookings, int kind, int day, List<Integer> numbers) {
    List<Visit> visits = new ArrayList<>();
    List<Long> extra = new ArrayList<>();
    for (int i = 0; i < bookings.size(); i++) {
      for (DayChoice choice : bookings.get(i).choices()) {
        if (choice.day() == day) {
          numbers.add(i);
          visits.add(WeekRows.booked(choice.visit()));
          extra.add(choice.extraSixtieths());
        }
      }
    }
    WeekDay vanDay = request.days().get(day);
    DayRequest asked =
        new DayRequest(
            vanDay.shift(),
            visits.size() > DayRequest.MOST_VISITS ? List.of() : visits,
            vanDay.travel(),
            request.prices(),
            vanDay.terms(),
            request.seed(),
            1);
    return new Asked(kind, asked, extra);
  }

  private void take(Asked asked, List<Integer> numbers, SetCosts.Tried found) {
    boolean none = asked.request.visits().size() < numbers.size();
    all &= found.all() && !none;
    size = Math.min(size, none ? 0 : found.all() ? Integer.MAX_VALUE : found.size());
    found
        .bySet()
        .forEach(
            (mask, cost) -> {
              BitSet set = new BitSet();
              long sum = cost;
              for (long rest = mask; rest != 0; rest &= rest - 1) {
                int local = Long.numberOfTrailingZeros(rest);
                set.set(numbers.get(local));
                sum += asked.extra.get(local);
              }
              sets.add(new OneSet(asked.kind, set, sum));
            });
  }

  List<OneSet> sets() {
    return sets;
  }

  /** {@return whether every set that a van-day can serve was tried} */
  boolean all() {
    return all;
  }

  /** {@return up to how many bookings every set was tried, on each van-day} */
  int size() {
    return size;
  }
}
