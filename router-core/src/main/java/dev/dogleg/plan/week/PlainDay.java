package dev.dogleg.plan.week;

import java.util.Arrays;
import java.util.Optional;

/**
 * A kind of van-day on which a partial day is one time, one load and one price: no break, no
 * traffic, no tanks, one window a visit, nothing priced but ways, and at most one rule, of load
 * points. Seconds count from the start of the day.
 *
 * <p>Maintainers: read backwards it is such a day too ({@link #backwards}): what a visit is begun
 * at the earliest becomes what is left of the day when it is begun at the latest. So labels and
 * floors are written once and run from both ends (Righini, Salani 2006, Discrete Optimization
 * 3:255-273).
 */
final class PlainDay {
  /** Where no way leads in time. */
  static final int NO_WAY = Integer.MAX_VALUE / 4;

  final int n;

  /** Words of a set of visits. */
  final int words;

  /** Seconds of the day. */
  final int length;

  /** Begun in this span of seconds. */
  final int[] open;

  final int[] close;

  /** From begin to begin: by pair of visits, {@code i * n + j}; from the start, and to the end. */
  final int[] step;

  final int[] startStep;
  final int[] endStep;

  /** Sixtieths of the ways, likewise. */
  final long[] cost;

  final long[] startCost;
  final long[] endCost;

  /** Load points, and most of a day. */
  final int[] load;

  final int mostLoad;

  /** By pair: least seconds from begin to begin by any way, windows left out of it. */
  private final int[] closed;

  private PlainDay(
      int length,
      int[] open,
      int[] close,
      int[] step,
      int[] startStep,
      int[] endStep,
      long[] cost,
      long[] startCost,
      long[] endCost,
      int[] load,
      int mostLoad,
      int[] closed) {
    n = open.length;
    words = Math.max(1, (n + Long.SIZE - 1) / Long.SIZE);
    this.length = length;
    this.open = open;
    this.close = close;
    this.step = step;
    this.startStep = startStep;
    this.endStep = endStep;
    this.cost = cost;
    this.startCost = startCost;
    this.endCost = endCost;
    this.load = load;
    this.mostLoad = mostLoad;
    this.closed = closed;
  }

  /**
   * A kind of van-day as a plain one.
   *
   * @param kind kind of van-day
   * @param points load points of its visits
   * @return the day; empty where something makes it more than plain
   */
  static Optional<PlainDay> of(VanKind kind, DayLoad points) {
    RelaxedDay day = kind.relaxed();
    boolean priced = day.waited() > 0 || day.endCost(day.latestEnd) > 0;
    boolean ruled = !kind.day().terms().rules().isEmpty() && !points.alone;
    boolean more =
        kind.day().terms().water().isPresent()
            || kind.day().terms().balance().isPresent()
            || kind.pricesPromises();
    if (day.n == 0 || day.hasBreak || priced || ruled || more || !steady(day) || !simple(kind)) {
      return Optional.empty();
    }
    int n = day.n;
    int[] open = new int[n];
    int[] close = new int[n];
    int[] start = new int[n];
    int[] end = new int[n];
    long[] startCost = new long[n];
    long[] endCost = new long[n];
    int[] step = new int[n * n];
    long[] cost = new long[n * n];
    Arrays.fill(step, NO_WAY);
    for (int i = 0; i < n; i++) {
      open[i] = Math.max(0, day.open[i] - day.from);
      close[i] = Math.min(day.close[i], day.latestEnd) - day.from;
      start[i] = seconds(day, day.start(), i);
      end[i] = day.service[i] + seconds(day, i, day.end());
      startCost[i] = price(day, day.start(), i);
      endCost[i] = price(day, i, day.end());
    }
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        int seconds = i == j ? NO_WAY : day.service[i] + seconds(day, i, j);
        if (open[i] + (long) seconds <= close[j]) {
          step[i * n + j] = seconds;
          cost[i * n + j] = price(day, i, j);
        }
      }
    }
    if (Arrays.stream(step).min().orElse(1) < 1) {
      return Optional.empty();
    }
    int length = day.latestEnd - day.from;
    return Optional.of(
        new PlainDay(
            length,
            open,
            close,
            step,
            start,
            end,
            cost,
            startCost,
            endCost,
            points.points,
            points.most,
            closed(step, n)));
  }

  /** Whether each leg takes the same time all day. */
  private static boolean steady(RelaxedDay day) {
    for (int i = 0; i <= day.n; i++) {
      for (int j = 0; j <= day.n; j++) {
        int to = j == day.n ? day.end() : j;
        if (i != to && day.legs.reaches(i, to) && day.legs.spanSeconds(i, to).length > 1) {
          return false;
        }
      }
    }
    return true;
  }

  private static boolean simple(VanKind kind) {
    for (int j = 0; j < kind.size(); j++) {
      if (kind.visit(j).first()
          || kind.visit(j).arriveWithin().size() > 1
          || kind.visit(j).vanWithin().size() > 1) {
        return false;
      }
    }
    return true;
  }

  private static int seconds(RelaxedDay day, int i, int j) {
    return day.legs.reaches(i, j) ? day.legs.least(i, j) : NO_WAY;
  }

  private static long price(RelaxedDay day, int i, int j) {
    return day.legs.reaches(i, j)
        ? day.driveCost(day.legs.least(i, j)) + day.legs.price(i, j)
        : RelaxedDay.NEVER;
  }

  private static int[] closed(int[] step, int n) {
    int[] least = step.clone();
    for (int k = 0; k < n; k++) {
      for (int i = 0; i < n; i++) {
        for (int j = 0; j < n; j++) {
          least[i * n + j] = Math.min(least[i * n + j], least[i * n + k] + least[k * n + j]);
        }
      }
    }
    return least;
  }

  /** {@return the same day read from its end} */
  PlainDay backwards() {
    int[] opens = new int[n];
    int[] closes = new int[n];
    int[] steps = new int[n * n];
    long[] costs = new long[n * n];
    int[] least = new int[n * n];
    for (int i = 0; i < n; i++) {
      opens[i] = length - close[i];
      closes[i] = length - open[i];
      for (int j = 0; j < n; j++) {
        steps[i * n + j] = step[j * n + i];
        costs[i * n + j] = cost[j * n + i];
        least[i * n + j] = closed[j * n + i];
      }
    }
    return new PlainDay(
        length, opens, closes, steps, endStep, startStep, costs, endCost, startCost, load, mostLoad,
        least);
  }

  /** {@return whether a visit begun at a second may be followed by another, at once or later} */
  boolean mayFollow(int i, int begin, int j) {
    return begin + closed[i * n + j] <= close[j];
  }

  /** {@return least seconds between the begins of two visits, one right after the other} */
  int leastStep() {
    return Arrays.stream(step).min().orElse(1);
  }
}
