package dev.dogleg.roads;

import dev.dogleg.model.GeoPoint;
import java.util.Objects;
import java.util.Optional;

/**
 * Where a place was put on the road network, and what a person should know about it.
 *
 * @param asked the place asked for
 * @param point where it lies on the road; empty where no drivable road is near
 * @param movedMetres distance from the place to that point, or to the nearest road known where
 *     there is no point; rounded; -1 where no road is near at all
 * @param roadName name of that road, may be empty
 * @param name how that name fits the street of the address
 * @param nearestRoadName name of the nearest road, where another one was taken because it bears the
 *     street's name or because the nearest is cut off; else the same as {@code roadName}
 * @param entry who may use that road
 * @param island whether the road hangs together with the largest network of the map; true means it
 *     does not, and places elsewhere may be out of reach
 * @param cutOffNearby whether a nearer road was passed over because it is cut off from the network
 *     for this van: behind a bollard, under a low bridge, or a loose piece of the map
 * @param offMap whether there is no point because the place lies outside the area that the map
 *     covers
 */
public record SnapReport(
    GeoPoint asked,
    Optional<RoadPoint> point,
    int movedMetres,
    String roadName,
    NameAgreement name,
    String nearestRoadName,
    EntryKind entry,
    boolean island,
    boolean cutOffNearby,
    boolean offMap) {

  /** Farthest a place is ever moved to a road, in metres. */
  public static final int FARTHEST_METRES = 1000;

  /** A move beyond this many metres deserves a look: the pin is probably wrong. */
  public static final int FAR_METRES = 150;

  /** Checks that nothing is null. */
  public SnapReport {
    Objects.requireNonNull(asked, "asked");
    Objects.requireNonNull(point, "point");
    Objects.requireNonNull(roadName, "roadName");
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(nearestRoadName, "nearestRoadName");
    Objects.requireNonNull(entry, "entry");
  }

  /**
   * {@return whether a person should look at the place: far, another street, cut off, or off the
   * map}
   */
  public boolean needsLook() {
    return point.isEmpty()
        || movedMetres > FAR_METRES
        || name == NameAgreement.DIFFERS
        || island
        || cutOffNearby;
  }
}
