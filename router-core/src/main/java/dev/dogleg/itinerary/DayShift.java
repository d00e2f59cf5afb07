package dev.dogleg.itinerary;

import dev.dogleg.time.TimeWindow;
import dev.dogleg.time.WorkDay;
import java.util.Objects;
import java.util.Optional;

/**
 * One groomer's working day with one van.
 *
 * @param groomerId who
 * @param vanId with which van
 * @param day date and zone
 * @param startPlace place left in the morning, a number of the request's travel times
 * @param endPlace place reached at the end
 * @param hours earliest leaving of the start place, and the shift's end
 * @param overtimeSeconds the most by which the end place may be reached after the shift's end,
 *     0..43,200
 * @param breakRule the break, or empty
 */
public record DayShift(
    String groomerId,
    String vanId,
    WorkDay day,
    int startPlace,
    int endPlace,
    TimeWindow hours,
    int overtimeSeconds,
    Optional<BreakRule> breakRule) {

  /** Checks ranges. */
  public DayShift {
    Objects.requireNonNull(groomerId, "groomerId");
    Objects.requireNonNull(vanId, "vanId");
    Objects.requireNonNull(day, "day");
    Objects.requireNonNull(hours, "hours");
    Objects.requireNonNull(breakRule, "breakRule");
    if (startPlace < 0 || endPlace < 0) {
      throw new IllegalArgumentException("places are numbers from 0");
    }
    if (overtimeSeconds < 0 || overtimeSeconds > 43_200) {
      throw new IllegalArgumentException(
          "overtimeSeconds must lie in 0..43200, was " + overtimeSeconds);
    }
  }

  /** {@return the last second at which the end place may be reached} */
  public int latestEndSeconds() {
    return Math.min(TimeWindow.DAY_END, hours.toSeconds() + overtimeSeconds);
  }

  /**
   * The same shift with other hours.
   *
   * @param other earliest leaving of the start place, and the shift's end
   * @return the shift
   */
  public DayShift during(TimeWindow other) {
    return new DayShift(
        groomerId, vanId, day, startPlace, endPlace, other, overtimeSeconds, breakRule);
  }

  /**
   * The same shift with another break.
   *
   * @param other the break; empty: none
   * @return the shift
   */
  public DayShift resting(Optional<BreakRule> other) {
    return new DayShift(groomerId, vanId, day, startPlace, endPlace, hours, overtimeSeconds, other);
  }

  /**
   * The same shift with less overtime.
   *
   * @param latest the end place is reached by then, if that is earlier than the shift allows; the
   *     shift's own end or later
   * @return the shift
   */
  public DayShift endingBy(int latest) {
    int most = Math.min(overtimeSeconds, latest - hours.toSeconds());
    return new DayShift(groomerId, vanId, day, startPlace, endPlace, hours, most, breakRule);
  }

  // Written out: what a record brings along spins classes at its first call, anew in each start.

  @Override
  public boolean equals(Object other) {
    return this == other
        || (other instanceof DayShift shift
            && groomerId.equals(shift.groomerId)
            && vanId.equals(shift.vanId)
            && day.equals(shift.day)
            && startPlace == shift.startPlace
            && endPlace == shift.endPlace
            && hours.equals(shift.hours)
            && overtimeSeconds == shift.overtimeSeconds
            && breakRule.equals(shift.breakRule));
  }

  @Override
  public int hashCode() {
    return Objects.hash(
        groomerId, vanId, day, startPlace, endPlace, hours, overtimeSeconds, breakRule);
  }
}
