package dev.dogleg.cli.prepare;

import dev.dogleg.groom.Learned;
import dev.dogleg.groom.LearnedKind;
import dev.dogleg.itinerary.DaySpread;

/** How much whole days and single drives vary: as learned, else the starter figures. */
final class LearnedSpread {
  private LearnedSpread() {}

  static DaySpread of(Learned learned) {
    DaySpread starter = DaySpread.STARTER;
    return new DaySpread(
        spread(learned, LearnedKind.DAY, starter.paceLogSpread()),
        spread(learned, LearnedKind.DRIVE_DAY, starter.trafficLogSpread()),
        spread(learned, LearnedKind.DRIVE_LEG, starter.legLogSpread()));
  }

  /** A spread over one would say nothing any more. */
  private static double spread(Learned learned, LearnedKind kind, double starter) {
    return learned.spreadPermille(kind).isPresent()
        ? Math.min(1, learned.spreadPermille(kind).getAsInt() / 1000.0)
        : starter;
  }
}
