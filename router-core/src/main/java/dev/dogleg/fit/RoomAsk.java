package dev.dogleg.fit;

import dev.dogleg.itinerary.WeekBooking;
import java.util.List;
import java.util.Objects;

/**
 * One kind of client in one zone, before anybody has called: the same kind at each known door.
 *
 * @param zone name of the zone
 * @param kind name of the kind
 * @param doors one booking a door, at least one; a booking's choices are the van-days on which it
 *     may be made, with the limits that hold for it there
 */
public record RoomAsk(String zone, String kind, List<WeekBooking> doors) {
  /** Checks that there is a door. */
  public RoomAsk {
    Objects.requireNonNull(zone, "zone");
    Objects.requireNonNull(kind, "kind");
    doors = List.copyOf(doors);
    if (doors.isEmpty()) {
      throw new IllegalArgumentException("zone " + zone + " has no door");
    }
  }
}
