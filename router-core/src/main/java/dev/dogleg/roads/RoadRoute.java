package dev.dogleg.roads;

import dev.dogleg.model.GeoPoint;
import java.util.List;

/**
 * One drive from door to door.
 *
 * @param points the line on the map, first and last are the points on the road, at least two
 * @param lengthMetres length in metres
 * @param classSeconds free-flow seconds per road class, in the order of {@link
 *     RoadNetwork#ROAD_CLASSES}
 * @param turnSeconds seconds in turns
 * @param restrictedMetres metres on private or destination-only roads
 * @param throughRestricted whether such a road is passed neither at the start nor at the end, for
 *     lack of any other way
 * @param gates gates and lift gates passed
 * @param roadNames names of the roads in driving order, without immediate repeats and unnamed ones
 */
public record RoadRoute(
    List<GeoPoint> points,
    int lengthMetres,
    List<Integer> classSeconds,
    int turnSeconds,
    int restrictedMetres,
    boolean throughRestricted,
    int gates,
    List<String> roadNames) {

  /** Copies the lists. */
  public RoadRoute {
    points = List.copyOf(points);
    classSeconds = List.copyOf(classSeconds);
    roadNames = List.copyOf(roadNames);
  }

  /** {@return free-flow seconds of the whole drive: all classes plus turns} */
  public int driveSeconds() {
    return turnSeconds + classSeconds.stream().mapToInt(Integer::intValue).sum();
  }
}
