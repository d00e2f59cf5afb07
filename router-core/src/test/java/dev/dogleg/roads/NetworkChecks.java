package dev.dogleg.roads;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.travel.TravelMatrix;
import java.util.List;
import java.util.Optional;

/** What must hold on any map, real or drawn. */
final class NetworkChecks {
  private NetworkChecks() {}

  /** Matrix, route and the sum of a route's parts agree on every pair. */
  static void matrixRouteAndPartsAgree(RoadNetwork roads, List<RoadPoint> places, String said) {
    TravelMatrix matrix = roads.matrix(places);
    Hierarchy hierarchy = roads.hierarchy();
    for (int from = 0; from < places.size(); from++) {
      for (int to = 0; to < places.size(); to++) {
        if (from == to) {
          continue;
        }
        String pair = said + " pair " + from + "->" + to;
        Optional<RoadRoute> route = roads.route(places.get(from), places.get(to));
        assertEquals(matrix.reaches(from, to), route.isPresent(), pair);
        if (route.isEmpty()) {
          assertEquals(0, matrix.freeFlowSeconds(from, to), pair);
          continue;
        }
        assertEquals(matrix.freeFlowSeconds(from, to), route.get().driveSeconds(), pair);
        assertEquals(matrix.turnSeconds(from, to), route.get().turnSeconds(), pair);
        assertEquals(matrix.lengthMetres(from, to), route.get().lengthMetres(), pair);
        for (int k = 0; k < RoadNetwork.ROAD_CLASSES.size(); k++) {
          assertEquals(matrix.classSeconds(from, to, k), route.get().classSeconds().get(k), pair);
        }
        partsAddUp(hierarchy, places.get(from), places.get(to), pair);
        lineFitsLength(route.get(), pair);
      }
    }
  }

  private static void partsAddUp(Hierarchy hierarchy, RoadPoint from, RoadPoint to, String pair) {
    RoadGraph graph = hierarchy.graph;
    Seat start = new Seat(graph, from);
    Seat end = new Seat(graph, to);
    ManyToMany search = new ManyToMany(new Workbench(hierarchy), List.of(end));
    ManyToMany.Meeting meeting = search.from(start)[0];
    int[] keys = search.keys(meeting);
    PathSums parts = new PathSums();
    long weight = 0;
    for (int i = 0; i < keys.length; i++) {
      int key = keys[i];
      assertTrue(graph.drivable(key), pair);
      int startMs = i == 0 ? start.arrivingMs(key) : 0;
      int endMs = i == keys.length - 1 ? end.arrivingMs(key) : graph.edgeMs[key];
      int startCm = i == 0 ? start.arrivingCm(key) : 0;
      int endCm = i == keys.length - 1 ? end.arrivingCm(key) : graph.lengthCm[key >> 1];
      parts.add(graph.roadClass[key >> 1], endMs - startMs);
      parts.add(Hierarchy.LENGTH_CM, endCm - startCm);
      weight += endMs - startMs;
      if (i > 0) {
        assertEquals(graph.head(keys[i - 1]), graph.tail[key], pair);
        int turnMs = graph.turnMs(keys[i - 1], key);
        assertNotEquals(RoadGraph.CLOSED, turnMs, pair + " takes a forbidden turn");
        parts.add(Hierarchy.TURN_MS, turnMs);
        weight += graph.turnWeight(keys[i - 1], key);
      }
    }
    assertEquals(search.sums(start, end, meeting), parts, pair);
    assertEquals(meeting.weight(), weight, pair);
  }

  private static void lineFitsLength(RoadRoute route, String pair) {
    double metres = 0;
    for (int i = 1; i < route.points().size(); i++) {
      metres += route.points().get(i - 1).metresTo(route.points().get(i));
    }
    // The importing library measures on a sphere of 6,371,000 m, as good as ours.
    assertEquals(route.lengthMetres(), metres, 2 + 0.002 * metres, pair);
  }

  /** The fast search weighs every pair as plain Dijkstra on the turn-expanded graph does. */
  static int equalsPlainSearch(RoadNetwork roads, List<RoadPoint> from, List<RoadPoint> to) {
    RoadGraph graph = roads.hierarchy().graph;
    List<Seat> targets = to.stream().map(point -> new Seat(graph, point)).toList();
    ManyToMany search = new ManyToMany(new Workbench(roads.hierarchy()), targets);
    int unreached = 0;
    for (int i = 0; i < from.size(); i++) {
      Seat source = new Seat(graph, from.get(i));
      ManyToMany.Meeting[] meetings = search.from(source);
      for (int j = 0; j < targets.size(); j++) {
        long plain = LineGraphSearch.weight(graph, source, targets.get(j));
        assertEquals(
            plain, meetings[j] == null ? -1 : meetings[j].weight(), "pair " + i + "->" + j);
        unreached += plain < 0 ? 1 : 0;
      }
    }
    return unreached;
  }
}
