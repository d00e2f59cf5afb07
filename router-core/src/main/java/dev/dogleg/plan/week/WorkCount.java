package dev.dogleg.plan.week;

import java.util.function.BooleanSupplier;

/**
 * Counts solver steps, and says when to stop: at a count (repeatable) or on a signal (not). Several
 * threads may count.
 */
final class WorkCount {
  private final long limit;
  private final BooleanSupplier signal;
  private long steps;
  private boolean signalled;

  WorkCount(long limit, BooleanSupplier signal) {
    this.limit = limit;
    this.signal = signal;
  }

  /** Counts steps and looks at the signal. */
  synchronized void count(long more) {
    steps += more;
    signalled = signalled || signal.getAsBoolean();
  }

  /** {@return whether work must end} */
  boolean spent() {
    return signalled || steps >= limit;
  }

  /** {@return whether a signal, not the count, ended it} */
  boolean signalled() {
    return signalled;
  }

  /** {@return whether the signal is given now; for a count that is a share of this one} */
  boolean signalledNow() {
    signalled = signalled || signal.getAsBoolean();
    return signalled;
  }

  long steps() {
    return steps;
  }
}
