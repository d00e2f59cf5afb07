package dev.dogleg.model;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What is special about one day, of one groomer or of all.
 *
 * @param date the day
 * @param groomerId whose day, or empty: everybody's
 * @param hours the shift by the wall clock with an end, or empty: as in the card
 * @param start where the day starts, or empty: at home
 * @param end where it ends, or empty: at home
 * @param helper who comes along, or empty: nobody
 * @param off whether the day is not worked
 * @param tags tags of the day, such as {@code hot}
 */
public record DayEntry(
    LocalDate date,
    Optional<String> groomerId,
    Optional<WallSpan> hours,
    Optional<Place> start,
    Optional<Place> end,
    Optional<String> helper,
    boolean off,
    List<Tag> tags) {

  /** Checks and copies. */
  public DayEntry {
    Objects.requireNonNull(date, "date");
    Objects.requireNonNull(groomerId, "groomerId");
    Objects.requireNonNull(start, "start");
    Objects.requireNonNull(end, "end");
    Objects.requireNonNull(helper, "helper");
    tags = List.copyOf(tags);
    if (hours.isPresent() && hours.get().toSeconds() == WallSpan.OPEN) {
      throw new IllegalArgumentException("a shift needs an end");
    }
  }

  /**
   * Whether it speaks of a groomer.
   *
   * @param id id of a groomer
   * @return true where nobody is named too
   */
  public boolean speaksOf(String id) {
    return groomerId.map(id::equals).orElse(true);
  }
}
