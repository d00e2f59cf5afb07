package dev.dogleg.schedule;

/**
 * Lower bounds on the rest of one order, from each of its stops on, as functions of time.
 *
 * <p>One pass backwards with {@link FloorStep}, inside the times that {@link OrderBounds} leaves.
 * Mutable, one thread.
 */
final class OrderFloor {
  /** Flat pieces of a floor that differ by less than this part of the whole cost are one. */
  private static final int PART = 4096;

  private final DayModel day;
  private final FloorStep step;
  private CostFloor[] open = new CostFloor[0];
  private CostFloor[] taken = new CostFloor[0];
  private final CostFloor arrive = new CostFloor(32);
  private final CostFloor pause = new CostFloor(32);
  private final CostFloor leave = new CostFloor(32);
  private final CostFloor lesser = new CostFloor(32);

  OrderFloor(DayModel day) {
    this.day = day;
    step = new FloorStep(day, 0);
  }

  /** Computes them for an order that {@code bounds} has looked at and found possible. */
  void choose(int[] order, OrderBounds bounds, OrderTerms terms) {
    int n = order.length;
    if (open.length < n + 1) {
      open = grown(n + 1);
      taken = grown(n + 1);
    }
    boolean pauses = day.hasBreak() && n > 1;
    step.join(bounds.wholeCost() / PART / n);
    for (int k = n - 1; k >= 0; k--) {
      int i = order[k];
      int first = bounds.earliest(k);
      int last = Math.min(bounds.readyBy(k), day.latestLeave(i));
      CostFloor here = open[k + 1];
      CostFloor after = taken[k + 1];
      if (k == n - 1) {
        int endBy = pauses ? Math.min(day.latestEnd(), day.breakFrom()) : day.latestEnd();
        step.home(i, endBy, first, last, here);
        here.raise(terms.endPrice());
        after.clear();
        if (pauses) {
          step.home(i, day.latestEnd(), first, last, after);
          after.raise(terms.endPrice());
        }
      } else {
        int j = order[k + 1];
        int service = terms.service(k + 1);
        long price = terms.price(k + 1);
        after.clear();
        arrive.clear();
        step.arriving(open[k + 2], j, service, arrive);
        arrive.raise(price);
        if (pauses) {
          step.arriving(taken[k + 2], j, service, pause);
          pause.raise(price);
          step.leg(pause, i, j, first, last, after);
          step.linger(after, first);
          pause.clear();
          if (j < day.size()) {
            step.arrivingForBreak(taken[k + 2], j, service, pause);
            pause.raise(price);
          }
          lesser.lesser(arrive, pause, day.from(), day.latestEnd(), 0);
          step.leg(lesser, i, j, first, last, leave);
          pause.clear();
          if (i < day.size()) {
            step.breakFirst(after, pause);
          }
          here.lesser(leave, pause, first, last, 0);
        } else {
          step.leg(arrive, i, j, first, last, here);
        }
      }
      step.linger(here, first);
      step.linger(after, first);
    }
    step.arriving(open[1], order[0], terms.service(0), arrive);
    arrive.raise(terms.price(0));
    step.leg(arrive, day.start(), order[0], day.from(), bounds.latestStart(), open[0]);
    taken[0].clear();
  }

  private static CostFloor[] grown(int n) {
    CostFloor[] floors = new CostFloor[n];
    for (int k = 0; k < n; k++) {
      floors[k] = new CostFloor(16);
    }
    return floors;
  }

  /** {@return least cost of the order from being ready at position {@code k} (-1: the start) on} */
  CostFloor from(int k, boolean breakTaken) {
    return breakTaken ? taken[k + 1] : open[k + 1];
  }
}
