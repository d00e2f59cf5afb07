package dev.dogleg.oracle;

import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.itinerary.PlannedStop.Kind;
import java.util.ArrayDeque;
import java.util.List;

/**
 * One thing that happened, and what happened before it.
 *
 * @param before the thing before, null at the start of the day
 * @param leftBefore second at which the place before was left; -1 where this happens at its door
 * @param kind what happens
 * @param place where
 * @param visitId at whose door; empty for start, water and end
 * @param arrive arrival at the door
 * @param start start of service, break or water
 * @param end its end; the van may stay longer
 */
record Lived(
    Lived before,
    int leftBefore,
    Kind kind,
    int place,
    String visitId,
    int arrive,
    int start,
    int end) {

  /** Events with their times; drives, lengths, waiting and spare are left 0. */
  List<PlannedStop> stops() {
    ArrayDeque<PlannedStop> stops = new ArrayDeque<>();
    int left = end;
    for (Lived one = this; one != null; one = one.before) {
      boolean leaving = one.kind == Kind.LEAVE;
      int leave = left < 0 ? one.end : left;
      stops.addFirst(
          new PlannedStop(
              one.kind,
              one.place,
              one.visitId,
              leaving ? leave : one.arrive,
              leaving ? leave : one.start,
              leave,
              0,
              0,
              0,
              0));
      left = one.leftBefore;
    }
    return List.copyOf(stops);
  }
}
