package dev.dogleg.model;

import dev.dogleg.time.TimeWindow;
import java.util.List;

/**
 * The limits of one booking on one given day, in elapsed seconds since its local midnight; three
 * limits kept apart, as the planner takes them.
 *
 * @param arriveWithin spans for arrival at the door; sorted, apart, at least one
 * @param doneBySeconds last second at which the service may end; {@link TimeWindow#DAY_END} for no
 *     limit
 * @param vanWithin spans of which one must hold the whole stay; sorted, apart, at least one
 * @param first whether it must be the first stop of the day
 */
public record DayLimits(
    List<TimeWindow> arriveWithin, int doneBySeconds, List<TimeWindow> vanWithin, boolean first) {

  /** No limit at all. */
  public static final DayLimits NONE =
      new DayLimits(
          List.of(TimeWindow.ALWAYS), TimeWindow.DAY_END, List.of(TimeWindow.ALWAYS), false);

  /** Copies the lists. */
  public DayLimits {
    arriveWithin = List.copyOf(arriveWithin);
    vanWithin = List.copyOf(vanWithin);
    if (arriveWithin.isEmpty() || vanWithin.isEmpty()) {
      throw new IllegalArgumentException("a limit needs at least one span");
    }
  }

  /**
   * The same limits with another span for arrival: a told time takes the place of what was wished.
   *
   * @param told the told span
   * @return the limits
   */
  public DayLimits arriving(TimeWindow told) {
    return new DayLimits(List.of(told), doneBySeconds, vanWithin, first);
  }
}
