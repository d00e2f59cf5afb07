package dev.dogleg.roads;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;

/** Looks at the search weight of one pair, in exact milliseconds. */
final class ManyToManyPeek {
  private ManyToManyPeek() {}

  static void check(RoadNetwork roads, RoadPoint from, RoadPoint to, double weight, String pair) {
    RoadGraph graph = roads.hierarchy().graph;
    Seat goal = new Seat(graph, to);
    try (ManyToMany search = new ManyToMany(new Workbench(roads.hierarchy()), List.of(goal))) {
      assertEquals(weight, search.from(new Seat(graph, from))[0].weight(), 0.0, pair);
    }
  }
}
