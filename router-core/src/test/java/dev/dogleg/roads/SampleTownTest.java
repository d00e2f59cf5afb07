package dev.dogleg.roads;

import static dev.dogleg.roads.SampleTown.landmark;
import static dev.dogleg.roads.SampleTown.roads;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.model.GeoPoint;
import dev.dogleg.travel.TravelMatrix;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The roads of the invented town: times agree, and the van keeps off what it must keep off. */
class SampleTownTest {
  private static final long SEED = 20261125;

  private static RoadPoint on(String name) {
    return roads().snap(landmark(name), "").point().orElseThrow();
  }

  private static RoadRoute route(String from, String to) {
    return roads().route(on(from), on(to)).orElseThrow();
  }

  private static double nearestPass(RoadRoute route, GeoPoint place) {
    double least = Double.MAX_VALUE;
    List<GeoPoint> line = route.points();
    for (int i = 1; i < line.size(); i++) {
      // Cut long straights, so that a pass between two points is seen.
      int steps = 1 + (int) (line.get(i - 1).metresTo(line.get(i)) / 5);
      for (int s = 0; s <= steps; s++) {
        double t = (double) s / steps;
        GeoPoint point =
            new GeoPoint(
                line.get(i - 1).lat() + t * (line.get(i).lat() - line.get(i - 1).lat()),
                line.get(i - 1).lon() + t * (line.get(i).lon() - line.get(i - 1).lon()));
        least = Math.min(least, point.metresTo(place));
      }
    }
    return least;
  }

  @Test
  void matrixRouteAndTheSumOfPartsAgree() {
    List<RoadPoint> places = RandomPlaces.draw(roads(), 40, SEED);
    NetworkChecks.matrixRouteAndPartsAgree(roads(), places, "seed " + SEED);
  }

  @Test
  void fastSearchEqualsPlainSearch() {
    List<RoadPoint> places = RandomPlaces.draw(roads(), 30, SEED + 1);
    NetworkChecks.equalsPlainSearch(roads(), places.subList(0, 10), places);
  }

  @Test
  void whatAPairGetsDoesNotDependOnTheOtherPlaces() {
    List<RoadPoint> places = RandomPlaces.draw(roads(), 20, SEED + 2);
    TravelMatrix all = roads().matrix(places);
    TravelMatrix some = roads().matrix(List.of(places.get(7), places.get(3)));
    assertEquals(all.freeFlowSeconds(7, 3), some.freeFlowSeconds(0, 1));
    assertEquals(all.lengthMetres(3, 7), some.lengthMetres(1, 0));
    assertEquals(all.turnSeconds(3, 7), some.turnSeconds(1, 0));
  }

  @Test
  void noRouteGoesUnderTheLowBridgeOrOverTheWeakOne() {
    RoadRoute low = route("low_bridge_north", "low_bridge_south");
    // 300 m straight; the van is 2.80 m high and the bridge 2.4 m.
    assertTrue(low.lengthMetres() > 600, "went " + low.lengthMetres() + " m");
    RoadRoute weak = route("weak_bridge_west", "weak_bridge_east");
    assertTrue(weak.lengthMetres() > 600, "went " + weak.lengthMetres() + " m");
    List<RoadPoint> places = RandomPlaces.draw(roads(), 26, SEED + 3);
    for (RoadPoint from : places) {
      for (RoadPoint to : places) {
        roads()
            .route(from, to)
            .ifPresent(
                route -> {
                  assertTrue(nearestPass(route, landmark("low_bridge")) > 8, "low bridge");
                  assertTrue(nearestPass(route, landmark("weak_bridge")) > 8, "weak bridge");
                  assertTrue(nearestPass(route, landmark("width_limit")) > 0.5, "width limit");
                  assertTrue(nearestPass(route, landmark("height_restrictor")) > 0.5, "bar");
                });
      }
    }
  }

  @Test
  void privateAndDestinationOnlyStreetsAreReached() {
    RoadRoute drive = route("town_centre", "private_drive_house");
    assertTrue(drive.restrictedMetres() > 0);
    assertFalse(drive.throughRestricted());
    RoadRoute destination = route("town_centre", "destination_only_house");
    assertTrue(destination.restrictedMetres() > 0);
    assertFalse(destination.throughRestricted());
    assertEquals(1, route("town_centre", "farm_on_track").gates(), "a gate on the farm track");
  }

  @Test
  void barriersTurnBansAndOneWayStreetsSendTheVanRound() {
    // Each pair lies 60 to 90 m apart on one street, with the obstacle between.
    for (String obstacle : List.of("bollard", "height_bar", "width_gate")) {
      RoadRoute route = route(obstacle + "_from", obstacle + "_to");
      assertTrue(route.lengthMetres() > 150, obstacle + ": " + route.lengthMetres() + " m");
    }
    assertTrue(route("no_left_turn_from", "no_left_turn_to").lengthMetres() > 250);
    assertTrue(route("one_way_east", "one_way_west").lengthMetres() < 120);
    assertTrue(route("one_way_west", "one_way_east").lengthMetres() > 300);
  }

  @Test
  void aDoorIsPutOnItsOwnStreetNotOnTheLaneBehind() {
    GeoPoint door = landmark("hidden_door");
    assertEquals("Coalman's Passage", roads().snap(door, "").roadName());
    SnapReport own = roads().snap(door, "N 3rd St");
    assertEquals("North 3rd Street", own.roadName());
    assertEquals(NameAgreement.AGREES, own.name());
    assertEquals("Coalman's Passage", own.nearestRoadName());
  }

  @Test
  void theIslandIsAnIsland() {
    SnapReport report = roads().snap(landmark("island_house"), "");
    assertTrue(report.island());
    TravelMatrix matrix = roads().matrix(List.of(on("town_centre"), report.point().orElseThrow()));
    assertFalse(matrix.reaches(0, 1));
    assertFalse(matrix.reaches(1, 0));
  }

  @Test
  void roadAndStraightLineDifferWhereTheRiverLies() {
    RoadRoute across = route("weak_bridge_west", "weak_bridge_east");
    double line = landmark("weak_bridge_west").metresTo(landmark("weak_bridge_east"));
    assertTrue(across.lengthMetres() > 2 * line);
  }

  @Test
  void aPointOfAnotherNetworkIsRefused() {
    RoadPoint stranger = new RoadPoint("other", new GeoPoint(0, 0), 0, 0);
    org.junit.jupiter.api.Assertions.assertThrows(
        IllegalArgumentException.class, () -> roads().matrix(List.of(stranger)));
  }
}
