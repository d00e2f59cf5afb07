package dev.dogleg.model;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * Who grooms, apart from the van.
 *
 * @param id unique in a card
 * @param name as called
 * @param paceThousandths own minutes per thousand minutes of the table, 500..2,000
 * @param hours shift by weekday; a weekday that is missing is not worked
 * @param daysOff days not worked
 * @param home where the day starts and ends
 * @param vanId with which van
 * @param tags what rules may ask of the person
 */
public record Groomer(
    String id,
    String name,
    int paceThousandths,
    Map<DayOfWeek, WallSpan> hours,
    List<DateSpan> daysOff,
    Place home,
    String vanId,
    List<Tag> tags) {

  /** Checks ranges. */
  public Groomer {
    tags = List.copyOf(tags);
    Ids.checked(id);
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(home, "home");
    Objects.requireNonNull(vanId, "vanId");
    daysOff = List.copyOf(daysOff);
    Map<DayOfWeek, WallSpan> copy = new EnumMap<>(DayOfWeek.class);
    copy.putAll(hours);
    hours = Collections.unmodifiableMap(copy);
    if (paceThousandths < 500 || paceThousandths > 2_000) {
      throw new IllegalArgumentException(
          "paceThousandths must lie in 500..2000, was " + paceThousandths);
    }
    for (WallSpan span : hours.values()) {
      if (span.toSeconds() == WallSpan.OPEN) {
        throw new IllegalArgumentException("a shift needs an end");
      }
    }
  }

  /**
   * A groomer without tags.
   *
   * @param id see the record
   * @param name see the record
   * @param paceThousandths see the record
   * @param hours see the record
   * @param daysOff see the record
   * @param home see the record
   * @param vanId see the record
   */
  public Groomer(
      String id,
      String name,
      int paceThousandths,
      Map<DayOfWeek, WallSpan> hours,
      List<DateSpan> daysOff,
      Place home,
      String vanId) {
    this(id, name, paceThousandths, hours, daysOff, home, vanId, List.of());
  }

  /**
   * The shift of a date.
   *
   * @param date the date
   * @return the shift by the wall clock, or empty where the day is not worked
   */
  public Optional<WallSpan> hoursOn(LocalDate date) {
    if (daysOff.stream().anyMatch(off -> off.holds(date))) {
      return Optional.empty();
    }
    return Optional.ofNullable(hours.get(date.getDayOfWeek()));
  }
}
