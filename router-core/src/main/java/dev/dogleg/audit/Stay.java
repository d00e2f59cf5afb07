package dev.dogleg.audit;

import dev.dogleg.itinerary.BreakRule;

/**
 * The earliest times of one stay at a door, given the arrival; limits are not looked at here.
 *
 * @param arriveSeconds arrival at the door
 * @param breakStartSeconds start of the break; -1 where none is taken at this door
 * @param startSeconds start of the service
 * @param endSeconds end of the service
 * @param readySeconds when the door may be left
 */
record Stay(
    int arriveSeconds, int breakStartSeconds, int startSeconds, int endSeconds, int readySeconds) {

  /** The stay of a van that does everything at once; {@code rule} may be null without a break. */
  static Stay earliest(Door door, BreakAt at, BreakRule rule, int arriveSeconds) {
    int free = arriveSeconds;
    int breakStart = -1;
    if (at == BreakAt.BEFORE) {
      breakStart = Math.max(free, rule.startWithin().fromSeconds());
      free = breakStart + rule.lengthSeconds();
    }
    int start = Math.max(free, door.windowStart(arriveSeconds));
    int end = start + door.serviceSeconds();
    int ready = end;
    if (at == BreakAt.AFTER) {
      breakStart = Math.max(end, rule.startWithin().fromSeconds());
      ready = breakStart + rule.lengthSeconds();
    }
    return new Stay(arriveSeconds, breakStart, start, end, ready);
  }

  /** Whether arrival, end of service and start of the break keep their limits. */
  boolean inTime(Door door, BreakRule rule) {
    return arriveSeconds <= door.latestArrivalSeconds()
        && endSeconds <= door.doneBySeconds()
        && (breakStartSeconds < 0 || breakStartSeconds <= rule.startWithin().toSeconds());
  }
}
