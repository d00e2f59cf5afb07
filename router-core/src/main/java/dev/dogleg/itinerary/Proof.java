package dev.dogleg.itinerary;

import java.util.Objects;

/**
 * How far from perfect a plan can be.
 *
 * @param kind how the search ended
 * @param leftOutBound no plan leaves out fewer booked visits than this
 * @param costBound no plan that leaves out {@code leftOutBound} booked visits costs less than this,
 *     in sixtieths
 * @param steps solver steps taken
 */
public record Proof(Kind kind, int leftOutBound, long costBound, long steps) {
  /** How the search ended. */
  public enum Kind {
    /** No plan can beat this one. */
    PROVEN_BEST,
    /** Stopped by the work limit; the same bytes on any machine. */
    WORK_LIMIT,
    /** Stopped by the clock or by a person; not repeatable. */
    CLOCK_LIMIT
  }

  /** Checks that nothing is null or negative. */
  public Proof {
    Objects.requireNonNull(kind, "kind");
    if (leftOutBound < 0 || costBound < 0 || steps < 0) {
      throw new IllegalArgumentException("bounds and steps are 0 or more");
    }
  }
}
