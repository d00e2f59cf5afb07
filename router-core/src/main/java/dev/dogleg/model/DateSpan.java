package dev.dogleg.model;

import java.time.LocalDate;

/**
 * A closed span of calendar days.
 *
 * @param from first day
 * @param to last day, inclusive, not before {@code from}
 */
public record DateSpan(LocalDate from, LocalDate to) {
  /** Checks the order. */
  public DateSpan {
    if (to.isBefore(from)) {
      throw new IllegalArgumentException("span ends before it starts: " + from + ".." + to);
    }
  }

  /**
   * One day.
   *
   * @param day the day
   * @return the span of that day alone
   */
  public static DateSpan of(LocalDate day) {
    return new DateSpan(day, day);
  }

  /**
   * Whether a day lies inside.
   *
   * @param day the day
   * @return true at both ends too
   */
  public boolean holds(LocalDate day) {
    return !day.isBefore(from) && !day.isAfter(to);
  }

  /** {@return whether it is one day} */
  public boolean single() {
    return from.equals(to);
  }

  /** {@return {@code 2027-03-01} or {@code 2027-03-01..2027-03-05}} */
  @Override
  public String toString() {
    return single() ? from.toString() : from + ".." + to;
  }
}
