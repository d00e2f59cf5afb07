package dev.dogleg.schedule;

/**
 * What an order needs at least: when each stop can be ready, must be ready, and what the rest
 * costs.
 *
 * <p>Maintainers: one pass forwards, leaving every door as early as possible (first in, first out),
 * with the break open and with it taken; one pass backwards. A leg's price is its least over the
 * leaving times in between. Mutable, one thread.
 */
final class OrderBounds {
  private static final int NEVER = Integer.MAX_VALUE / 4;

  private final DayModel day;
  private final OrderTerms terms;
  private long[] restCost = new long[0];
  private int[] readyBy = new int[0];
  private int[] earliest = new int[0];
  private long wholeCost;
  private int latestStart;

  OrderBounds(DayModel day, OrderTerms terms) {
    this.day = day;
    this.terms = terms;
  }

  /** Looks at an order; false where no timing can keep its rules. */
  boolean choose(int[] order) {
    int n = order.length;
    if (restCost.length < n) {
      restCost = new long[n];
      readyBy = new int[n];
      earliest = new int[n];
    }
    int end = earliestEnd(order);
    if (end > day.latestEnd()) {
      return false;
    }
    int next = day.end();
    int arriveBy = day.latestEnd();
    long rest = day.endCost(end) + terms.endPrice();
    for (int k = n - 1; k >= 0; k--) {
      int leaveBy = arriveBy - day.leastDrive(order[k], next);
      if (leaveBy < earliest[k]) {
        return false;
      }
      readyBy[k] = leaveBy;
      rest += price(order[k], next, earliest[k], leaveBy);
      restCost[k] = rest;
      rest += terms.price(k);
      next = order[k];
      arriveBy = Math.min(day.latestArrival(next), leaveBy - terms.service(k));
    }
    latestStart = arriveBy - day.leastDrive(day.start(), next);
    if (latestStart < day.from()) {
      return false;
    }
    wholeCost = rest + price(day.start(), next, day.from(), latestStart);
    return true;
  }

  private long price(int i, int j, int from, int to) {
    return day.legPrice(i, j) + day.drivePrice() * day.leastDrive(i, j, from, to);
  }

  private int earliestEnd(int[] order) {
    int open = day.from();
    int taken = NEVER;
    int i = day.start();
    for (int k = 0; k < order.length; k++) {
      int j = order[k];
      if (!day.reaches(i, j)) {
        return NEVER;
      }
      int arrive = open + drive(i, j, open);
      int nextTaken = ready(k, j, taken + drive(i, j, taken), 0);
      if (day.breakLength() > 0 && k > 0) {
        if (open <= day.breakTo() && i < day.size()) {
          int leave = Math.max(open, day.breakFrom()) + day.breakLength();
          nextTaken = Math.min(nextTaken, ready(k, j, leave + drive(i, j, leave), 0));
        }
        if (arrive <= day.breakTo() && j < day.size()) {
          int wait = Math.max(0, day.breakFrom() - arrive);
          nextTaken = Math.min(nextTaken, ready(k, j, arrive, wait + day.breakLength()));
        }
      }
      open = ready(k, j, arrive, 0);
      taken = nextTaken;
      earliest[k] = Math.min(open, taken);
      if (earliest[k] >= NEVER) {
        return NEVER;
      }
      i = j;
    }
    if (!day.reaches(i, day.end())) {
      return NEVER;
    }
    int openEnd = open + drive(i, day.end(), open);
    int takenEnd = taken + drive(i, day.end(), taken);
    boolean openMayEnd = day.breakLength() == 0 || order.length < 2 || openEnd <= day.breakFrom();
    return openMayEnd ? Math.min(openEnd, takenEnd) : takenEnd;
  }

  private int drive(int i, int j, int leave) {
    return leave >= NEVER ? 0 : day.drive(i, j, leave);
  }

  private int ready(int k, int j, int arrive, int pause) {
    if (arrive > day.latestArrival(j)) {
      return NEVER;
    }
    return Math.max(arrive + pause, day.earliestService(j)) + terms.service(k);
  }

  /** {@return least cost from leaving position {@code k} on, the end included} */
  long restCost(int k) {
    return restCost[k];
  }

  /** {@return first second at which position {@code k} can be ready} */
  int earliest(int k) {
    return earliest[k];
  }

  /** {@return last second by which position {@code k} may be ready} */
  int readyBy(int k) {
    return readyBy[k];
  }

  /** {@return latest leaving of the start place} */
  int latestStart() {
    return latestStart;
  }

  /** {@return least cost of the whole order} */
  long wholeCost() {
    return wholeCost;
  }
}
