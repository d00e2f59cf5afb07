package dev.dogleg.cli.prepare;

import dev.dogleg.model.GeoPoint;
import dev.dogleg.roads.RoadPoint;
import java.util.Objects;

/**
 * A place that was found and put on a road.
 *
 * @param address one line for a person
 * @param point where the place is
 * @param road where the van stands
 * @param note what the groomer should know about the finding; empty where all is sure
 */
record Door(String address, GeoPoint point, RoadPoint road, String note) {
  Door {
    Objects.requireNonNull(address, "address");
    Objects.requireNonNull(point, "point");
    Objects.requireNonNull(road, "road");
    Objects.requireNonNull(note, "note");
  }
}
