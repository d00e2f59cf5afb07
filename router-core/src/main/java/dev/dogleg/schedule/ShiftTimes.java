package dev.dogleg.schedule;

import dev.dogleg.itinerary.BreakRule;
import dev.dogleg.itinerary.DayShift;

/**
 * When a day may be worked; times are any {@code int}.
 *
 * @param from earliest leaving of the start place
 * @param to end of the shift, from which overtime counts
 * @param latestEnd last second at which the end place may be reached
 * @param breakLength length of the break; 0: none
 * @param breakFrom earliest start of the break
 * @param breakTo latest start of the break
 */
record ShiftTimes(int from, int to, int latestEnd, int breakLength, int breakFrom, int breakTo) {
  static ShiftTimes of(DayShift shift) {
    return new ShiftTimes(
        shift.hours().fromSeconds(),
        shift.hours().toSeconds(),
        shift.latestEndSeconds(),
        shift.breakRule().map(BreakRule::lengthSeconds).orElse(0),
        shift.breakRule().map(rule -> rule.startWithin().fromSeconds()).orElse(0),
        shift.breakRule().map(rule -> rule.startWithin().toSeconds()).orElse(0));
  }

  /** A shift without a break and without overtime. */
  static ShiftTimes plain(int from, int latestEnd) {
    return new ShiftTimes(from, latestEnd, latestEnd, 0, 0, 0);
  }

  /** The same times with another latest end. */
  ShiftTimes endingBy(int latest) {
    return new ShiftTimes(from, to, latest, breakLength, breakFrom, breakTo);
  }
}
