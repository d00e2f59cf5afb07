package dev.dogleg.plan.week;

import java.util.Arrays;

/** The ways of a plain day at some prices, in parts. */
final class PlainValues {
  /** Value of a way to a visit, the visit's worth taken off, by pair of visits. */
  final long[] arcs;

  /** The same for the way to a day's first visit. */
  final long[] starts;

  /** Value of the way that ends a day. */
  final long[] ends;

  /** Value of a way alone, by pair of visits. */
  final long[] ways;

  private PlainValues(long[] arcs, long[] starts, long[] ends, long[] ways) {
    this.arcs = arcs;
    this.starts = starts;
    this.ends = ends;
    this.ways = ways;
  }

  /**
   * Computes them.
   *
   * @param day the day
   * @param worth for each visit what serving it is worth, in parts
   * @param scale parts of a sixtieth; 0: costs do not count
   */
  static PlainValues of(PlainDay day, long[] worth, long scale) {
    int n = day.n;
    long[] ways = new long[n * n];
    long[] arcs = new long[n * n];
    long[] starts = new long[n];
    long[] ends = new long[n];
    Arrays.setAll(ways, at -> day.step[at] >= PlainDay.NO_WAY ? 0 : scale * day.cost[at]);
    Arrays.setAll(arcs, at -> ways[at] - worth[at % n]);
    Arrays.setAll(starts, j -> scaled(day.startCost[j], scale) - worth[j]);
    Arrays.setAll(ends, i -> scaled(day.endCost[i], scale));
    return new PlainValues(arcs, starts, ends, ways);
  }

  private static long scaled(long cost, long scale) {
    return cost >= RelaxedDay.NEVER ? RelaxedDay.NEVER : scale * cost;
  }
}
