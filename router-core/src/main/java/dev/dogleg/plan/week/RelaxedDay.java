package dev.dogleg.plan.week;

import dev.dogleg.itinerary.BreakRule;
import dev.dogleg.itinerary.DayRule;
import dev.dogleg.itinerary.DayShift;
import dev.dogleg.itinerary.Prices;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WaterPlace;
import dev.dogleg.time.TimeWindow;
import dev.dogleg.travel.TravelTimes;
import java.util.Arrays;
import java.util.List;

/**
 * A kind of van-day made easier, so that partial days are few numbers: what it says is never dearer
 * and never less possible than {@code docs/TIMING.md} and {@code docs/WEEK.md}.
 *
 * <p>A partial day is a <i>run</i> {@code (a, b, c)}: ready to leave its last door at a second of
 * {@code a..b} for the cost {@code c} (the start of the day slides along), later for the waiting
 * since {@code b}. Made easier: durations are rounded down ({@link RelaxedLegs}); several windows
 * are one from the first to the last; of the rules only services count, from the shortest to the
 * longest; water is left away (but where it may be taken, waiting is free, because a water stop may
 * take its place); waiting never costs more than driving (so that lingering at a door pays only
 * where the drive gets shorter).
 */
final class RelaxedDay {
  /** Receives a partial day. */
  interface RunSink {
    /** Ready in {@code a..b} at cost {@code c}, with the break taken or not. */
    void run(int a, int b, long c, boolean taken);
  }

  /** Cost of a day that cannot be. */
  static final long NEVER = Long.MAX_VALUE / 4;

  final int n;
  final int from;
  final int latestEnd;
  final boolean hasBreak;
  final RelaxedLegs legs;
  final int[] service;
  private final int[] longest;
  final int[] open;
  final int[] close;
  final int[] doneBy;
  final int[] leaveBy;
  final boolean[] first;
  final int[] home;
  private final int breakLength;
  private final int breakFrom;
  private final int breakTo;
  private final int shiftEnd;
  private final long driven;
  private final long waitPrice;
  private final int kilometre;
  private final int[] place;
  private final long waited;
  private final long overtime;
  private final long endPrice;

  RelaxedDay(VanKind kind, Prices prices) {
    n = kind.size();
    DayShift shift = kind.day().shift();
    from = shift.hours().fromSeconds();
    shiftEnd = shift.hours().toSeconds();
    latestEnd = shift.latestEndSeconds();
    hasBreak = shift.breakRule().isPresent();
    breakLength = shift.breakRule().map(BreakRule::lengthSeconds).orElse(0);
    breakFrom = shift.breakRule().map(rule -> rule.startWithin().fromSeconds()).orElse(0);
    breakTo = shift.breakRule().map(rule -> rule.startWithin().toSeconds()).orElse(0);
    driven = Prices.SIXTIETHS_PER_DRIVE_SECOND;
    boolean water =
        kind.day().terms().water().isPresent() && kind.day().terms().water().get().most() > 0;
    waited = water ? 0 : Math.min(driven, prices.waitingMinuteSeconds());
    overtime = prices.overtimeMinuteSeconds();
    endPrice = prices.endMinuteSeconds();
    kilometre = prices.kilometreSeconds();
    waitPrice = prices.waitingMinuteSeconds();
    place = new int[n + 2];
    place[n] = shift.startPlace();
    place[n + 1] = shift.endPlace();
    service = new int[n];
    longest = new int[n];
    open = new int[n];
    close = new int[n];
    doneBy = new int[n];
    leaveBy = new int[n];
    first = new boolean[n];
    for (int j = 0; j < n; j++) {
      Visit visit = kind.visit(j);
      place[j] = visit.place();
      service[j] = leastService(visit, kind);
      longest[j] = longestService(visit, kind);
      first[j] = visit.first();
      TimeWindow lastVan = visit.vanWithin().get(visit.vanWithin().size() - 1);
      TimeWindow lastArrival = visit.arriveWithin().get(visit.arriveWithin().size() - 1);
      open[j] =
          Math.max(
              visit.arriveWithin().get(0).fromSeconds(), visit.vanWithin().get(0).fromSeconds());
      doneBy[j] = Math.min(visit.doneBySeconds(), lastVan.toSeconds());
      leaveBy[j] = Math.min(latestEnd, lastVan.toSeconds());
      close[j] = Math.min(lastArrival.toSeconds(), doneBy[j] - service[j]);
    }
    int[] wells =
        water
            ? kind.day().terms().water().get().places().stream()
                .mapToInt(WaterPlace::place)
                .toArray()
            : new int[0];
    legs = new RelaxedLegs(kind.day().travel(), place, n, wells, from, latestEnd, kilometre);
    home = homeSeconds();
  }

  /**
   * Least seconds from each door home, by way of other visits where that is shorter or the only
   * way.
   */
  private int[] homeSeconds() {
    int[] seconds = new int[n];
    for (int j = 0; j < n; j++) {
      seconds[j] = legs.spanEnds(j, n + 1) == null ? Integer.MAX_VALUE / 4 : legs.least(j, n + 1);
    }
    boolean shorter = true;
    while (shorter) {
      shorter = false;
      for (int j = 0; j < n; j++) {
        for (int k = 0; k < n; k++) {
          if (legs.spanEnds(j, k) != null
              && legs.least(j, k) + service[k] + seconds[k] < seconds[j]) {
            seconds[j] = legs.least(j, k) + service[k] + seconds[k];
            shorter = true;
          }
        }
      }
    }
    return seconds;
  }

  private static int longestService(Visit visit, VanKind kind) {
    int longest = visit.serviceSeconds();
    int changeovers = 0;
    for (DayRule rule : kind.day().terms().rules()) {
      if (rule instanceof DayRule.PlaceMinutes minutes && minutes.visits().contains(visit.id())) {
        int changed = (int) (((long) longest * minutes.timesThousandths() + 500) / 1000);
        longest = Math.max(longest, changed + minutes.plusSeconds());
      } else if (rule instanceof DayRule.Changeover over && over.to().contains(visit.id())) {
        changeovers += over.seconds();
      }
    }
    return longest + changeovers;
  }

  private static int leastService(Visit visit, VanKind kind) {
    int least = visit.serviceSeconds();
    for (DayRule rule : kind.day().terms().rules()) {
      if (rule instanceof DayRule.PlaceMinutes minutes && minutes.visits().contains(visit.id())) {
        int changed = (int) (((long) least * minutes.timesThousandths() + 500) / 1000);
        least = Math.max(0, Math.min(least, changed + minutes.plusSeconds()));
      }
    }
    return least;
  }

  /** The direct legs of a day with water places as further nodes. */
  RelaxedLegs legsBy(TravelTimes travel, List<WaterPlace> wells) {
    int[] nodes = Arrays.copyOf(place, n + 2 + wells.size());
    for (int w = 0; w < wells.size(); w++) {
      nodes[n + 2 + w] = wells.get(w).place();
    }
    return new RelaxedLegs(travel, nodes, n, new int[0], from, latestEnd, kilometre);
  }

  /** {@return price of a second of driving} */
  long driven() {
    return driven;
  }

  /** {@return price of a second of waiting, not above that of driving} */
  long waited() {
    return Math.min(driven, waitPrice);
  }

  /** {@return earliest start of the break} */
  int breakFrom() {
    return breakFrom;
  }

  /** {@return latest start of the break} */
  int breakTo() {
    return breakTo;
  }

  /** {@return price of driving so many seconds} */
  long driveCost(int seconds) {
    return driven * seconds;
  }

  /** {@return price of waiting so many seconds} */
  long waitCost(int seconds) {
    return waited * seconds;
  }

  /** {@return length of the break} */
  int breakLength() {
    return breakLength;
  }

  /** {@return number of the start place among the nodes} */
  int start() {
    return n;
  }

  /** {@return number of the end place among the nodes} */
  int end() {
    return n + 1;
  }

  /** Whether a glance shows that a door cannot be served after leaving another at {@code a}. */
  boolean tooLate(int i, int a, int j) {
    if (legs.spanEnds(i, j) == null) {
      return true;
    }
    int arrive = a + legs.least(i, j);
    return arrive > close[j] || Math.max(arrive, open[j]) + service[j] + home[j] > latestEnd;
  }

  /** Carries a run from a node to the end of a visit's service, with and without the break. */
  void step(int i, int a, int b, long c, boolean taken, int j, RunSink sink) {
    leave(i, a, b, c, taken, j, false, sink);
    if (hasBreak && !taken && i < n) {
      if (a <= breakTo) {
        int ready = Math.max(a, breakFrom) + breakLength;
        int unpaid = Math.min(Math.max(b, breakFrom), breakTo) + breakLength;
        long cost = c + waited * Math.max(0, breakFrom - b);
        leave(i, ready, Math.max(ready, unpaid), cost, true, j, false, sink);
      }
      leave(i, a, b, c, false, j, true, sink);
    }
  }

  private void leave(
      int i, int a, int b, long c, boolean taken, int j, boolean breakThere, RunSink sink) {
    int until = i < n ? leaveBy[i] : latestEnd;
    int[] ends = legs.spanEnds(i, j);
    int[] seconds = legs.spanSeconds(i, j);
    long fixed = c + legs.price(i, j);
    int fastest = Integer.MAX_VALUE;
    int spanStart = from;
    for (int span = 0; span < ends.length && spanStart <= until; span++) {
      int low = Math.max(a, spanStart);
      int high = Math.min(ends[span], until);
      spanStart = ends[span] + 1;
      if (low > high) {
        continue;
      }
      int drive = seconds[span];
      if (low <= b) {
        int last = Math.min(b, high);
        serve(low + drive, last + drive, fixed + driven * drive, taken, j, breakThere, sink);
      } else if (drive < fastest) {
        long cost = fixed + driven * drive + waited * (low - b);
        serve(low + drive, low + drive, cost, taken, j, breakThere, sink);
      }
      fastest = Math.min(fastest, drive);
      if (ends[span] == Integer.MAX_VALUE) {
        return;
      }
    }
  }

  private void serve(
      int arriveA, int arriveB, long c, boolean taken, int j, boolean breakThere, RunSink sink) {
    if (arriveA > close[j]) {
      return;
    }
    int a = arriveA;
    int b = Math.min(arriveB, close[j]);
    long cost = c;
    if (breakThere) {
      if (a > breakTo) {
        return;
      }
      cost += waited * Math.max(0, breakFrom - b);
      a = Math.max(a, breakFrom) + breakLength;
      b = Math.min(Math.max(b, breakFrom), breakTo) + breakLength;
    }
    cost += waited * Math.max(0, open[j] - b);
    a = Math.max(a, open[j]) + service[j];
    // A longer service may fill what would be waiting.
    b = Math.min(doneBy[j], Math.max(b, open[j]) + longest[j]);
    if (a <= doneBy[j]) {
      sink.run(a, b, cost, taken || breakThere);
    }
  }

  /** {@return least cost of ending the day from a run, {@link #NEVER} where it cannot end} */
  long end(int i, int a, int b, long c, boolean taken, boolean single) {
    int[] ends = legs.spanEnds(i, n + 1);
    if (ends == null) {
      return NEVER;
    }
    int endBy = hasBreak && !taken && !single ? Math.min(latestEnd, breakFrom) : latestEnd;
    int[] seconds = legs.spanSeconds(i, n + 1);
    long least = NEVER;
    int spanStart = from;
    for (int span = 0; span < ends.length; span++) {
      int low = Math.max(a, spanStart);
      if (low <= Math.min(ends[span], leaveBy[i]) && low + seconds[span] <= endBy) {
        long cost = driven * seconds[span] + waited * Math.max(0, low - b);
        least = Math.min(least, c + cost + endCost(low + seconds[span]));
      }
      spanStart = ends[span] == Integer.MAX_VALUE ? Integer.MAX_VALUE : ends[span] + 1;
    }
    return least >= NEVER ? NEVER : least + legs.price(i, n + 1);
  }

  /** Price of ending the day at a time. */
  long endCost(int end) {
    return overtime * Math.max(0, end - shiftEnd) + endPrice * (end - from);
  }

  /** Whether the function of one run is nowhere above that of another. */
  boolean covers(int a1, int b1, long c1, int a2, int b2, long c2) {
    return a1 <= a2 && c1 + waited * Math.max(0, b2 - b1) <= c2;
  }
}
