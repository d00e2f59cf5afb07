package dev.dogleg.cli.export;

import dev.dogleg.itinerary.WeekNoRoom;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;

/**
 * A stop that a week leaves out.
 *
 * @param reason why on each van-day, and the smallest change that makes room
 * @param label how it is shown
 * @param laterUntil last day of its span after the run; empty where there is none
 * @param moved how the stop is shown that the change moves, or empty
 */
public record WeekLeftOut(
    WeekNoRoom reason, StopLabel label, Optional<LocalDate> laterUntil, Optional<StopLabel> moved) {
  /** Checks that nothing is null. */
  public WeekLeftOut {
    Objects.requireNonNull(reason, "reason");
    Objects.requireNonNull(label, "label");
    Objects.requireNonNull(laterUntil, "laterUntil");
    Objects.requireNonNull(moved, "moved");
  }

  /** {@return whether an agreed stop finds no room that has no later day either} */
  public boolean agreed() {
    return label.booked() && laterUntil.isEmpty();
  }
}
