package dev.dogleg.model;

import java.util.Objects;

/**
 * A span for arrival at the door that was told to the owner: a promise. Kept means at the door not
 * after its end; an early van waits for its start.
 *
 * @param arriveWithin the span by the wall clock of the booking's date
 */
public record ToldTime(WallSpan arriveWithin) {
  /** Checks that it has an end. */
  public ToldTime {
    Objects.requireNonNull(arriveWithin, "arriveWithin");
    if (arriveWithin.toSeconds() == WallSpan.OPEN) {
      throw new IllegalArgumentException("a told time needs an end");
    }
  }
}
