package dev.dogleg.plan.week;

import dev.dogleg.groom.StarterTables;
import dev.dogleg.groom.TableRow;
import dev.dogleg.travel.TrafficBands;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** The bands of the starter table of traffic, on a day of 24 hours. */
public final class StarterTraffic {
  private StarterTraffic() {}

  /**
   * The bands.
   *
   * @param roadClasses names of road classes, each a column of the table
   * @return the bands
   */
  public static TrafficBands bands(List<String> roadClasses) {
    List<TrafficBands.Band> bands = new ArrayList<>();
    for (TableRow row : StarterTables.rows("traffic.csv")) {
      String[] from = row.cell("from").split(":", -1);
      bands.add(
          new TrafficBands.Band(
              row.cell("band"),
              Integer.parseInt(from[0]) * 3600 + Integer.parseInt(from[1]) * 60,
              roadClasses.stream()
                  .map(name -> new BigDecimal(row.cell(name)).movePointRight(3).intValueExact())
                  .toList()));
    }
    return new TrafficBands(roadClasses, bands);
  }
}
