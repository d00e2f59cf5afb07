package dev.dogleg.roads;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.travel.TravelMatrix;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Times of edges and turns on sketches, added up by hand. */
class TurnTest {
  /** Residential roads are driven at 30 km/h, so 500 m take 60 s. */
  private static TownSketch cross() {
    return new TownSketch()
        .node(1, 0, 0)
        .node(2, 5, 0)
        .node(3, 10, 0)
        .node(4, 5, 5)
        .node(5, 5, -5)
        .node(6, 0, 2)
        .way("1 2", "highway=residential", "name=Long Street")
        .way("2 3", "highway=residential", "name=Long Street")
        .way("2 4", "highway=residential", "name=North Street")
        .way("2 5", "highway=residential", "name=South Street")
        .way("2 6", "highway=residential", "name=Back Street");
  }

  private static int seconds(RoadNetwork roads, RoadPoint from, RoadPoint to) {
    TravelMatrix matrix = roads.matrix(List.of(from, to));
    RoadRoute route = roads.route(from, to).orElseThrow();
    assertEquals(matrix.freeFlowSeconds(0, 1), route.driveSeconds(), "matrix and route");
    assertEquals(matrix.turnSeconds(0, 1), route.turnSeconds(), "turns of matrix and route");
    assertEquals(matrix.lengthMetres(0, 1), route.lengthMetres(), "metres of matrix and route");
    return route.driveSeconds();
  }

  @Test
  void turnsAddTheirSecondsBySideAndSharpness() {
    try (RoadNetwork roads = Sketches.open(cross(), VanCard.starter())) {
      RoadPoint west = Sketches.on(roads, 0, 0);
      // 400 m + 400 m at 30 km/h = 96 s, and on top:
      RoadPoint start = Sketches.on(roads, 1, 0);
      assertEquals(96, seconds(roads, start, Sketches.on(roads, 9, 0)), "straight on: 0");
      assertEquals(96 + 6, seconds(roads, start, Sketches.on(roads, 5, 4)), "left, crossing: 6");
      assertEquals(96 + 3, seconds(roads, start, Sketches.on(roads, 5, -4)), "right: 3");
      // From the west end into the road that doubles back: 500 m of sqrt(29)*100 m each way.
      // 60 s + (538.5 m - 100 m share) ... checked by its turn alone: more than 120 degrees is 8 s.
      RoadRoute back = roads.route(west, Sketches.on(roads, 0, 2)).orElseThrow();
      assertEquals(8, back.turnSeconds(), "sharp: 8");
      assertEquals(List.of("Long Street", "Back Street"), back.roadNames());
    }
  }

  @Test
  void whoDrivesOnTheLeftCrossesWhenTurningRight() {
    VanCard van =
        new VanCard(280, 225, 600, 3500, 110, TurnSeconds.starter(), DrivingSide.LEFT, false);
    try (RoadNetwork roads = Sketches.open(cross(), van)) {
      RoadPoint start = Sketches.on(roads, 1, 0);
      assertEquals(96 + 3, seconds(roads, start, Sketches.on(roads, 5, 4)), "left: 3");
      assertEquals(96 + 6, seconds(roads, start, Sketches.on(roads, 5, -4)), "right: 6");
    }
  }

  @Test
  void banIsObeyedAndTurningRoundIsDearButFinite() {
    TownSketch sketch = cross();
    sketch.ban("no_right_turn", 100, "node", 2, 103);
    try (RoadNetwork roads = Sketches.open(sketch, VanCard.starter())) {
      RoadPoint start = Sketches.on(roads, 1, 0);
      RoadPoint south = Sketches.on(roads, 5, -4);
      // Right is forbidden. The shortest legal way turns round at once somewhere: into North
      // Street, Long Street east or Back Street and out again would cost two turns, a U-turn and
      // 120 s of driving; turning round on North Street's stub is no shorter. The cheapest:
      // leave westwards (free at the start), turn round at the dead end (40), come back the same
      // way - and meet the same ban. So: straight on 400 + 500 m, U-turn 40, 500 m back, then left
      // (crossing) 6 into South Street, 400 m: (400+500+500+400) m = 216 s + 46 s = 262 s.
      // North Street: left 6, U-turn 40, straight on 0: also 216 + 46 = 262 s. A tie.
      assertEquals(216 + 46, seconds(roads, start, south));
      // The way back is not forbidden: left into Long Street west, crossing.
      assertEquals(96 + 6, seconds(roads, south, start));
    }
  }

  @Test
  void banOverAWayIsObeyed() {
    // West 1-2, then 2-3 (100 m), then north 3-4: forbidden from 1-2 over 2-3 to 3-4.
    TownSketch sketch =
        new TownSketch()
            .node(1, 0, 0)
            .node(2, 5, 0)
            .node(3, 6, 0)
            .node(4, 6, 5)
            .node(5, 5, -5)
            .node(6, 20, 0)
            .way("1 2", "highway=residential", "name=West")
            .way("2 3", "highway=residential", "name=Middle")
            .way("3 4", "highway=residential", "name=North")
            .way("2 5", "highway=residential", "name=South")
            .way("3 6", "highway=residential", "name=East");
    sketch.ban("no_left_turn", 100, "way", 101, 102);
    try (RoadNetwork roads = Sketches.open(sketch, VanCard.starter())) {
      RoadPoint west = Sketches.on(roads, 1, 0);
      RoadPoint middle = Sketches.on(roads, 5.5, 0);
      RoadPoint north = Sketches.on(roads, 6, 4);
      RoadPoint south = Sketches.on(roads, 5, -4);
      // From South Street right into Middle and left into North is free: 400+100+400 m = 108 s + 3
      // + 6.
      assertEquals(108 + 9, seconds(roads, south, north));
      // From the middle of Middle: 50 + 400 m = 54 s + left 6.
      assertEquals(54 + 6, seconds(roads, middle, north));
      // To the middle from the west: 400 + 50 m = 54 s, straight on.
      assertEquals(54, seconds(roads, west, middle));
      // From the west over Middle to North is forbidden. Cheapest legal way: over Middle, turn
      // round at its far end, turn round again at its near end, and over Middle once more, which
      // no longer comes from the west: 400 + 3 * 100 + 400 m = 132 s, two U-turns 80, left 6.
      assertEquals(132 + 86, seconds(roads, west, north));
    }
  }

  @Test
  void oneWayStreetsBothEndsOnOneEdgeAndSamePlace() {
    TownSketch ring =
        new TownSketch()
            .node(1, 0, 0)
            .node(2, 10, 0)
            .node(3, 10, 10)
            .node(4, 0, 10)
            .node(5, -5, 0)
            .way("1 2", "highway=residential", "oneway=yes")
            .way("2 3", "highway=residential", "oneway=yes")
            .way("3 4", "highway=residential", "oneway=yes")
            .way("4 1", "highway=residential", "oneway=yes")
            .way("5 1", "highway=residential");
    try (RoadNetwork roads = Sketches.open(ring, VanCard.starter())) {
      RoadPoint a = Sketches.on(roads, 3, 0);
      RoadPoint b = Sketches.on(roads, 7, 0);
      assertEquals(48, seconds(roads, a, b), "400 m ahead on one edge");
      // Behind on the same one-way edge: round the block, 300 + 3 * 1000 + 300 m = 432 s. The
      // bends at nodes 2 to 4 are no junctions; at node 1 three roads meet: left turn, 6 s.
      assertEquals(432 + 6, seconds(roads, b, a));
      TravelMatrix same = roads.matrix(List.of(a, a, b));
      assertEquals(0, same.freeFlowSeconds(0, 1), "two places at one spot");
      assertTrue(same.reaches(1, 0));
      assertEquals(48, same.freeFlowSeconds(1, 2));
    }
  }
}
