package dev.dogleg.cli.prepare;

import dev.dogleg.fault.Fault;
import dev.dogleg.fault.Severity;
import dev.dogleg.fault.Where;
import dev.dogleg.model.GeoPoint;
import dev.dogleg.roads.NameAgreement;
import dev.dogleg.roads.SnapReport;
import java.util.Optional;
import java.util.function.Predicate;

/** Judges where a place was put on the road network. */
final class SnapFaults {
  private SnapFaults() {}

  /**
   * What is to be said about a snap.
   *
   * @param snap where the place was put
   * @param typed the address as typed, or the pin
   * @param door the address found for it as the map spells it, empty for a pin
   * @param cell the cell the place came from
   * @param severity what a place that cannot be used does to the run
   * @param onMap whether another point lies on the map, for telling swapped coordinates
   * @return one fault at most: of {@code severity} where the place cannot be used, to look at where
   *     it can
   */
  static Optional<Fault> of(
      SnapReport snap,
      String typed,
      String door,
      Where cell,
      Severity severity,
      Predicate<GeoPoint> onMap) {
    GeoPoint asked = snap.asked();
    if (snap.offMap()) {
      Optional<GeoPoint> turned = turned(asked).filter(onMap);
      if (turned.isPresent()) {
        return fault(
            "lat-lon-swapped",
            severity,
            cell,
            asked.toString(),
            "latitude and longitude look swapped: the other way round it is on the map",
            "write " + turned.get());
      }
      return fault(
          "point-off-map",
          severity,
          cell,
          asked.toString(),
          "lies outside the map",
          "check the point, or use a map that holds it");
    }
    if (snap.point().isEmpty()) {
      String nearest =
          snap.movedMetres() >= 0 ? "; the nearest is " + snap.movedMetres() + " m away" : "";
      return fault(
          "no-road-near",
          severity,
          cell,
          asked.toString(),
          "no road that the van may use is within " + SnapReport.FARTHEST_METRES + " m" + nearest,
          "put the pin where the van can park");
    }
    if (snap.movedMetres() > SnapReport.FAR_METRES) {
      return fault(
          "far-from-road",
          Severity.LOOK,
          cell,
          asked.toString(),
          "the nearest road, " + named(snap.roadName()) + ", is " + snap.movedMetres() + " m away",
          "put the pin where the van can park");
    }
    if (snap.name() == NameAgreement.DIFFERS) {
      return fault(
          "other-street",
          Severity.LOOK,
          cell,
          typed,
          "means the door "
              + door
              + ", but the nearest road is "
              + named(snap.roadName())
              + ", "
              + snap.movedMetres()
              + " m away: the van was put there",
          "where the van can park elsewhere, put the pin there");
    }
    if (snap.cutOffNearby()) {
      return fault(
          "cut-off-road",
          Severity.LOOK,
          cell,
          asked.toString(),
          "the nearest road, "
              + named(snap.nearestRoadName())
              + ", cannot be driven by this van; it was put on "
              + named(snap.roadName()),
          "put the pin where the van can park if that is wrong");
    }
    return Optional.empty();
  }

  private static Optional<GeoPoint> turned(GeoPoint point) {
    return Math.abs(point.lon()) > 90
        ? Optional.empty()
        : Optional.of(new GeoPoint(/* lat= */ point.lon(), /* lon= */ point.lat()));
  }

  private static String named(String road) {
    return road.isEmpty() ? "a road without a name" : road;
  }

  private static Optional<Fault> fault(
      String code, Severity severity, Where cell, String seen, String expected, String hint) {
    return Optional.of(new Fault(code, severity, cell, seen, expected, hint));
  }
}
