package dev.dogleg.time;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.Objects;

/**
 * One calendar day in one time zone: the edge between elapsed seconds and the wall clock.
 *
 * @param date the day
 * @param zone the zone its wall clock shows
 */
public record WorkDay(LocalDate date, ZoneId zone) {

  /** Checks that nothing is null. */
  public WorkDay {
    Objects.requireNonNull(date, "date");
    Objects.requireNonNull(zone, "zone");
  }

  /**
   * Elapsed seconds at a wall-clock time of this day.
   *
   * <p>A time that the clock skips is read as the instant after the gap; of a time shown twice the
   * first is meant (java.time's rule for {@code ZonedDateTime.of}).
   *
   * @param time wall clock
   * @return seconds since local midnight, 0..90,000
   */
  public int elapsedAt(LocalTime time) {
    ZonedDateTime instant = ZonedDateTime.of(LocalDateTime.of(date, time), zone);
    return Math.toIntExact(Duration.between(date.atStartOfDay(zone), instant).toSeconds());
  }

  /**
   * The wall clock at an instant of this day.
   *
   * @param elapsedSeconds seconds since local midnight
   * @return date and time with its offset
   */
  public ZonedDateTime wallAt(int elapsedSeconds) {
    return date.atStartOfDay(zone).plusSeconds(elapsedSeconds);
  }

  /**
   * Wall-clock text.
   *
   * @param elapsedSeconds seconds since local midnight
   * @return {@code HH:MM:SS}; the hours of a following day go on from 24
   */
  public String wallText(int elapsedSeconds) {
    ZonedDateTime wall = wallAt(elapsedSeconds);
    long extraDays = java.time.temporal.ChronoUnit.DAYS.between(date, wall.toLocalDate());
    return "%02d:%02d:%02d"
        .formatted(wall.getHour() + 24 * extraDays, wall.getMinute(), wall.getSecond());
  }

  /**
   * Elapsed time as text, for messages where no zone is known.
   *
   * @param elapsedSeconds seconds since local midnight
   * @return {@code HH:MM:SS}
   */
  public static String elapsedText(int elapsedSeconds) {
    return "%02d:%02d:%02d"
        .formatted(elapsedSeconds / 3600, elapsedSeconds / 60 % 60, elapsedSeconds % 60);
  }
}
