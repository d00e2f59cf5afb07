package dev.dogleg.plan.late;

import java.util.Objects;

/**
 * What a plan does with a promise.
 *
 * @param promise the promise
 * @param arriveSeconds when the van is at the door, elapsed seconds
 * @param lateSeconds seconds after the promise's end, 0 where it is kept; where what may not slide
 *     opens only after that end, counted to its opening
 */
public record PromiseKept(Promise promise, int arriveSeconds, int lateSeconds) {
  /** Checks that nothing is null or negative. */
  public PromiseKept {
    Objects.requireNonNull(promise, "promise");
    if (lateSeconds < 0) {
      throw new IllegalArgumentException("lateSeconds is 0 or more, was " + lateSeconds);
    }
  }

  /** {@return whether it is kept} */
  public boolean kept() {
    return lateSeconds == 0;
  }
}
