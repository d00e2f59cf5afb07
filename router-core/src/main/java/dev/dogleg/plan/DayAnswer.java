package dev.dogleg.plan;

/** What the engine found: an order, its packed value, and what no day can beat. */
final class DayAnswer {
  private final int[] order;
  private final long value;
  private final long lowerBound;

  DayAnswer(int[] order, long value, long lowerBound) {
    this.order = order;
    this.value = value;
    this.lowerBound = lowerBound;
  }

  /** {@return visits served, in order} */
  int[] order() {
    return order.clone();
  }

  /** {@return packed value, see {@link DayValue}} */
  long value() {
    return value;
  }

  /** {@return no day is worth less; equal to the value where proven} */
  long lowerBound() {
    return lowerBound;
  }
}
