package dev.dogleg.roads;

import com.graphhopper.util.PointList;

/** Directions of stretches of road, in whole degrees. */
final class Bearing {
  private Bearing() {}

  /**
   * Direction in which a line is left.
   *
   * @param line at least two points
   * @param fromEnd whether it is left from its last point
   * @return 0 (north) to 359, clockwise; {@link RoadGraph#NO_BEARING} where it has no length
   */
  static short leaving(PointList line, boolean fromEnd) {
    int size = line.size();
    int start = fromEnd ? size - 1 : 0;
    for (int step = 1; step < size; step++) {
      int next = fromEnd ? size - 1 - step : step;
      double north = line.getLat(next) - line.getLat(start);
      double east =
          (line.getLon(next) - line.getLon(start)) * Math.cos(Math.toRadians(line.getLat(start)));
      if (Math.hypot(north, east) > 1e-6) {
        long degrees = Math.round(Math.toDegrees(Math.atan2(east, north)));
        return (short) Math.floorMod(degrees, 360L);
      }
    }
    return RoadGraph.NO_BEARING;
  }
}
