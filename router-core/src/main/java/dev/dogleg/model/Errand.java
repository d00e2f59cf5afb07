package dev.dogleg.model;

import java.util.Objects;
import java.util.Optional;

/**
 * A stop of the groomer's own.
 *
 * @param id unique among bookings and errands
 * @param name what it is
 * @param dates the day or the days of which one is to be used
 * @param when limits by weekday and time
 * @param seconds how long it takes, 60..43,200
 * @param place where
 * @param groomerId who runs it, or empty: anybody
 * @param note free text
 */
public record Errand(
    String id,
    String name,
    DateSpan dates,
    When when,
    int seconds,
    Place place,
    Optional<String> groomerId,
    String note) {

  /** Checks ids and ranges. */
  public Errand {
    Ids.checked(id);
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(dates, "dates");
    Objects.requireNonNull(when, "when");
    Objects.requireNonNull(place, "place");
    Objects.requireNonNull(groomerId, "groomerId");
    Objects.requireNonNull(note, "note");
    if (seconds < 60 || seconds > 43_200) {
      throw new IllegalArgumentException("seconds must lie in 60..43200, was " + seconds);
    }
  }
}
