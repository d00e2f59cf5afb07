package dev.dogleg.schedule;

import java.util.Arrays;

/**
 * What the terms make of one order: how long each stop is served, what each step and the end cost,
 * and whether every must rule and the tanks allow it.
 *
 * <p>Stops of an order are visits and, from node {@code n + 2} on, water stops. Mutable, one
 * thread.
 */
final class OrderTerms {
  private final DayModel day;
  private final StepTerms terms;
  private final long[] served;
  private int[] service = new int[0];
  private long[] price = new long[0];
  private long endPrice;

  OrderTerms(DayModel day) {
    this.day = day;
    this.terms = day.steps();
    served = new long[Math.max(1, (day.size() + Long.SIZE - 1) / Long.SIZE)];
  }

  /** Looks at an order; false where a must rule or a tank forbids it. */
  boolean choose(int[] order) {
    int n = order.length;
    if (service.length < n) {
      service = new int[n];
      price = new long[n];
    }
    endPrice = 0;
    if (terms.free() && !terms.water() && !terms.pricesGroom()) {
      for (int k = 0; k < n; k++) {
        service[k] = day.doors.service[order[k]];
        price[k] = 0;
      }
      return true;
    }
    return judged(order);
  }

  private boolean judged(int[] order) {
    Arrays.fill(served, 0);
    boolean allowed = true;
    int last = day.start();
    int place = 0;
    int fresh = 0;
    int grey = 0;
    long groomed = 0;
    for (int k = 0; k < order.length; k++) {
      int next = order[k];
      if (next > day.end()) {
        service[k] = day.doors.service[next];
        price[k] = 0;
        fresh = 0;
        grey = 0;
        continue;
      }
      place++;
      allowed &= terms.may(served, 0, last, next, place);
      service[k] = terms.service(last, next, place);
      price[k] = terms.price(served, 0, last, next, place);
      fresh += terms.fresh(next);
      grey += terms.grey(next);
      allowed &= terms.lasts(fresh, grey);
      groomed += service[k];
      served[next >>> 6] |= 1L << next;
      last = next;
    }
    if (place > 0) {
      allowed &= terms.mayEnd(served, 0, last);
      endPrice = terms.endPrice(served, 0, last) + terms.groomPrice(groomed);
    }
    return allowed;
  }

  /** {@return seconds of the service at position {@code k}} */
  int service(int k) {
    return service[k];
  }

  /** {@return price of the step to position {@code k}} */
  long price(int k) {
    return price[k];
  }

  /** {@return price of ending with the last position} */
  long endPrice() {
    return endPrice;
  }
}
