package dev.dogleg.roads;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.model.GeoPoint;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Every kind of snap report. */
class SnapTest {
  private static RoadNetwork roads;

  @BeforeAll
  static void open() {
    TownSketch sketch =
        new TownSketch()
            .node(1, 0, 0)
            .node(2, 20, 0)
            .node(3, 0, 0.5)
            .node(4, 20, 0.5)
            .node(5, 20, 10)
            .way("1 2", "highway=residential", "name=Saint John's Street")
            .way("3 4", "highway=service")
            .way("1 3", "highway=service")
            .way("2 4", "highway=service")
            .way("2 5", "highway=residential", "name=Königstraße")
            .node(10, 30, 0)
            .node(11, 31, 0)
            .way("10 11", "highway=residential", "name=Loose Piece")
            .node(20, 0, 9)
            .node(21, 40, 9)
            .way("20 21", "highway=motorway", "name=M1")
            .node(30, 60, 60)
            .node(31, 61, 60)
            .way("30 31", "highway=residential", "name=Island Road");
    roads = Sketches.open(sketch, VanCard.starter());
  }

  @AfterAll
  static void close() {
    roads.close();
  }

  @Test
  void theStreetOfTheAddressWinsOverTheLaneBehindTheHouse() {
    GeoPoint house = Sketches.at(10, 0.4);
    SnapReport plain = roads.snap(house, "");
    assertEquals("", plain.roadName());
    assertEquals(10, plain.movedMetres(), "the lane is 10 m away");
    assertEquals(NameAgreement.NOT_ASKED, plain.name());
    SnapReport named = roads.snap(house, "St. Johns St");
    assertEquals("Saint John's Street", named.roadName());
    assertEquals(NameAgreement.AGREES, named.name());
    assertEquals(40, named.movedMetres());
    assertEquals("", named.nearestRoadName());
    assertFalse(named.needsLook());
  }

  @Test
  void anotherNameIsReportedNotHidden() {
    SnapReport report = roads.snap(Sketches.at(10, -0.2), "Mill Lane");
    assertEquals(NameAgreement.DIFFERS, report.name());
    assertTrue(report.needsLook());
    SnapReport umlaut = roads.snap(Sketches.at(20.2, 5), "KONIGSTRASSE");
    assertEquals(NameAgreement.AGREES, umlaut.name());
    assertEquals(NameAgreement.ROAD_UNNAMED, roads.snap(Sketches.at(3, 0.6), "Mill Lane").name());
  }

  @Test
  void aLoosePieceIsPassedOverWhereARealRoadIsNear() {
    SnapReport report = roads.snap(Sketches.at(28, 0), "");
    assertTrue(report.cutOffNearby());
    assertFalse(report.island());
    assertEquals("Loose Piece", report.nearestRoadName());
    assertEquals(800, report.movedMetres(), 1);
  }

  @Test
  void anIslandIsUsedWhereNothingElseIsNearAndSaid() {
    SnapReport report = roads.snap(Sketches.at(60.5, 60.1), "Island Road");
    assertTrue(report.island());
    assertTrue(report.needsLook());
    RoadPoint island = report.point().orElseThrow();
    RoadPoint main = Sketches.on(roads, 10, 0);
    assertFalse(roads.matrix(List.of(main, island)).reaches(0, 1));
    assertEquals(0, roads.matrix(List.of(main, island)).freeFlowSeconds(0, 1));
    assertTrue(roads.route(main, island).isEmpty());
  }

  @Test
  void noDoorOpensOntoAMotorway() {
    assertEquals("Königstraße", roads.snap(Sketches.at(21, 9), "").roadName());
  }

  @Test
  void farAwayThereIsNoPointAndNoGuess() {
    SnapReport report = roads.snap(new GeoPoint(45, 100), "High Street");
    assertTrue(report.point().isEmpty());
    assertTrue(report.offMap());
    assertEquals(-1, report.movedMetres());
    SnapReport inside = roads.snap(Sketches.at(30, 40), "");
    assertTrue(inside.point().isEmpty());
    assertFalse(inside.offMap());
  }

  @Test
  void spellingsFoldTogether() {
    assertEquals(StreetNames.fold("123rd Avenue"), StreetNames.fold("123 AVE."));
    assertEquals(StreetNames.fold("North 5th Street"), StreetNames.fold("N Fifth St"));
    assertEquals(StreetNames.fold("Hauptstraße"), StreetNames.fold("Hauptstr."));
    assertEquals(StreetNames.fold("Calle de la Peña"), StreetNames.fold("calle de la pena"));
    assertTrue(StreetNames.agrees(StreetNames.fold("Union Tpke"), "Union Tpke, NY 25C"));
    assertFalse(StreetNames.agrees(StreetNames.fold("Mill Lane"), "Mill Road"));
    assertFalse(StreetNames.agrees("", ""));
  }
}
