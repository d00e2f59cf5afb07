package dev.dogleg.cli.command;

import dev.dogleg.cli.export.PlannedDay;
import dev.dogleg.cli.export.Wrap;
import dev.dogleg.roads.RoadNetwork;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** What stands under the printed days: how they were chosen, and whose map it is. */
final class PlanNotes {
  private static final int COLUMNS = 79;

  private PlanNotes() {}

  static String of(BookInput input, List<PlannedDay> days, List<LocalDate> dates) {
    List<String> lines = new ArrayList<>();
    if (dates.size() > 1) {
      lines.addAll(
          Wrap.lines(
              "Each day is the best for the bookings it was given. Bookings that may be made on"
                  + " several days went to the earliest with room; choosing the days together is"
                  + " not done yet.",
              COLUMNS));
    }
    if (input.book().business().groomers().size() > 1) {
      lines.addAll(
          Wrap.lines(
              "Groomers were filled in the card's order: each day is the best for what was left by"
                  + " those before; sharing out visits among groomers is not done yet.",
              COLUMNS));
    }
    lines.add(attribution(input.map()));
    return String.join("\n", lines);
  }

  /**
   * Whose map it is.
   *
   * @param map the map file
   * @return the attribution that map data demands
   */
  static String attribution(Path map) {
    Path folder = map.toAbsolutePath().normalize().getParent();
    return folder != null && folder.endsWith("maps-sample")
        ? "Sample map: an invented town."
        : "Map data " + RoadNetwork.ATTRIBUTION;
  }
}
