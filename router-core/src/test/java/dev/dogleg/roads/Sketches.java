package dev.dogleg.roads;

import dev.dogleg.model.GeoPoint;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.stream.Stream;

/** Opens sketches, and finds points on them. */
final class Sketches {
  private Sketches() {}

  static RoadNetwork open(TownSketch sketch, VanCard van) {
    try {
      Path folder = Files.createTempDirectory("sketch");
      try {
        return RoadNetwork.open(
            sketch.write(folder), van, folder.resolve("cache"), Progress.SILENT);
      } finally {
        // Everything is in memory once it is open.
        delete(folder);
      }
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  static void delete(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(file);
      }
    }
  }

  /** A point of the sketch's grid. */
  static GeoPoint at(double east, double north) {
    return new GeoPoint(
        TownSketch.LAT + north * TownSketch.STEP, TownSketch.LON + east * TownSketch.STEP);
  }

  /** The road point at a point of the grid. */
  static RoadPoint on(RoadNetwork roads, double east, double north) {
    return roads.snap(at(east, north), "").point().orElseThrow();
  }
}
