package dev.dogleg.cli.command;

import dev.dogleg.roads.RoadNetwork;
import java.nio.file.Path;

/** What stands under printed days: whose map it is. */
final class PlanNotes {
  private PlanNotes() {}

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
