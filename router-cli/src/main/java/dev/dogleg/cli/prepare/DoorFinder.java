package dev.dogleg.cli.prepare;

import dev.dogleg.address.AddressQuery;
import dev.dogleg.address.Grade;
import dev.dogleg.address.LookUp;
import dev.dogleg.address.Match;
import dev.dogleg.fault.Fault;
import dev.dogleg.fault.Faults;
import dev.dogleg.fault.Severity;
import dev.dogleg.fault.Where;
import dev.dogleg.model.GeoPoint;
import dev.dogleg.model.Place;
import dev.dogleg.roads.RoadNetwork;
import dev.dogleg.roads.SnapReport;
import java.util.List;
import java.util.Optional;

/**
 * Finds doors: a pin wins (pasted by hand or from the corrections file), else the address is looked
 * up; then the place is put on a road and what came of it is judged.
 */
final class DoorFinder {
  private final MapInUse map;
  private final RoadNetwork roads;
  private final List<GeoPoint> others;
  private final Faults faults;

  /**
   * A finder.
   *
   * @param map addresses
   * @param roads roads of the van
   * @param others pins of the book, which rank the candidates of an ambiguous address
   * @param faults takes what is wrong
   */
  DoorFinder(MapInUse map, RoadNetwork roads, List<GeoPoint> others, Faults faults) {
    this.map = map;
    this.roads = roads;
    this.others = others;
    this.faults = faults;
  }

  /**
   * Finds a door.
   *
   * @param place as its owner named it
   * @param source where it stands
   * @param severity what a door that cannot be found does to the run: ASIDE or STOP
   * @return the door, or empty where a fault of that severity was added
   */
  Optional<Door> find(Place place, DoorSource source, Severity severity) {
    if (place.pin().isPresent()) {
      GeoPoint pin = place.pin().get();
      String address = place.address().isBlank() ? pin.toString() : place.address();
      return onRoad(address, pin, "", "", source.pin(), severity);
    }
    Where cell = source.address();
    LookUp answer = map.addresses().find(AddressQuery.of(shortened(place.address())).near(others));
    Optional<Match> found = answer.found();
    if (found.isEmpty()) {
      faults.add(LookUpFaults.notFound(answer, place.address(), source, severity));
      return Optional.empty();
    }
    Match match = found.get();
    String note = "";
    if (match.grade() == Grade.STREET) {
      faults.add(LookUpFaults.onlyStreet(match, place.address(), cell));
      note = "house number not on the map: look for it in " + match.street();
    } else if (!match.spelledAsTyped()) {
      faults.add(LookUpFaults.otherSpelling(match, place.address(), cell));
      note = "read as " + match.address();
    }
    return onRoad(place.address(), match.point(), match.street(), note, cell, severity);
  }

  private static String shortened(String address) {
    return address.length() > AddressQuery.LONGEST
        ? address.substring(0, AddressQuery.LONGEST)
        : address;
  }

  private Optional<Door> onRoad(
      String address, GeoPoint point, String street, String note, Where cell, Severity severity) {
    SnapReport snap = roads.snap(point, street);
    Optional<Fault> fault = SnapFaults.of(snap, street, cell, severity, this::onMap);
    fault.ifPresent(faults::add);
    if (snap.point().isEmpty() || fault.filter(f -> f.severity() == severity).isPresent()) {
      return Optional.empty();
    }
    return Optional.of(new Door(oneLine(address), point, snap.point().get(), note));
  }

  private boolean onMap(GeoPoint point) {
    SnapReport snap = roads.snap(point, "");
    return !snap.offMap() && snap.point().isPresent();
  }

  private static String oneLine(String text) {
    return text.strip().replaceAll("\\s+", " ");
  }
}
