package dev.dogleg.roads;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.travel.TravelMatrix;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * Private and destination-only roads at the ends only, gates, bollards, and the lonely way through.
 */
class RestrictedRoadTest {
  private static RoadNetwork roads;

  @BeforeAll
  static void open() {
    TownSketch sketch =
        new TownSketch()
            .node(1, 0, 0)
            .node(2, 10, 0)
            .node(3, 10, 40)
            .node(4, 0, 40)
            .node(5, -5, 0)
            .node(6, 15, 0)
            // An estate between west and east: 1 km through it, 9 km round it.
            .way("5 1", "highway=residential", "name=West Street")
            .way("1 2", "highway=residential", "name=Estate Road", "access=private")
            .way("2 6", "highway=residential", "name=East Street")
            .way("1 4", "highway=residential", "name=Ring Road")
            .way("4 3", "highway=residential", "name=Ring Road")
            .way("3 2", "highway=residential", "name=Ring Road")
            // A drive behind a gate off the estate road, two hundred metres.
            .node(7, 5, -1, "barrier=gate", "access=private")
            .node(8, 5, -2)
            .node(9, 5, 0)
            .way("9 7 8", "highway=service", "name=Drive");
    sketch = estateWithItsMiddle(sketch);
    // A farm beyond a destination-only road that is the only way there.
    sketch
        .node(20, 0, -10)
        .node(21, 0, -20)
        .way("1 20", "highway=residential", "motor_vehicle=destination", "name=Farm Access")
        .way("20 21", "highway=residential", "name=Farm Road")
        // A street that a bollard cuts in two.
        .node(30, -5, -5)
        .node(31, -5, -6, "barrier=bollard")
        .node(32, -5, -12)
        .way("5 30 31 32", "highway=residential", "name=Salt Street")
        // A drive for delivery only stays closed.
        .node(40, 15, 5)
        .way("6 40", "highway=service", "access=delivery", "name=Yard");
    roads = Sketches.open(sketch, VanCard.starter());
  }

  private static TownSketch estateWithItsMiddle(TownSketch sketch) {
    // Node 9 lies on way 101 in the middle; the sketch's way must pass it to join.
    return sketch.way("1 9", "highway=residential", "name=Estate Road", "access=private");
  }

  @AfterAll
  static void close() {
    roads.close();
  }

  private static RoadRoute route(double e1, double n1, double e2, double n2) {
    RoadPoint from = Sketches.on(roads, e1, n1);
    RoadPoint to = Sketches.on(roads, e2, n2);
    RoadRoute route = roads.route(from, to).orElseThrow();
    TravelMatrix matrix = roads.matrix(List.of(from, to));
    assertEquals(matrix.freeFlowSeconds(0, 1), route.driveSeconds());
    return route;
  }

  @Test
  void nobodyDrivesThroughAnEstateToSaveTime() {
    RoadRoute route = route(-4, 0, 14, 0);
    assertTrue(route.roadNames().contains("Ring Road"), route.roadNames().toString());
    assertEquals(0, route.restrictedMetres());
    assertFalse(route.throughRestricted());
  }

  @Test
  void whoLivesThereIsReachedAndTheTimeTellsNothingOfThePrice() {
    RoadRoute route = route(-4, 0, 3, 0);
    // 400 m + 300 m at 30 km/h = 84 s; West Street and Estate Road run straight on.
    assertEquals(84, route.driveSeconds());
    assertEquals(300, route.restrictedMetres());
    assertFalse(route.throughRestricted());
    assertEquals(
        EntryKind.PRIVATE, roads.snap(Sketches.at(3, 0), "").entry(), "the report says so");
  }

  @Test
  void aGateOnTheWayIsCounted() {
    RoadRoute route = route(-4, 0, 5, -1.9);
    assertEquals(1, route.gates());
    // The drive behind bears no tag of its own, so the private road before it lies in the middle.
    assertTrue(route.throughRestricted());
  }

  @Test
  void theOnlyWayIsTakenAndSaid() {
    RoadRoute route = route(-4, 0, 0, -18);
    assertTrue(route.throughRestricted(), "over Farm Access to Farm Road");
    assertEquals(1000, route.restrictedMetres());
  }

  @Test
  void aBollardClosesAndDeliveryOnlyStaysClosed() {
    SnapReport beyond = roads.snap(Sketches.at(-5, -9), "");
    // The piece beyond the bollard is cut off: the place is put on the piece that is not.
    assertTrue(beyond.cutOffNearby());
    assertFalse(beyond.island());
    assertEquals(300, beyond.movedMetres(), 5, "up to the bollard at -6");
    SnapReport yard = roads.snap(Sketches.at(15, 4), "Yard");
    assertEquals("East Street", yard.roadName());
    assertEquals(NameAgreement.DIFFERS, yard.name());
  }
}
