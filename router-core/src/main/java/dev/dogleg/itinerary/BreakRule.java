package dev.dogleg.itinerary;

import dev.dogleg.time.TimeWindow;
import java.util.Objects;

/**
 * The groomer's break.
 *
 * @param lengthSeconds how long it lasts, 1..14,400
 * @param startWithin when it may start (its end is not limited)
 */
public record BreakRule(int lengthSeconds, TimeWindow startWithin) {
  /** Checks the range. */
  public BreakRule {
    Objects.requireNonNull(startWithin, "startWithin");
    if (lengthSeconds < 1 || lengthSeconds > 14_400) {
      throw new IllegalArgumentException("break must lie in 1..14400 s, was " + lengthSeconds);
    }
  }
}
