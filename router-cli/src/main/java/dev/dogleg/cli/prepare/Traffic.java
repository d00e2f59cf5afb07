package dev.dogleg.cli.prepare;

import dev.dogleg.groom.Learned;
import dev.dogleg.groom.StarterTables;
import dev.dogleg.groom.TableRow;
import dev.dogleg.model.WallSpan;
import dev.dogleg.roads.RoadNetwork;
import dev.dogleg.time.WorkDay;
import dev.dogleg.travel.TrafficBands;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * The starter table of traffic ({@code seeds/traffic.csv}) on a given day, times what was learned
 * of drives.
 */
final class Traffic {
  private static final List<TableRow> ROWS = StarterTables.rows("traffic.csv");

  /** Range of a band's factor. */
  private static final int LEAST_PERMILLE = 500;

  private static final int MOST_PERMILLE = 10_000;

  private Traffic() {}

  /**
   * The bands of a day.
   *
   * @param day the day; bands follow its wall clock
   * @param learned factors of bands and road classes
   * @return bands with the road classes of the network
   */
  static TrafficBands bands(WorkDay day, Learned learned) {
    List<TrafficBands.Band> bands = new ArrayList<>();
    for (TableRow row : ROWS) {
      int from = WallSpan.elapsed(wallSeconds(row.cells().get("from")), day);
      List<Integer> factors =
          RoadNetwork.ROAD_CLASSES.stream().map(name -> permille(row, name, learned)).toList();
      TrafficBands.Band band = new TrafficBands.Band(row.cells().get("band"), from, factors);
      // When the clock skips an hour, a band that lay in it has no second of its own.
      if (!bands.isEmpty() && bands.get(bands.size() - 1).fromSeconds() >= from) {
        bands.remove(bands.size() - 1);
      }
      bands.add(band);
    }
    return new TrafficBands(RoadNetwork.ROAD_CLASSES, bands);
  }

  private static int permille(TableRow row, String roadClass, Learned learned) {
    int table = new BigDecimal(row.cell(roadClass)).movePointRight(3).intValueExact();
    long driven = Math.round(table * learned.driveFactor(row.cell("band"), roadClass));
    return (int) Math.max(LEAST_PERMILLE, Math.min(MOST_PERMILLE, driven));
  }

  private static int wallSeconds(String clock) {
    String[] parts = clock.split(":", -1);
    return Integer.parseInt(parts[0]) * 3600 + Integer.parseInt(parts[1]) * 60;
  }
}
