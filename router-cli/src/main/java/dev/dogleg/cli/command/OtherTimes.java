package dev.dogleg.cli.command;

import dev.dogleg.cli.export.StopLabel;
import dev.dogleg.cli.prepare.EarlierPlan;
import dev.dogleg.cli.terms.VanDay;
import dev.dogleg.fit.PlannedVanDay;
import dev.dogleg.itinerary.PlannedStop;
import java.util.Map;
import java.util.Optional;

/** Whether a plan on file has other times than the best order of its visits. */
final class OtherTimes {
  private OtherTimes() {}

  /**
   * Compares one day.
   *
   * @param day the day
   * @param planned its visits in their best order
   * @param labels its stops, by id
   * @param onFile the plan on file; a booking that it does not have differs in nothing
   * @return true where an arrival differs
   */
  static boolean of(
      VanDay day, PlannedVanDay planned, Map<String, StopLabel> labels, EarlierPlan onFile) {
    for (PlannedStop stop : planned.plan().stops()) {
      if (stop.kind() == PlannedStop.Kind.VISIT) {
        Optional<EarlierPlan.Spot> spot = onFile.of(labels.get(stop.visitId()).bookings().get(0));
        int wall = day.day().wallAt(stop.arriveSeconds()).toLocalTime().toSecondOfDay();
        if (spot.isPresent() && spot.get().arriveWall().orElse(wall) != wall) {
          return true;
        }
      }
    }
    return false;
  }
}
