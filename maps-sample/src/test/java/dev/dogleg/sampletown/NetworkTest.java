package dev.dogleg.sampletown;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** The streets hang together, but for the island. */
class NetworkTest {

  @Test
  void onlyTheIslandIsCutOff() throws IOException {
    ReadBack map = ReadBack.committed();
    Map<Long, List<Long>> next = new HashMap<>();
    for (ReadBack.Line way : map.ways.values()) {
      if (way.tags().containsKey("highway")) {
        for (int i = 1; i < way.refs().size(); i++) {
          link(next, way.refs().get(i - 1), way.refs().get(i));
          link(next, way.refs().get(i), way.refs().get(i - 1));
        }
      }
    }
    List<Set<Long>> parts = new ArrayList<>();
    Set<Long> left = new TreeSet<>(next.keySet());
    while (!left.isEmpty()) {
      Set<Long> part = new TreeSet<>();
      Deque<Long> open = new ArrayDeque<>(List.of(left.iterator().next()));
      while (!open.isEmpty()) {
        long node = open.remove();
        if (part.add(node)) {
          open.addAll(next.get(node));
        }
      }
      left.removeAll(part);
      parts.add(part);
    }
    parts.sort((a, b) -> Integer.compare(b.size(), a.size()));
    assertEquals(2, parts.size(), "parts: " + parts.stream().map(Set::size).toList());
    double[] island = landmark("island_house");
    double nearest =
        parts.get(1).stream()
            .map(map.nodes::get)
            .mapToDouble(n -> Math.hypot(n.lat() - island[0], n.lon() - island[1]))
            .min()
            .orElseThrow();
    assertTrue(nearest < 0.001, "the smaller part is not the island: " + nearest);
  }

  @Test
  void everyLandmarkStandsOnTheMap() throws IOException {
    ReadBack map = ReadBack.committed();
    for (String line : Files.readAllLines(Path.of(SampleTown.LANDMARKS_FILE))) {
      assertEquals(5, line.split(",", -1).length, line);
    }
    double[] hidden = landmark("hidden_door");
    ReadBack.Point door =
        map.nodes.values().stream()
            .filter(n -> Math.hypot(n.lat() - hidden[0], n.lon() - hidden[1]) < 1e-7)
            .findFirst()
            .orElseThrow();
    assertEquals("North 3rd Street", door.tags().get("addr:street"));
  }

  private static double[] landmark(String name) throws IOException {
    for (String line : Files.readAllLines(Path.of(SampleTown.LANDMARKS_FILE))) {
      String[] cells = line.split(",", -1);
      if (cells[0].equals(name)) {
        return new double[] {Double.parseDouble(cells[1]), Double.parseDouble(cells[2])};
      }
    }
    throw new IllegalArgumentException(name);
  }

  private static void link(Map<Long, List<Long>> next, long from, long to) {
    next.computeIfAbsent(from, n -> new ArrayList<>()).add(to);
  }
}
