package dev.dogleg.audit;

import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.itinerary.PlannedStop.Kind;

/**
 * What the figures of one event must be, from its times.
 *
 * @param driveSeconds drive that ended here; 0 where none did
 * @param driveMetres its length
 * @param waitSeconds waiting that counts to this event
 */
record RowFigures(int driveSeconds, int driveMetres, long waitSeconds) {

  /** Whether the figures can be told: no drive, or one on a known road at a possible time. */
  static boolean known(DayRows rows, Row row) {
    return !rows.driven(row) || (rows.hasRoad(row) && rows.get(row.index() - 1).leavesInRange());
  }

  /** Figures of a row of which they are {@link #known}. */
  static RowFigures of(DayRows rows, Row row) {
    int seconds = rows.driven(row) ? rows.driveSeconds(row) : 0;
    int metres = rows.driven(row) ? rows.driveMetres(row) : 0;
    return new RowFigures(seconds, metres, waiting(rows, row));
  }

  private static long waiting(DayRows rows, Row row) {
    PlannedStop stop = row.stop();
    if (row.is(Kind.LEAVE)) {
      return 0;
    }
    long since = stop.arriveSeconds();
    if (row.atDoorOfRowBefore()) {
      since = rows.get(row.index() - 1).stop().leaveSeconds();
    }
    return stop.startSeconds() - since + stop.leaveSeconds() - row.endSeconds();
  }
}
