package dev.dogleg.plan.week;

import dev.dogleg.itinerary.Prices;
import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * Finds the sets of one kind of van-day whose reduced cost is small, and what no set is below.
 *
 * <p>Maintainers: a bound for reaching each door ({@link ArrivalBound}), rests of days that it
 * leaves within the room ({@link RestLabels}), then the sets themselves ({@link SetSweep}).
 */
final class KindPricer {
  private static final int REMEMBERED = 6;

  private final VanKind kind;
  private final RelaxedDay priced;
  private final RelaxedDay free;
  private final long[][] near;

  /** What was found at some prices. */
  static final class Found {
    private final SetSweep sweep;
    private final boolean complete;
    private final long least;
    private final long steps;

    Found(SetSweep sweep, boolean complete, long least, long steps) {
      this.sweep = sweep;
      this.complete = complete;
      this.least = least;
      this.steps = steps;
    }

    /** {@return the sets; null where there were too many rests of days} */
    SetSweep sweep() {
      return sweep;
    }

    /** {@return whether every set within the room was found} */
    boolean complete() {
      return complete;
    }

    /** {@return a reduced cost, at most 0, that no set is below} */
    long least() {
      return least;
    }

    long steps() {
      return steps;
    }
  }

  KindPricer(VanKind kind, Prices prices) {
    this.kind = kind;
    priced = new RelaxedDay(kind, prices);
    free = priced.free();
    int n = kind.size();
    int words = Math.max(1, (n + Long.SIZE - 1) / Long.SIZE);
    near = new long[n][words];
    for (int i = 0; i < n; i++) {
      int[] closest = nearest(i);
      for (int k = 0; k < Math.min(REMEMBERED, closest.length); k++) {
        near[i][closest[k] >>> 6] |= 1L << closest[k];
      }
    }
  }

  private int[] nearest(int i) {
    return IntStream.range(0, kind.size())
        .filter(j -> j != i && priced.legs.spanEnds(i, j) != null)
        .boxed()
        .sorted(
            Comparator.comparingInt((Integer j) -> priced.legs.least(i, j))
                .thenComparingInt(j -> j))
        .mapToInt(Integer::intValue)
        .toArray();
  }

  VanKind kind() {
    return kind;
  }

  /**
   * Looks at some prices.
   *
   * @param prices prices of the rows; what the rest of a day is worth ignores their cuts
   * @param counting objective: number left out, else cost
   * @param share sets are of interest whose reduced cost is at most so many percent of the least
   *     that a relaxed day has; 0: all that are at most {@code room}
   * @param room largest reduced cost of interest
   * @param mostLabels rests of days after which it gives up
   * @param mostSets sets looked at after which it gives up
   */
  Found look(
      RowPrices prices, boolean counting, int share, long room, int mostLabels, int mostSets) {
    RelaxedDay day = counting ? free : priced;
    PricedDay rewarded = new PricedDay(kind, day, prices, counting);
    RestLabels rest =
        new RestLabels(rewarded, new ArrivalBound(rewarded), near, Math.max(0, room), mostLabels);
    if (!rest.complete()) {
      return new Found(null, false, -PricedDay.NEVER, rest.steps());
    }
    long most = share == 0 ? room : Math.min(room, rest.least() / 100 * share);
    if (share > 0 && rest.least() == 0) {
      return new Found(null, true, 0, rest.steps());
    }
    SetSweep sweep = new SetSweep(kind, priced, rewarded, rest, most, mostSets).run();
    long steps = rest.steps() + sweep.steps();
    if (!sweep.complete()) {
      return new Found(sweep, false, rest.least(), steps);
    }
    long least = most;
    for (int k = 0; k < sweep.size(); k++) {
      least = Math.min(least, sweep.reduced(k));
    }
    return new Found(sweep, true, Math.max(rest.least(), Math.min(0, least)), steps);
  }

  /** {@return a sweep over every set, complete or given up after so many} */
  SetSweep everySet(int mostSets) {
    return new SetSweep(kind, priced, mostSets).run();
  }

  /** {@return numbers of the week's bookings in a set of local ones} */
  int[] bookings(int[] locals) {
    return Arrays.stream(locals).map(kind::booking).toArray();
  }
}
