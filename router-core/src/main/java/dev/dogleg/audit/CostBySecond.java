package dev.dogleg.audit;

import java.util.Arrays;

/**
 * A least cost for each second of a span of a day; {@link #NEVER} at every other second.
 *
 * <p>Not for several threads.
 */
final class CostBySecond {
  /** The cost of what is not possible. */
  static final long NEVER = Long.MAX_VALUE / 4;

  private int base;
  private long[] cost = {};
  private int first = Integer.MAX_VALUE;
  private int last = -1;

  /** Says that nothing is possible. */
  void clear() {
    if (first <= last) {
      Arrays.fill(cost, first - base, last - base + 1, NEVER);
    }
    first = Integer.MAX_VALUE;
    last = -1;
  }

  /** {@return no earlier second is possible} */
  int first() {
    return first;
  }

  /** {@return no later second is possible} */
  int last() {
    return last;
  }

  /** {@return the cost at a second of the span} */
  long at(int second) {
    return cost[second - base];
  }

  /** {@return seconds there is room for} */
  int room() {
    return cost.length;
  }

  /** Takes seconds into the span. */
  void reach(int from, int to) {
    int low = cost.length == 0 ? from : Math.min(base, from);
    int high = cost.length == 0 ? to : Math.max(base + cost.length - 1, to);
    if (high - low + 1 > cost.length) {
      long[] wider = new long[high - low + 1];
      Arrays.fill(wider, NEVER);
      System.arraycopy(cost, 0, wider, cost.length == 0 ? 0 : base - low, cost.length);
      cost = wider;
      base = low;
    }
    first = Math.min(first, from);
    last = Math.max(last, to);
  }

  /** Takes a cost at a second of the span where it is less. */
  void lower(int second, long to) {
    int at = second - base;
    cost[at] = Math.min(cost[at], to);
  }

  /**
   * Lets the van wait.
   *
   * @param price of a second
   * @param until last second
   * @return seconds looked at
   */
  int waiting(long price, int until) {
    if (first > last || until <= first) {
      return 0;
    }
    reach(first, Math.max(last, until));
    for (int at = first - base; at < until - base; at++) {
      if (cost[at] < NEVER) {
        cost[at + 1] = Math.min(cost[at + 1], cost[at] + price);
      }
    }
    return until - first;
  }

  /**
   * Gives what starts within a span to what ends so much later.
   *
   * @param to receives it
   * @param seconds how much later, 0 or more
   * @param from first second of the start
   * @param until last second of the start
   * @param price what it costs
   * @return seconds looked at
   */
  int give(CostBySecond to, int seconds, long from, long until, long price) {
    int start = (int) Math.max(first, from);
    int end = (int) Math.min(last, until);
    if (first > last || start > end) {
      return 0;
    }
    to.reach(start + seconds, end + seconds);
    int there = seconds - to.base;
    for (int t = start; t <= end; t++) {
      long here = cost[t - base];
      if (here < NEVER) {
        to.cost[t + there] = Math.min(to.cost[t + there], here + price);
      }
    }
    return end - start + 1;
  }

  /** {@return the least cost of any second} */
  long least() {
    long least = NEVER;
    for (int t = first; t <= last; t++) {
      least = Math.min(least, cost[t - base]);
    }
    return least;
  }
}
