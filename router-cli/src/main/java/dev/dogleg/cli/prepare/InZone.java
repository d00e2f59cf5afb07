package dev.dogleg.cli.prepare;

import dev.dogleg.model.Place;
import dev.dogleg.model.Van;
import dev.dogleg.model.Zone;
import java.util.List;

/**
 * Tells whether a place that was found lies in a zone.
 *
 * @param places the places of a run, those from which zones count their minutes among them
 * @param districts the districts that zones name
 * @param vans vans in use: within a zone's minutes is what one of them reaches so
 */
record InZone(WeekPlaces places, ZoneDistricts districts, List<Van> vans) {
  InZone {
    vans = List.copyOf(vans);
  }

  /** By area, by postcode, by district or by minutes on the road at free flow. */
  boolean holds(Zone zone, Place place) {
    Door door = places.door(place).orElseThrow();
    if (zone.holds(door.point())
        || zone.holdsPostcode(place.address())
        || districts.hold(zone, door.point())) {
      return true;
    }
    if (zone.from().isEmpty()) {
      return false;
    }
    int from = places.number(zone.from().get()).orElseThrow();
    int to = places.number(place).orElseThrow();
    return vans.stream()
        .anyMatch(
            van ->
                places.reaches(van, from, to, to)
                    && places.matrix(van).freeFlowSeconds(from, to)
                        <= zone.withinSeconds().getAsInt());
  }
}
