package dev.dogleg.cli.export;

import dev.dogleg.itinerary.NoRoom;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;

/**
 * A visit that a run leaves out.
 *
 * @param reason why, truly
 * @param label how it is shown
 * @param laterUntil last day of its span after the run that could still serve it; empty where there
 *     is none
 */
public record LeftOut(NoRoom reason, StopLabel label, Optional<LocalDate> laterUntil) {
  /** Checks that nothing is null. */
  public LeftOut {
    Objects.requireNonNull(reason, "reason");
    Objects.requireNonNull(label, "label");
    Objects.requireNonNull(laterUntil, "laterUntil");
  }
}
