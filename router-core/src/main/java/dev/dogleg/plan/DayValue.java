package dev.dogleg.plan;

import dev.dogleg.schedule.DayModel;

/**
 * The value of a day as one {@code long}: booked visits left out first, then cost.
 *
 * <p>Two whole numbers packed, never weighed: a cost stays below {@link #BOOKED}, so comparing
 * values compares counts first.
 */
final class DayValue {
  /** One booked visit left out. */
  static final long BOOKED = 1L << 52;

  /** No day at all; sums of two still fit. */
  static final long NONE = 1L << 61;

  private final long[] leftOut;
  private final long all;

  DayValue(DayModel day) {
    this(day, false);
  }

  /** Values where, if {@code all}, a waiting-list visit must be served like a booked one. */
  DayValue(DayModel day, boolean all) {
    leftOut = new long[day.size()];
    long sum = 0;
    for (int visit = 0; visit < day.size(); visit++) {
      boolean must = all || day.visit(visit).booked();
      leftOut[visit] = must ? BOOKED : day.visit(visit).leftOutSixtieths();
      sum += leftOut[visit];
    }
    this.all = sum;
  }

  /** {@return value of leaving out one visit} */
  long leftOut(int visit) {
    return leftOut[visit];
  }

  /** {@return value of leaving out all visits} */
  long allLeftOut() {
    return all;
  }

  static int booked(long value) {
    return Math.toIntExact(value / BOOKED);
  }

  static long cost(long value) {
    return value % BOOKED;
  }
}
