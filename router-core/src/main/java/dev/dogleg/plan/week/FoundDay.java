package dev.dogleg.plan.week;

import java.util.stream.IntStream;

/** A day that {@link DayLabels} found. */
final class FoundDay {
  private final int[] order;
  private final long costSixtieths;

  FoundDay(int[] order, long costSixtieths) {
    this.order = order;
    this.costSixtieths = costSixtieths;
  }

  /** {@return visits as they are made, some of them more than once where it is no true day} */
  int[] order() {
    return order;
  }

  /** {@return cost with durations rounded down, without extra prices} */
  long costSixtieths() {
    return costSixtieths;
  }

  /** Whether each visit is made once. */
  boolean isTrueDay() {
    return IntStream.of(order).distinct().count() == order.length;
  }
}
