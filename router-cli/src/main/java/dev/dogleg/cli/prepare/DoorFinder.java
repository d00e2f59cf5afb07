package dev.dogleg.cli.prepare;

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
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Finds doors: a pin wins (pasted by hand or from the corrections file), else the address is looked
 * up; then the place is put on a road and what came of it is judged.
 */
final class DoorFinder {
  private static final Pattern SPACES = Pattern.compile("\\s+");
  private final LookUps lookUps;
  private final RoadNetwork roads;
  private final Faults faults;

  /**
   * A finder.
   *
   * @param lookUps addresses
   * @param roads roads of the van
   * @param faults takes what is wrong
   */
  DoorFinder(LookUps lookUps, RoadNetwork roads, Faults faults) {
    this.lookUps = lookUps;
    this.roads = roads;
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
      return onRoad(address, pin, Optional.empty(), "", source.pin(), severity);
    }
    Where cell = source.address();
    LookUp answer = lookUps.of(place.address());
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
    return onRoad(place.address(), match.point(), found, note, cell, severity);
  }

  private Optional<Door> onRoad(
      String address,
      GeoPoint point,
      Optional<Match> match,
      String note,
      Where cell,
      Severity severity) {
    SnapReport snap = roads.snap(point, match.map(Match::street).orElse(""));
    String door = match.map(Match::address).orElse("");
    Optional<Fault> fault =
        SnapFaults.of(snap, oneLine(address), door, cell, severity, this::onMap);
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
    return SPACES.matcher(text.strip()).replaceAll(" ");
  }
}
