package dev.dogleg.plan.week;

import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * For each visit those that a partial day standing there remembers having served (ng-sets of
 * Baldacci, Mingozzi, Roberti 2011, Operations Research 59:1269-1283); they grow where a rest of
 * little memory goes in circles.
 */
final class NearVisits {
  private final int words;
  private final long[][] remembered;

  /**
   * The nearest.
   *
   * @param day relaxed day
   * @param size how many each remembers, itself included
   */
  NearVisits(RelaxedDay day, int size) {
    words = Math.max(1, (day.n + Long.SIZE - 1) / Long.SIZE);
    remembered = new long[day.n][words];
    for (int i = 0; i < day.n; i++) {
      int at = i;
      IntStream.range(0, day.n)
          .boxed()
          .sorted(
              Comparator.comparingLong((Integer j) -> apart(day, at, j)).thenComparingInt(j -> j))
          .limit(size)
          .forEach(j -> remembered[at][j >>> 6] |= 1L << j);
      remembered[i][i >>> 6] |= 1L << i;
    }
  }

  private static long apart(RelaxedDay day, int i, int j) {
    if (i == j) {
      return -1;
    }
    long there = day.legs.spanEnds(i, j) == null ? 1 << 28 : day.legs.least(i, j);
    long back = day.legs.spanEnds(j, i) == null ? 1 << 28 : day.legs.least(j, i);
    return Math.min(there, back);
  }

  int words() {
    return words;
  }

  /** {@return what a partial day standing at a visit remembers, as bits} */
  long[] of(int visit) {
    return remembered[visit];
  }

  /**
   * Remembers the circles of a round.
   *
   * @param order visits, some of them more than once
   * @return whether anything new is remembered
   */
  boolean learn(int[] order) {
    boolean learnt = false;
    for (int k = 0; k < order.length; k++) {
      int again = k - 1;
      while (again >= 0 && order[again] != order[k]) {
        again--;
      }
      for (int between = again + 1; again >= 0 && between < k; between++) {
        long[] bits = remembered[order[between]];
        long before = bits[order[k] >>> 6];
        bits[order[k] >>> 6] |= 1L << order[k];
        learnt |= bits[order[k] >>> 6] != before;
      }
    }
    return learnt;
  }
}
