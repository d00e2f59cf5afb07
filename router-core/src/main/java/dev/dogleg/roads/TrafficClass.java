package dev.dogleg.roads;

import com.graphhopper.routing.ev.RoadClass;
import java.util.List;

/** The short list of road classes that traffic slows apart. */
final class TrafficClass {
  /** Names, in the order of the numbers. */
  static final List<String> NAMES = List.of("motorway", "main", "street", "service");

  private TrafficClass() {}

  /**
   * The class of a road.
   *
   * @param road value of its {@code highway} tag
   * @return index into {@link #NAMES}
   */
  static int of(RoadClass road) {
    return switch (road) {
      case MOTORWAY, TRUNK -> 0;
      case PRIMARY, SECONDARY, TERTIARY -> 1;
      case SERVICE, TRACK, OTHER -> 3;
      default -> 2;
    };
  }
}
