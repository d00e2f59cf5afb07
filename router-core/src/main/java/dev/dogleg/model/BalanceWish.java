package dev.dogleg.model;

import java.util.OptionalInt;

/**
 * Prices of a day that is fuller or longer than others.
 *
 * @param groomSeconds seconds at the doors up to which a day costs nothing, 0..86,400; empty: an
 *     even share of the run
 * @param groomMinuteSeconds driving that each minute above is worth, 0..3,600 seconds
 * @param endWallSeconds wall-clock second up to which a day's end costs nothing; empty: not priced
 * @param endMinuteSeconds driving that each minute later is worth, 0..3,600 seconds
 */
public record BalanceWish(
    OptionalInt groomSeconds,
    int groomMinuteSeconds,
    OptionalInt endWallSeconds,
    int endMinuteSeconds) {
  /** Checks the ranges. */
  public BalanceWish {
    if (groomSeconds.orElse(0) < 0
        || groomSeconds.orElse(0) > 86_400
        || endWallSeconds.orElse(0) < 0
        || endWallSeconds.orElse(0) > WallSpan.MIDNIGHT
        || groomMinuteSeconds < 0
        || groomMinuteSeconds > 3_600
        || endMinuteSeconds < 0
        || endMinuteSeconds > 3_600) {
      throw new IllegalArgumentException("balance out of range");
    }
  }
}
