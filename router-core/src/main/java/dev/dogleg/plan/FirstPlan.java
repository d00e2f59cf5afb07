package dev.dogleg.plan;

import dev.dogleg.schedule.OrderCost;

/**
 * A good plan to start from: cheapest insertion, then the best single move until none helps.
 *
 * <p>Moves: add a left-out visit, drop a waiting-list one, put a visit elsewhere, turn a stretch
 * round. Every order is timed exactly. First come the visits whose insertion is cheapest; equal
 * ones by number, so by id.
 */
final class FirstPlan {
  private final int n;
  private final DayValue value;
  private final OrderCost cost;
  private final WorkMeter meter;
  private int[] order = new int[0];
  private long best;

  FirstPlan(int n, DayValue value, OrderCost cost, WorkMeter meter) {
    this.n = n;
    this.value = value;
    this.cost = cost;
    this.meter = meter;
    this.best = value.allLeftOut();
  }

  /** {@return the best order found} */
  int[] order() {
    return order;
  }

  /** {@return its value} */
  long value() {
    return best;
  }

  /** Takes an order if it is better. */
  boolean offer(int[] candidate) {
    meter.count(candidate.length + 1L);
    long leftOut = value.allLeftOut();
    for (int visit : candidate) {
      leftOut -= value.leftOut(visit);
    }
    long driven = cost.of(candidate, best - leftOut);
    if (driven == OrderCost.IMPOSSIBLE) {
      return false;
    }
    best = driven + leftOut;
    order = candidate;
    return true;
  }

  /** Inserts and improves until nothing helps. */
  void improve() {
    boolean better = true;
    while (better && !meter.spent()) {
      better = insert() || move() || turn() || drop();
    }
  }

  private boolean insert() {
    boolean[] served = new boolean[n];
    for (int visit : order) {
      served[visit] = true;
    }
    int[] base = order;
    boolean better = false;
    for (int visit = 0; visit < n && !meter.spent(); visit++) {
      if (!served[visit]) {
        for (int at = 0; at <= base.length; at++) {
          better |= offer(inserted(base, visit, at));
        }
      }
    }
    return better;
  }

  private boolean move() {
    int[] base = order;
    boolean better = false;
    for (int from = 0; from < base.length && !meter.spent(); from++) {
      int[] without = removed(base, from);
      for (int at = 0; at <= without.length; at++) {
        if (at != from) {
          better |= offer(inserted(without, base[from], at));
        }
      }
    }
    return better;
  }

  private boolean turn() {
    int[] base = order;
    boolean better = false;
    for (int from = 0; from < base.length && !meter.spent(); from++) {
      for (int to = from + 2; to < base.length; to++) {
        int[] turned = base.clone();
        for (int k = from; k <= to; k++) {
          turned[k] = base[to - (k - from)];
        }
        better |= offer(turned);
      }
    }
    return better;
  }

  private boolean drop() {
    int[] base = order;
    boolean better = false;
    for (int at = 0; at < base.length && !meter.spent(); at++) {
      if (value.leftOut(base[at]) < DayValue.BOOKED) {
        better |= offer(removed(base, at));
      }
    }
    return better;
  }

  private static int[] inserted(int[] base, int visit, int at) {
    int[] longer = new int[base.length + 1];
    System.arraycopy(base, 0, longer, 0, at);
    longer[at] = visit;
    System.arraycopy(base, at, longer, at + 1, base.length - at);
    return longer;
  }

  private static int[] removed(int[] base, int at) {
    int[] shorter = new int[base.length - 1];
    System.arraycopy(base, 0, shorter, 0, at);
    System.arraycopy(base, at + 1, shorter, at, base.length - at - 1);
    return shorter;
  }
}
