package dev.dogleg.audit;

import dev.dogleg.itinerary.DayChoice;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.itinerary.WeekDay;
import dev.dogleg.itinerary.WeekRequest;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * The sets of bookings that cost less than they must, as far as the audit tried them itself;
 * smaller sets first, on each van-day as far as its share of the work goes.
 *
 * <p>Maintainers: a set of which simple bounds say that it costs enough is passed over; only others
 * are tried second by second.
 */
final class TriedSets {
  private final Need need;
  private final List<OneSet> sets = new ArrayList<>();
  private int size = Integer.MAX_VALUE;

  /**
   * A set.
   *
   * @param kind kind of van-day
   * @param bookings by number
   * @param costSixtieths least cost of a day that serves them and nobody else, with the prices of
   *     the choices
   */
  record OneSet(int kind, BitSet bookings, long costSixtieths) {}

  /** Says what a set must cost. */
  interface Need {
    /**
     * What a set must cost.
     *
     * @param kind kind of van-day
     * @param bookings by number
     * @param known it is known to cost no less
     * @param work receives the steps this takes
     * @return sixtieths, {@code known} or more; {@link DaySeconds#NEVER} where no day may serve it
     */
    long of(int kind, BitSet bookings, long known, WorkLeft work);
  }

  /** What a van-day asks: van-days of one such answer are tried once. */
  private record Asked(int kind, DayRequest request, List<Integer> numbers, List<Long> extra) {
    BitSet bookings(long set) {
      BitSet bookings = new BitSet();
      for (long rest = set; rest != 0; rest &= rest - 1) {
        bookings.set(numbers.get(Long.numberOfTrailingZeros(rest)));
      }
      return bookings;
    }

    long extra(long set) {
      long sum = 0;
      for (long rest = set; rest != 0; rest &= rest - 1) {
        sum += extra.get(Long.numberOfTrailingZeros(rest));
      }
      return sum;
    }
  }

  private TriedSets(Need need) {
    this.need = need;
  }

  /**
   * Tries what the work allows.
   *
   * @param request the week
   * @param bookings its bookings by number
   * @param kinds kinds of van-days
   * @param need what a set must cost
   * @param work steps
   */
  static TriedSets of(
      WeekRequest request,
      List<WeekBooking> bookings,
      List<List<Integer>> kinds,
      Need need,
      long work) {
    TriedSets tried = new TriedSets(need);
    Set<Asked> vanDays = new LinkedHashSet<>();
    for (int kind = 0; kind < kinds.size(); kind++) {
      for (int day : kinds.get(kind)) {
        Asked asked = asked(request, bookings, kind, day);
        if (asked.request.visits().size() < asked.numbers.size()) {
          tried.size = 0;
        }
        vanDays.add(asked);
      }
    }
    WorkLeft left = new WorkLeft(work);
    int to = vanDays.size();
    // What smaller ones leave over is for larger ones.
    List<Asked> rising = new ArrayList<>(vanDays);
    rising.sort(Comparator.comparingInt(asked -> asked.numbers.size()));
    for (Asked asked : rising) {
      WorkLeft share = left.share(to);
      tried.size = Math.min(tried.size, tried.upTo(asked, share));
      left.back(share);
      to--;
    }
    return tried;
  }

  private static Asked asked(WeekRequest request, List<WeekBooking> bookings, int kind, int day) {
    List<Integer> numbers = new ArrayList<>();
    List<Visit> visits = new ArrayList<>();
    List<Long> extra = new ArrayList<>();
    for (int i = 0; i < bookings.size(); i++) {
      for (DayChoice choice : bookings.get(i).choices()) {
        if (choice.day() == day) {
          numbers.add(i);
          visits.add(choice.visit().mustServe());
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
    return new Asked(kind, asked, numbers, extra);
  }

  /** Up to which size the sets of a van-day were tried; the greatest number where all were. */
  private int upTo(Asked asked, WorkLeft work) {
    RoomTerms terms = RoomTerms.of(asked.request);
    DaySeconds day = new DaySeconds(asked.request);
    LeastDay least = new LeastDay(asked.request, terms, day);
    SetSweep sweep = new SetSweep(asked.request, least, work);
    SetSearch search = new SetSearch(asked.request, terms, day, least, work);
    int whole = 0;
    while (!work.spent()) {
      sweep.next((set, cost) -> look(asked, set, cost, search, work));
      if (sweep.done()) {
        return Integer.MAX_VALUE;
      }
      whole += work.spent() ? 0 : 1;
    }
    return whole;
  }

  private void look(Asked asked, long set, long least, SetSearch search, WorkLeft work) {
    work.spend(30);
    long extra = asked.extra(set);
    BitSet bookings = asked.bookings(set);
    long known = least + extra;
    long must = need.of(asked.kind, bookings, known, work);
    if (must > known && !work.spent()) {
      long cost = search.least(set, must >= DaySeconds.NEVER ? must : must - extra);
      if (!work.spent() && cost < DaySeconds.NEVER) {
        sets.add(new OneSet(asked.kind, bookings, cost + extra));
      }
    }
  }

  /** {@return sets that cost less than they must, on any van-day} */
  List<OneSet> sets() {
    return sets;
  }

  /** {@return whether every set that a van-day can serve was tried} */
  boolean all() {
    return size == Integer.MAX_VALUE;
  }

  /** {@return up to how many bookings every set was tried, on each van-day} */
  int size() {
    return size;
  }
}
