package dev.dogleg.oracle;

import java.util.Arrays;

/** Least cost by second, with how it was reached. */
final class Cells {
  /** A cost that is none. */
  static final long NEVER = Long.MAX_VALUE / 4;

  /** Makes the thing that happened, where it turns out to be the cheapest. */
  interface Told {
    Lived tell();
  }

  private final long[] cost;
  private final Lived[] lived;

  Cells(int seconds) {
    cost = new long[seconds];
    lived = new Lived[seconds];
    Arrays.fill(cost, NEVER);
  }

  long cost(int t) {
    return cost[t];
  }

  Lived lived(int t) {
    return lived[t];
  }

  boolean empty() {
    return Arrays.stream(cost).allMatch(c -> c >= NEVER);
  }

  void lower(int t, long to, Told told) {
    if (to < cost[t]) {
      cost[t] = to;
      lived[t] = told.tell();
    }
  }

  /** Takes what is cheaper elsewhere. */
  void lower(Cells other, long more) {
    for (int t = 0; t < cost.length; t++) {
      if (other.cost[t] < NEVER && other.cost[t] + more < cost[t]) {
        cost[t] = other.cost[t] + more;
        lived[t] = other.lived[t];
      }
    }
  }
}
