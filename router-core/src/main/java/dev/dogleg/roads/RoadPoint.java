package dev.dogleg.roads;

import dev.dogleg.model.GeoPoint;
import java.util.Objects;

/**
 * A place put on a road of one {@link RoadNetwork}; good for that network only.
 *
 * <p>Two are equal where they lie at the same spot of the same road.
 */
public final class RoadPoint {
  private final String networkKey;
  private final GeoPoint onRoad;
  private final int edge;
  private final int offsetCm;

  RoadPoint(String networkKey, GeoPoint onRoad, int edge, int offsetCm) {
    this.networkKey = networkKey;
    this.onRoad = onRoad;
    this.edge = edge;
    this.offsetCm = offsetCm;
  }

  /** {@return the point on the road} */
  public GeoPoint onRoad() {
    return onRoad;
  }

  /** Key of the network it belongs to. */
  String networkKey() {
    return networkKey;
  }

  /** Number of the stretch of road. */
  int edge() {
    return edge;
  }

  /** Centimetres from the start of the stretch, in the direction in which it is stored. */
  int offsetCm() {
    return offsetCm;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof RoadPoint point
        && networkKey.equals(point.networkKey)
        && edge == point.edge
        && offsetCm == point.offsetCm;
  }

  @Override
  public int hashCode() {
    return Objects.hash(networkKey, edge, offsetCm);
  }

  @Override
  public String toString() {
    return onRoad.toString();
  }
}
