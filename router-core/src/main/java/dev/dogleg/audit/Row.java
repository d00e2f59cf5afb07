package dev.dogleg.audit;

import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.itinerary.PlannedStop.Kind;
import dev.dogleg.itinerary.Visit;

/**
 * One event of a plan with what the request knows about it.
 *
 * @param index its place in the plan, from 0
 * @param stop the event
 * @param visit the visit it names, or null where the request has none of that id
 * @param place the place where it belongs; the event's own where the request cannot tell; -1 where
 *     that is no place either
 * @param atDoorOfRowBefore whether it happens at the door at which the row before happened, as one
 *     stay: a break after its visit, or a visit after its break
 * @param breakAt for a break: on which side of its visit; {@code NONE} where neither neighbour is
 *     the visit it names; {@code NONE} for other events
 * @param lengthSeconds length of the service or break; 0 for others and where unknown
 */
record Row(
    int index,
    PlannedStop stop,
    Visit visit,
    int place,
    boolean atDoorOfRowBefore,
    BreakAt breakAt,
    int lengthSeconds) {

  /** No time of a plan makes sense beyond this many seconds; sums stay far from overflow. */
  static final int MOST_SECONDS = 100_000_000;

  boolean is(Kind kind) {
    return stop.kind() == kind;
  }

  /** The end of service or break. */
  long endSeconds() {
    return (long) stop.startSeconds() + lengthSeconds;
  }

  /** Whether the leaving time is one at which a drive can be asked for. */
  boolean leavesInRange() {
    return inRange(stop.leaveSeconds());
  }

  static boolean inRange(int seconds) {
    return seconds >= 0 && seconds <= MOST_SECONDS;
  }

  /** The event in words, for sentences. */
  String words() {
    return switch (stop.kind()) {
      case LEAVE -> "the leaving of the start place";
      case VISIT -> "visit " + stop.visitId();
      case BREAK -> "the break";
      case WATER -> "the water stop";
      case HOME -> "the end place";
    };
  }
}
