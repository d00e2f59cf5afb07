package dev.dogleg.roads;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import dev.dogleg.travel.TravelMatrix;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.jgrapht.GraphPath;
import org.jgrapht.alg.shortestpath.DijkstraShortestPath;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Road times against JGraphT's Dijkstra (Dijkstra 1959) on the turn-expanded graph, for 200 pairs
 * on each of two real extracts, © OpenStreetMap contributors, ODbL; skipped where they are absent.
 *
 * <p>Independent: the graph, its turns, bans, junctions and entry prices ({@link TurnExpandedPeer},
 * from the library's storage) and the search. Shared: the milliseconds of one stretch of road.
 */
class LineGraphPeerTest {
  private static final long SEED = 20261125;
  private static final int SOURCES = 10;
  private static final int TARGETS = 20;

  @TempDir Path cache;

  @ParameterizedTest
  @ValueSource(strings = {"mc-monaco-2023.osm.pbf", "us-md-reisterstown-roads.osm.pbf"})
  void timesEqualDijkstraOnTheTurnExpandedGraph(String name) {
    Path map = Path.of(System.getProperty("dogleg.shared"), "maps", name);
    assumeTrue(Files.exists(map), "skipped: no map " + map);
    VanCard van = VanCard.starter();
    try (RoadNetwork roads = RoadNetwork.open(map, van, cache, Progress.SILENT)) {
      List<RoadPoint> places = RandomPlaces.draw(roads, SOURCES + TARGETS, SEED);
      TravelMatrix matrix = roads.matrix(places);
      TurnExpandedPeer peer = new TurnExpandedPeer(roads, van);
      places.forEach(peer::addPlace);
      DijkstraShortestPath<String, DefaultWeightedEdge> dijkstra =
          new DijkstraShortestPath<>(peer.graph());
      int reached = 0;
      for (int from = 0; from < SOURCES; from++) {
        for (int to = SOURCES; to < places.size(); to++) {
          String pair = name + " seed " + SEED + " pair " + from + "->" + to;
          GraphPath<String, DefaultWeightedEdge> path =
              dijkstra.getPath(
                  TurnExpandedPeer.start(places.get(from)), TurnExpandedPeer.end(places.get(to)));
          assertEquals(path != null, matrix.reaches(from, to), pair);
          if (path == null) {
            continue;
          }
          reached++;
          ManyToManyPeek.check(roads, places.get(from), places.get(to), path.getWeight(), pair);
          // Told seconds are rounded once per class and once for turns, half a second each at most.
          double seconds = peer.withoutEntryPrices(path) / 1000.0;
          double slack = 0.5 * (RoadNetwork.ROAD_CLASSES.size() + 1);
          assertEquals(seconds, matrix.freeFlowSeconds(from, to), slack, pair);
        }
      }
      assertTrue(reached > SOURCES * TARGETS / 2, reached + " pairs reached");
    }
  }
}
