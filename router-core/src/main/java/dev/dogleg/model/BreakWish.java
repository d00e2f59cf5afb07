package dev.dogleg.model;

import java.util.Objects;

/**
 * The break of every working day.
 *
 * @param lengthSeconds how long, 60..14,400
 * @param startWithin when it may start, by the wall clock
 */
public record BreakWish(int lengthSeconds, WallSpan startWithin) {
  /** Checks the range. */
  public BreakWish {
    Objects.requireNonNull(startWithin, "startWithin");
    if (lengthSeconds < 60 || lengthSeconds > 14_400) {
      throw new IllegalArgumentException("break must lie in 60..14400 s, was " + lengthSeconds);
    }
  }
}
