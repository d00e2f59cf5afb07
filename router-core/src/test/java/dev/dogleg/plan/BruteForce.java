package dev.dogleg.plan;

import dev.dogleg.itinerary.BreakRule;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.DayShift;
import dev.dogleg.itinerary.Prices;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.time.TimeWindow;
import java.util.Arrays;

/**
 * Tries every order, every place of the break and every instant of leaving, one tick at a time.
 *
 * <p>A second reading of {@code docs/TIMING.md} that knows no runs: for each order it keeps, tick
 * by tick, the least cost of standing at the door in each phase. A tick is a minute or a second.
 * Shares no code with the planner.
 */
final class BruteForce {
  private static final long NEVER = Long.MAX_VALUE / 4;

  private final DayRequest request;
  private final DayShift shift;
  private final int from;
  private final int tick;
  private final int ticks;
  private final int breakTicks;
  private final int breakFrom;
  private final int breakTo;
  private int fewestLeftOut = Integer.MAX_VALUE;
  private long least = Long.MAX_VALUE;

  /**
   * Least cost by minute after the shift's start: break open, taken, taken just now at the door.
   */
  private static final class Ready {
    private final long[][] cost;

    Ready(int ticks) {
      cost = new long[3][ticks];
      for (long[] row : cost) {
        Arrays.fill(row, NEVER);
      }
    }
  }

  private BruteForce(DayRequest request, int tick) {
    this.request = request;
    this.tick = tick;
    shift = request.shift();
    from = shift.hours().fromSeconds() / tick;
    ticks = shift.latestEndSeconds() / tick - from + 1;
    breakTicks = shift.breakRule().map(BreakRule::lengthSeconds).orElse(0) / tick;
    breakFrom = shift.breakRule().map(b -> b.startWithin().fromSeconds()).orElse(0) / tick - from;
    breakTo = shift.breakRule().map(b -> b.startWithin().toSeconds()).orElse(0) / tick - from;
  }

  /** {@return fewest booked visits left out, and the least cost with them} */
  static long[] best(DayRequest request, int tick) {
    BruteForce search = new BruteForce(request, tick);
    search.consider(0, 0);
    Ready start = new Ready(search.ticks);
    Arrays.fill(start.cost[0], 0);
    search.grow(start, shift(request), 0, 0);
    return new long[] {search.fewestLeftOut, search.least};
  }

  private static int shift(DayRequest request) {
    return request.shift().startPlace();
  }

  private void consider(int servedSet, long driven) {
    int leftOut = 0;
    long cost = driven;
    for (int i = 0; i < request.visits().size(); i++) {
      if ((servedSet >> i & 1) == 0) {
        Visit visit = request.visits().get(i);
        leftOut += visit.booked() ? 1 : 0;
        cost += visit.leftOutSixtieths();
      }
    }
    if (leftOut < fewestLeftOut || (leftOut == fewestLeftOut && cost < least)) {
      fewestLeftOut = leftOut;
      least = cost;
    }
  }

  private void grow(Ready ready, int place, int servedSet, int served) {
    for (int i = 0; i < request.visits().size(); i++) {
      Visit visit = request.visits().get(i);
      if ((servedSet >> i & 1) != 0 || (visit.first() && served > 0)) {
        continue;
      }
      if (!request.travel().reaches(place, visit.place())) {
        continue;
      }
      Ready next = new Ready(ticks);
      for (TimeWindow van : visit.vanWithin()) {
        stay(ready, place, visit, van, served, next);
      }
      boolean possible =
          Arrays.stream(next.cost).flatMapToLong(Arrays::stream).anyMatch(cost -> cost < NEVER);
      if (possible) {
        int with = servedSet | 1 << i;
        goHome(next, visit.place(), with, served + 1);
        grow(next, visit.place(), with, served + 1);
      }
    }
  }

  /** One stay inside one van window; arrival decides the window by which the service starts. */
  private void stay(Ready ready, int place, Visit visit, TimeWindow van, int served, Ready next) {
    long waiting = (long) tick * request.prices().waitingMinuteSeconds();
    int vanFrom = van.fromSeconds() / tick - from;
    int vanTo = Math.min(ticks - 1, van.toSeconds() / tick - from);
    int service = visit.serviceSeconds() / tick;
    for (TimeWindow window : visit.arriveWithin()) {
      int opens = window.fromSeconds() / tick - from;
      long[][] arrived = new long[2][ticks];
      long[][] done = new long[3][ticks];
      for (long[] row : arrived) {
        Arrays.fill(row, NEVER);
      }
      for (long[] row : done) {
        Arrays.fill(row, NEVER);
      }
      for (int t = 0; t < ticks; t++) {
        int drive = request.travel().driveSeconds(place, visit.place(), tick * (from + t));
        int at = t + (drive + tick - 1) / tick;
        if (at < vanFrom || at > vanTo || tick * (at + from) > window.toSeconds()) {
          continue;
        }
        long leg = leg(place, visit.place(), drive) + early(at, t, drive);
        arrived[0][at] = Math.min(arrived[0][at], ready.cost[0][t] + leg);
        long taken = Math.min(ready.cost[1][t], ready.cost[2][t]);
        arrived[1][at] = Math.min(arrived[1][at], taken + leg);
      }
      for (int t = Math.max(0, vanFrom); t <= vanTo; t++) {
        for (int taken = 0; taken < 2; taken++) {
          lower(arrived[taken], t + 1, vanTo, arrived[taken][t] + waiting);
          if (t >= opens && tick * (t + service + from) <= visit.doneBySeconds()) {
            lower(done[taken], t + service, vanTo, arrived[taken][t]);
          }
        }
        if (served > 0 && breakHere(t)) {
          lower(arrived[1], t + breakTicks, vanTo, arrived[0][t]);
        }
      }
      for (int t = Math.max(0, vanFrom); t <= vanTo; t++) {
        for (int taken = 0; taken < 3; taken++) {
          lower(done[taken], t + 1, vanTo, done[taken][t] + waiting);
          next.cost[taken][t] = Math.min(next.cost[taken][t], done[taken][t]);
        }
        if (breakHere(t)) {
          lower(done[2], t + breakTicks, vanTo, done[0][t]);
        }
      }
    }
  }

  /** Waiting up to the whole tick, where a drive does not end on one. */
  private long early(int at, int leave, int drive) {
    return ((long) tick * (at - leave) - drive) * request.prices().waitingMinuteSeconds();
  }

  private boolean breakHere(int t) {
    return breakTicks > 0 && t >= breakFrom && t <= breakTo;
  }

  private static void lower(long[] row, int at, int last, long cost) {
    if (at <= last && cost < row[at]) {
      row[at] = cost;
    }
  }

  private long leg(int a, int b, int drive) {
    long metres = request.travel().lengthMetres(a, b);
    return 60L * drive + (metres * request.prices().kilometreSeconds() * 60 + 500) / 1000;
  }

  private void goHome(Ready ready, int place, int servedSet, int served) {
    if (!request.travel().reaches(place, shift.endPlace())) {
      return;
    }
    Prices prices = request.prices();
    for (int t = 0; t < ticks; t++) {
      int drive = request.travel().driveSeconds(place, shift.endPlace(), tick * (from + t));
      int end = tick * (from + t) + drive;
      if (end > shift.latestEndSeconds()) {
        continue;
      }
      boolean breakNotNeeded = breakTicks == 0 || served < 2 || end <= tick * (breakFrom + from);
      long cost = ready.cost[1][t];
      if (breakNotNeeded) {
        cost = Math.min(cost, ready.cost[0][t]);
      }
      if (cost < NEVER) {
        consider(
            servedSet,
            cost
                + leg(place, shift.endPlace(), drive)
                + (long) prices.overtimeMinuteSeconds()
                    * Math.max(0, end - shift.hours().toSeconds())
                + (long) prices.endMinuteSeconds() * (end - shift.hours().fromSeconds()));
      }
    }
  }
}
