package dev.dogleg.model;

import dev.dogleg.time.TimeWindow;
import dev.dogleg.time.WorkDay;
import java.time.Duration;
import java.time.LocalTime;

/**
 * A closed span of wall-clock time on a day not yet named; {@link #on} gives the elapsed seconds of
 * a given day, right on the two days on which clocks change.
 *
 * @param fromSeconds first second by the wall clock since midnight, 0..86,400
 * @param toSeconds last second, inclusive, {@code fromSeconds}..86,400, or {@link #OPEN} for no end
 */
public record WallSpan(int fromSeconds, int toSeconds) {
  /** Midnight at the end of a day. */
  public static final int MIDNIGHT = 86_400;

  /** Stands for "no end". */
  public static final int OPEN = TimeWindow.DAY_END;

  /** No limit. */
  public static final WallSpan ALWAYS = new WallSpan(0, OPEN);

  /** Checks range and order. */
  public WallSpan {
    if (fromSeconds < 0
        || fromSeconds > MIDNIGHT
        || (toSeconds > MIDNIGHT && toSeconds != OPEN)
        || fromSeconds > toSeconds) {
      throw new IllegalArgumentException("no span of a day: " + fromSeconds + ".." + toSeconds);
    }
  }

  /**
   * The span on a given day.
   *
   * @param day date and zone
   * @return elapsed seconds; no limit stays no limit
   */
  public TimeWindow on(WorkDay day) {
    int from = elapsed(fromSeconds, day);
    return new TimeWindow(from, Math.max(from, elapsed(toSeconds, day)));
  }

  /**
   * A wall-clock second on a given day.
   *
   * @param wallSeconds 0..86,400, or {@link #OPEN}
   * @param day date and zone
   * @return elapsed seconds since that day's midnight
   */
  public static int elapsed(int wallSeconds, WorkDay day) {
    if (wallSeconds == OPEN) {
      return TimeWindow.DAY_END;
    }
    if (wallSeconds == MIDNIGHT) {
      return Math.toIntExact(
          Duration.between(
                  day.date().atStartOfDay(day.zone()),
                  day.date().plusDays(1).atStartOfDay(day.zone()))
              .toSeconds());
    }
    return day.elapsedAt(LocalTime.ofSecondOfDay(wallSeconds));
  }

  /**
   * What two spans share.
   *
   * @param other the other span
   * @return the common span, or null where they share nothing
   */
  WallSpan and(WallSpan other) {
    int from = Math.max(fromSeconds, other.fromSeconds);
    int to = Math.min(toSeconds, other.toSeconds);
    return from <= to ? new WallSpan(from, to) : null;
  }

  /**
   * Whether two spans share a second.
   *
   * @param other the other span
   * @return true where they touch too
   */
  public boolean meets(WallSpan other) {
    return and(other) != null;
  }

  /**
   * Whether another span lies in this one.
   *
   * @param inner the other span
   * @return true where every second of it is one of this, too
   */
  public boolean holds(WallSpan inner) {
    return fromSeconds <= inner.fromSeconds && inner.toSeconds <= toSeconds;
  }

  /** {@return {@code 09:00-12:00}, {@code from 15:00}, {@code to 11:00} or {@code any time}} */
  @Override
  public String toString() {
    if (fromSeconds == 0 && toSeconds == OPEN) {
      return "any time";
    }
    if (toSeconds == OPEN) {
      return "from " + text(fromSeconds);
    }
    return fromSeconds == 0 ? "to " + text(toSeconds) : text(fromSeconds) + "-" + text(toSeconds);
  }

  /**
   * Wall-clock text.
   *
   * @param wallSeconds 0..86,400
   * @return {@code HH:MM}, with seconds where there are any
   */
  public static String text(int wallSeconds) {
    String minutes = "%02d:%02d".formatted(wallSeconds / 3600, wallSeconds / 60 % 60);
    return wallSeconds % 60 == 0 ? minutes : minutes + ":%02d".formatted(wallSeconds % 60);
  }

  // Written out: what a record brings along spins classes at its first call, anew in each start.

  @Override
  public boolean equals(Object other) {
    return other instanceof WallSpan span
        && fromSeconds == span.fromSeconds
        && toSeconds == span.toSeconds;
  }

  @Override
  public int hashCode() {
    return 31 * fromSeconds + toSeconds;
  }
}
