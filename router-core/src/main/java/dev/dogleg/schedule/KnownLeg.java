package dev.dogleg.schedule;

import dev.dogleg.travel.TravelTimes;

/**
 * What is known of the leg from one place to another: steady spans, least duration, length, and
 * once asked for, cells.
 *
 * <p>Maintainers: two threads that make the same cells make equal ones, so no lock is needed.
 */
final class KnownLeg {
  final LegSpans spans;
  final int least;
  final long metres;
  private final TravelTimes travel;
  private final int i;
  private final int j;
  private final int from;
  private final int to;
  private LegCells cells;

  /** A leg that a road makes, left within a span of the day. */
  KnownLeg(TravelTimes travel, int i, int j, int from, int latestEnd) {
    this.travel = travel;
    this.i = i;
    this.j = j;
    this.from = from;
    to = Math.max(from, latestEnd);
    spans = new LegSpans(travel, i, j, from, latestEnd);
    least = travel.leastDriveSeconds(i, j, from, to);
    metres = travel.lengthMetres(i, j);
  }

  LegCells cells() {
    LegCells made = cells;
    if (made == null) {
      made = LegCells.of(travel, i, j, from, to, least);
      cells = made;
    }
    return made;
  }
}
