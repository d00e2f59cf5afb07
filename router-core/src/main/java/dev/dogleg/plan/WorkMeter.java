package dev.dogleg.plan;

import java.util.function.BooleanSupplier;

/** Counts solver steps, and says when to stop: at a count (repeatable) or on a signal (not). */
final class WorkMeter {
  /** Steps between two looks at the signal. */
  private static final int LOOK_EVERY = 4096;

  private final long limit;
  private final BooleanSupplier signal;
  private long steps;
  private long nextLook = LOOK_EVERY;
  private boolean signalled;

  WorkMeter(long limit, BooleanSupplier signal) {
    this.limit = limit;
    this.signal = signal;
  }

  /** Counts steps. */
  void count(long more) {
    steps += more;
    if (steps >= nextLook) {
      nextLook = steps + LOOK_EVERY;
      signalled |= signal.getAsBoolean();
    }
  }

  /** {@return whether work must end} */
  boolean spent() {
    return signalled || steps >= limit;
  }

  /** {@return whether a signal, not the count, ended it} */
  boolean signalled() {
    return signalled;
  }

  /** {@return steps counted} */
  long steps() {
    return steps;
  }

  /** {@return a meter for a share of the whole limit, of what is left; add its steps when done} */
  WorkMeter share(int parts) {
    return new WorkMeter(Math.max(1, Math.min(limit / parts, limit - steps)), signal);
  }
}
