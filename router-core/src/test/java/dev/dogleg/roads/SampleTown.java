package dev.dogleg.roads;

import dev.dogleg.model.GeoPoint;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * The invented town of maps-sample: its map, its landmarks, its roads opened once for all tests.
 */
final class SampleTown {
  static final Path MAP =
      Path.of(System.getProperty("dogleg.root")).resolve("maps-sample/brindlewick.osm.pbf");

  private static RoadNetwork opened;

  private SampleTown() {}

  /** Roads for the starter van; never closed, shared by the tests of one run. */
  static synchronized RoadNetwork roads() {
    if (opened == null) {
      try {
        Path cache = Files.createTempDirectory("sample-roads");
        opened = RoadNetwork.open(MAP, VanCard.starter(), cache, Progress.SILENT);
        Sketches.delete(cache);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
    return opened;
  }

  /** A landmark by its name. */
  static GeoPoint landmark(String name) {
    try {
      List<String> lines = Files.readAllLines(MAP.resolveSibling("landmarks.csv"));
      String line =
          lines.stream().filter(row -> row.startsWith(name + ",")).findFirst().orElseThrow();
      String[] cells = line.split(",");
      return new GeoPoint(Double.parseDouble(cells[1]), Double.parseDouble(cells[2]));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
