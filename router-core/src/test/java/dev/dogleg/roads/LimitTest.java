package dev.dogleg.roads;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Height, width, length and weight as hard limits, on ways and on barrier nodes. */
class LimitTest {
  /**
   * Two villages joined by parallel roads, each with its own limit, each 10 km longer than the
   * last.
   */
  private static final List<List<String>> LINKS =
      List.of(
          List.of("maxheight=2.7", "name=Low Bridge"),
          List.of("maxweight=3.0", "name=Weak Bridge"),
          List.of("name=Bar Lane"),
          List.of("maxwidth=6'6\"", "name=Narrow Lane"),
          List.of("maxlength=5,5", "name=Short Lane"),
          List.of("name=Open Road"));

  private static TownSketch villages() {
    TownSketch sketch = new TownSketch().node(1, 0, 0).node(2, 50, 0).node(3, -5, 0).node(4, 55, 0);
    sketch.way("1 3", "highway=residential").way("2 4", "highway=residential");
    for (int i = 0; i < LINKS.size(); i++) {
      int node = 10 + 2 * i;
      sketch.node(node, 25, 10 * (i + 1));
      if (LINKS.get(i).contains("name=Bar Lane")) {
        sketch.node(node + 1, 26, 10 * (i + 1), "barrier=height_restrictor", "maxheight=2.2");
      } else {
        sketch.node(node + 1, 26, 10 * (i + 1));
      }
      String[] tags =
          java.util.stream.Stream.concat(
                  java.util.stream.Stream.of("highway=tertiary"), LINKS.get(i).stream())
              .toArray(String[]::new);
      sketch.way("1 " + node + " " + (node + 1) + " 2", tags);
    }
    return sketch;
  }

  private static String taken(VanCard van) {
    try (RoadNetwork roads = Sketches.open(villages(), van)) {
      Optional<RoadRoute> route = roads.route(Sketches.on(roads, -4, 0), Sketches.on(roads, 54, 0));
      return String.join(" ", route.orElseThrow().roadNames());
    }
  }

  @Test
  void eachLimitSendsTheVanRoundAndTheSignsOwnMeasurePasses() {
    VanCard van = VanCard.starter();
    assertEquals("Low Bridge", taken(van.withSize(270, 225, 600, 3500)), "2.70 m under 2.7 m");
    assertEquals("Weak Bridge", taken(van.withSize(271, 225, 600, 3000)), "3.0 t on 3.0 t");
    assertEquals("Narrow Lane", taken(van.withSize(271, 198, 600, 3001)), "6'6\" is 198 cm");
    assertEquals("Short Lane", taken(van.withSize(271, 199, 550, 3001)), "5,5 is 5.5 m");
    assertEquals("Open Road", taken(van.withSize(271, 199, 551, 3001)));
  }

  @Test
  void aBarAcrossTheRoadStopsWhoeverIsHigher() {
    VanCard van = VanCard.starter().withSize(221, 225, 600, 3500);
    TownSketch sketch =
        new TownSketch()
            .node(1, 0, 0)
            .node(2, 5, 0, "barrier=height_restrictor", "maxheight=2.2")
            .node(3, 10, 0)
            .node(4, 5, 20)
            .node(5, 0, -1)
            .way("1 5", "highway=residential")
            .way("1 2 3", "highway=residential", "name=Bar Lane")
            .way("1 4 3", "highway=residential", "name=Long Way");
    for (int height : new int[] {220, 221}) {
      try (RoadNetwork roads = Sketches.open(sketch, van.withSize(height, 225, 600, 3500))) {
        RoadRoute route =
            roads.route(Sketches.on(roads, 1, 0), Sketches.on(roads, 9, 0)).orElseThrow();
        assertEquals(height == 221, route.roadNames().contains("Long Way"), "at " + height);
        assertTrue(height == 221 || route.lengthMetres() == 800);
      }
    }
  }

  @Test
  void signsAreReadInTheirUnits() {
    assertEquals(270, SignedLimit.read("2.7", false));
    assertEquals(270, SignedLimit.read("2,70 m", false));
    assertEquals(269, SignedLimit.read("8'10\"", false), "8 ft 10 in = 2.692 m, rounded down");
    assertEquals(3500, SignedLimit.read("3.5", true));
    assertEquals(3500, SignedLimit.read("3.5 t", true));
    assertEquals(7500, SignedLimit.read("7500 kg", true));
    for (String open : new String[] {null, "", " ", "none", "default", "unsigned", "low"}) {
      assertEquals(SignedLimit.NONE, SignedLimit.read(open, false), "counts as open: " + open);
    }
  }
}
