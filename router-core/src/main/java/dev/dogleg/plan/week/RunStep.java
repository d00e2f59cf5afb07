package dev.dogleg.plan.week;

import dev.dogleg.itinerary.WaterPlace;
import dev.dogleg.itinerary.WaterTerms;
import dev.dogleg.schedule.DayModel;
import dev.dogleg.schedule.DoorGate;
import dev.dogleg.schedule.StepTerms;
import java.util.List;

/**
 * Carries runs of a relaxed day from door to door: all windows, liked hours, the break and water
 * stops as {@code docs/TIMING.md} and {@code docs/WEEK.md} say; only durations are rounded down,
 * and a door with several spans for the van is left by the end of the last.
 *
 * <p>Maintainers: a leg is walked in its spans; beyond the unpaid part of a run only a faster span
 * can pay. What rules say of a step (longer service, price) is asked by the caller. Mutable, one
 * thread.
 */
final class RunStep {
  private static final int NO_WAY = Integer.MAX_VALUE / 4;

  private final int n;
  private final int from;
  private final int latestEnd;
  private final long driven;
  private final long waited;
  private final boolean hasBreak;
  private final int breakLength;
  private final int breakFrom;
  private final int breakTo;
  private final int[] home;
  private final DayModel model;
  private final StepTerms terms;
  private final RelaxedLegs legs;

  private final int[][] low;
  private final int[][] high;
  private final int[][] open;
  private final int[][] done;
  private final long[][] price;
  private final int[] lastArrival;
  private final int[] firstService;
  private final int[] leaveBy;

  private final boolean water;
  private final int most;
  private final int[] wellSeconds;
  private final boolean[] filler;
  private final int[] leastWay;
  private final RunBuffer atWell;

  private RunBuffer target;
  private int service;
  private int fresh;
  private int grey;
  private int stops;
  private boolean pauseOpen;
  private StopNeed stopNeed;

  RunStep(VanKind kind) {
    RelaxedDay day = kind.relaxed();
    n = day.n;
    from = day.from;
    latestEnd = day.latestEnd;
    driven = day.driven();
    waited = day.waited();
    hasBreak = day.hasBreak;
    breakLength = day.breakLength();
    breakFrom = day.breakFrom();
    breakTo = day.breakTo();
    home = day.home;
    model = kind.model();
    terms = model.steps();
    water = terms.water();
    List<WaterPlace> wells =
        terms.mostStops() == 0
            ? List.of()
            : kind.day().terms().water().map(WaterTerms::places).orElse(List.of());
    legs = wells.isEmpty() ? day.legs : day.legsBy(kind.day().travel(), wells);
    most = terms.mostStops();
    wellSeconds = wells.stream().mapToInt(WaterPlace::seconds).toArray();
    low = new int[n][];
    high = new int[n][];
    open = new int[n][];
    done = new int[n][];
    price = new long[n][];
    lastArrival = new int[n];
    leaveBy = new int[n];
    firstService = new int[n];
    for (int j = 0; j < n; j++) {
      gates(j, model.gates(j));
    }
    filler = fillers();
    leastWay = leastWays();
    atWell = new RunBuffer(waited, true);
  }

  private void gates(int j, List<DoorGate> gates) {
    low[j] = gates.stream().mapToInt(DoorGate::arriveFrom).toArray();
    high[j] = gates.stream().mapToInt(DoorGate::arriveTo).toArray();
    open[j] = gates.stream().mapToInt(DoorGate::serviceFrom).toArray();
    done[j] = gates.stream().mapToInt(DoorGate::doneBy).toArray();
    price[j] = gates.stream().mapToLong(DoorGate::priceSixtieths).toArray();
    lastArrival[j] = -1;
    firstService[j] = model.earliestService(j);
    for (int g = 0; g < low[j].length; g++) {
      int last = Math.min(high[j][g], done[j][g] - model.service(j));
      lastArrival[j] = Math.max(lastArrival[j], last);
      leaveBy[j] = Math.max(leaveBy[j], Math.min(latestEnd, gates.get(g).leaveBy()));
    }
  }

  /**
   * Where a water stop on the way from visit to visit may pay though the tanks last: it fills
   * waiting. Elsewhere the same day without it costs no more.
   */
  private boolean[] fillers() {
    boolean[] pays = new boolean[wellSeconds.length * n * n];
    for (int w = 0; w < wellSeconds.length; w++) {
      for (int i = 0; i < n; i++) {
        for (int j = 0; j < n; j++) {
          RelaxedLegs.Leg there = i == j ? null : legs.leg(i, n + 2 + w);
          RelaxedLegs.Leg back = i == j ? null : legs.leg(n + 2 + w, j);
          if (there != null && back != null) {
            RelaxedLegs.Leg direct = legs.leg(i, j);
            boolean opensLate = false;
            for (int first : low[j]) {
              opensLate |= first > from;
            }
            long longer = direct == null ? 0 : there.leastFrom[0] + back.leastFrom[0] - direct.most;
            long dearer = direct == null ? 0 : there.price + back.price - direct.price;
            pays[(w * n + i) * n + j] =
                direct == null
                    || opensLate
                    || driven * longer + dearer < waited * (longer + wellSeconds[w]);
          }
        }
      }
    }
    return pays;
  }

  StepTerms terms() {
    return terms;
  }

  RunBuffer buffer() {
    return new RunBuffer(waited, water);
  }

  boolean water() {
    return water;
  }

  /** {@return the least service of a visit, wherever it stands} */
  int leastService(int j) {
    return model.service(j);
  }

  /** {@return whether a door can come right after another, by water or not} */
  boolean reaches(int i, int j) {
    return leastWay[i * n + j] < NO_WAY;
  }

  /** Whether a glance shows that a visit cannot come after leaving a door at {@code a}. */
  boolean tooLate(int i, int a, int j, int seconds) {
    int arrive = a + leastWay[i * n + j];
    return arrive > lastArrival[j]
        || Math.max(arrive, firstService[j]) + seconds + home[j] > latestEnd;
  }

  /** Least seconds from the start place and from each visit to each visit, by water or not. */
  private int[] leastWays() {
    int[] least = new int[(n + 1) * n];
    for (int i = 0; i <= n; i++) {
      for (int j = 0; j < n; j++) {
        int way = i != j && legs.reaches(i, j) ? legs.least(i, j) : NO_WAY;
        int byWater = i < n && i != j ? leastByWater(i, j) : RestTanks.NO_WAY;
        least[i * n + j] = byWater == RestTanks.NO_WAY ? way : Math.min(way, byWater);
      }
    }
    return least;
  }

  /** {@return least seconds from visit to visit with a water stop; -1 without a way} */
  int leastByWater(int i, int j) {
    int least = NO_WAY;
    for (int w = n + 2; w < n + 2 + wellSeconds.length; w++) {
      if (legs.reaches(i, w) && legs.reaches(w, j)) {
        least = Math.min(least, legs.least(i, w) + legs.least(w, j) + wellSeconds[w - n - 2]);
      }
    }
    return least == NO_WAY ? RestTanks.NO_WAY : least;
  }

  /** {@return least price of the drives from visit to visit by water; 0 without a way} */
  long leastPriceByWater(int i, int j) {
    long least = Long.MAX_VALUE;
    for (int w = n + 2; w < n + 2 + wellSeconds.length; w++) {
      if (legs.reaches(i, w) && legs.reaches(w, j)) {
        long drive = driven * (legs.least(i, w) + legs.least(w, j));
        least = Math.min(least, drive + legs.price(i, w) + legs.price(w, j));
      }
    }
    return least == Long.MAX_VALUE ? 0 : least;
  }

  /**
   * Carries a run to the end of a visit's service.
   *
   * @param i node left
   * @param runs runs of node {@code i}
   * @param run which of them
   * @param j visit
   * @param seconds service there
   * @param extra what rules charge for the step
   * @param need whether the tanks may not last until the end of the day, asked of what was served
   *     so far; null: they last
   * @param ways the ways to go, see {@link RestGlance#mayGo}
   * @param into receives the runs
   */
  void visit(
      int i,
      RunArena runs,
      int run,
      int j,
      int seconds,
      long extra,
      StopNeed need,
      int ways,
      RunBuffer into) {
    target = into;
    stopNeed = need;
    service = seconds;
    int a = runs.a[run];
    int b = runs.b[run];
    long c = runs.c[run] + extra;
    boolean taken = runs.taken[run];
    boolean mayPause = hasBreak && !taken && i < n;
    pauseOpen = hasBreak && i < n;
    if (!water) {
      direct(i, a, b, c, taken, mayPause, j);
      return;
    }
    int usedFresh = runs.fresh[run];
    int madeGrey = runs.grey[run];
    int made = runs.stops[run];
    fresh = usedFresh + terms.fresh(j);
    grey = madeGrey + terms.grey(j);
    stops = made;
    if ((ways & RestGlance.STRAIGHT) != 0 && terms.lasts(fresh, grey)) {
      asGoodAsFull();
      direct(i, a, b, c, taken, mayPause, j);
    }
    boolean byWater = (ways & RestGlance.BY_WATER) != 0 && i < n && made < most;
    if (byWater && terms.lasts(terms.fresh(j), terms.grey(j))) {
      for (int w = 0; w < wellSeconds.length; w++) {
        if (need != null || filler[(w * n + i) * n + j]) {
          byWater(i, a, b, c, taken, mayPause, j, w, made + 1);
        }
      }
    }
  }

  /** Tanks that can not run out any more are as good as full ones. */
  private void asGoodAsFull() {
    if (stopNeed == null || stopNeed.lastsAfterNext(fresh, grey)) {
      fresh = 0;
      grey = 0;
      stops = 0;
    }
  }

  private void direct(int i, int a, int b, long c, boolean taken, boolean mayPause, int j) {
    RelaxedLegs.Leg leg = legs.leg(i, j);
    if (leg == null || a + leg.leastFrom[0] > lastArrival[j]) {
      return;
    }
    int until = i < n ? leaveBy[i] : latestEnd;
    leave(leg, until, a, b, c, taken, j, false);
    if (mayPause) {
      pause(leg, until, a, b, c, j);
      leave(leg, until, a, b, c, false, j, true);
    }
  }

  /** Takes the break before leaving. */
  private void pause(RelaxedLegs.Leg leg, int until, int a, int b, long c, int j) {
    int ready = Math.max(a, breakFrom) + breakLength;
    if (a <= breakTo && ready <= until) {
      int unpaid = Math.min(Math.max(b, breakFrom), breakTo) + breakLength;
      long cost = c + waited * Math.max(0, breakFrom - b);
      leave(leg, until, ready, Math.max(ready, unpaid), cost, true, j, false);
    }
  }

  private void byWater(
      int i, int a, int b, long c, boolean taken, boolean mayPause, int j, int w, int made) {
    int well = n + 2 + w;
    RelaxedLegs.Leg there = legs.leg(i, well);
    RelaxedLegs.Leg back = legs.leg(well, j);
    if (there == null || back == null) {
      return;
    }
    int arrival = a + there.leastFrom[0] + wellSeconds[w] + back.leastFrom[0];
    if (arrival > lastArrival[j]
        || Math.max(arrival, firstService[j]) + service + home[j] > latestEnd) {
      return;
    }
    RunBuffer into = target;
    int own = service;
    target = atWell;
    service = wellSeconds[w];
    atWell.clear();
    leave(there, leaveBy[i], a, b, c, taken, well, false);
    if (mayPause) {
      pause(there, leaveBy[i], a, b, c, well);
    }
    target = into;
    service = own;
    fresh = terms.fresh(j);
    grey = terms.grey(j);
    stops = made;
    asGoodAsFull();
    for (int k = 0; k < atWell.size; k++) {
      boolean paused = atWell.taken[k];
      leave(back, latestEnd, atWell.a[k], atWell.b[k], atWell.c[k], paused, j, false);
      if (mayPause && !paused) {
        leave(back, latestEnd, atWell.a[k], atWell.b[k], atWell.c[k], false, j, true);
      }
    }
  }

  private void leave(
      RelaxedLegs.Leg leg, int until, int a, int b, long c, boolean taken, int j, boolean there) {
    if (a > until) {
      return;
    }
    long fixed = c + leg.price;
    int fastest = Integer.MAX_VALUE;
    int span = leg.span(a);
    int first = a;
    int latest = j < n ? lastArrival[j] : latestEnd;
    while (true) {
      int last = Math.min(leg.ends[span], until);
      int drive = leg.seconds[span];
      if (first <= b) {
        arrive(first + drive, Math.min(b, last) + drive, fixed + driven * drive, taken, j, there);
      } else if (drive < fastest) {
        long cost = fixed + driven * drive + waited * (first - b);
        arrive(first + drive, first + drive, cost, taken, j, there);
      }
      fastest = Math.min(fastest, drive);
      if (last == until) {
        return;
      }
      first = last + 1;
      span++;
      int least = leg.leastFrom[span];
      if (first + least > latest || (first > b && least >= fastest)) {
        return;
      }
    }
  }

  private void arrive(int a, int b, long c, boolean taken, int j, boolean there) {
    if (j >= n) {
      ready(a + service, b + service, latestEnd, c, taken, n);
      return;
    }
    int[] highs = high[j];
    for (int g = 0; g < highs.length; g++) {
      if (a > highs[g]) {
        continue;
      }
      int opens = low[j][g];
      int first = Math.max(a, opens);
      int last = Math.max(first, Math.min(b, highs[g]));
      long cost = c + price[j][g] + waited * Math.max(0, opens - b);
      if (there) {
        if (first > breakTo) {
          continue;
        }
        cost += waited * Math.max(0, breakFrom - last);
        first = Math.max(first, breakFrom) + breakLength;
        last = Math.min(Math.max(last, breakFrom), breakTo) + breakLength;
      }
      cost += waited * Math.max(0, open[j][g] - last);
      first = Math.max(first, open[j][g]) + service;
      last = Math.max(last, open[j][g]) + service;
      ready(first, last, done[j][g], cost, taken || there, j);
    }
  }

  private void ready(int a, int b, int by, long c, boolean taken, int j) {
    int latest = j < n ? Math.min(by, latestEnd - home[j]) : by;
    if (pauseOpen && !taken) {
      // Whoever has not paused by then never will, nor is home before a break is needed.
      latest = Math.min(latest, breakTo);
    }
    if (a <= latest) {
      target.add(a, Math.min(b, latest), c, taken, fresh, grey, stops);
    }
  }

  /**
   * Least cost of ending the day.
   *
   * @param i last visit
   * @param runs its runs
   * @param single whether it is the only one
   * @return the cost; {@link RelaxedDay#NEVER} where the day cannot end there
   */
  long end(int i, RunBuffer runs, boolean single) {
    long least = RelaxedDay.NEVER;
    for (int k = 0; k < runs.size; k++) {
      least = Math.min(least, end(i, runs.a[k], runs.b[k], runs.c[k], runs.taken[k], single));
    }
    return least;
  }

  /** Least cost of ending the day from one run, or {@link RelaxedDay#NEVER}. */
  long end(int i, int a, int b, long c, boolean taken, boolean single) {
    RelaxedLegs.Leg leg = legs.leg(i, n + 1);
    int endBy = hasBreak && !taken && !single ? Math.min(latestEnd, breakFrom) : latestEnd;
    if (leg == null || a > leaveBy[i] || a + leg.leastFrom[0] > endBy) {
      return RelaxedDay.NEVER;
    }
    long least = RelaxedDay.NEVER;
    int first = a;
    int fastest = Integer.MAX_VALUE;
    for (int span = leg.span(first); ; span++) {
      int drive = leg.seconds[span];
      if (drive < fastest && first + drive <= endBy) {
        long cost = c + driven * drive + waited * Math.max(0, first - b);
        least = Math.min(least, cost + model.endCost(first + drive));
        fastest = drive;
      }
      if (leg.ends[span] >= leaveBy[i] || leg.leastFrom[span + 1] >= fastest) {
        break;
      }
      first = leg.ends[span] + 1;
    }
    return least >= RelaxedDay.NEVER ? RelaxedDay.NEVER : least + leg.price;
  }
}
