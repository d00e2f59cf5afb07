package dev.dogleg.address;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineSegment;

/**
 * The ways of one street, joined where they share a point, on a plane in metres: which line leads
 * along the street from one house to another.
 *
 * <p>Shortest path after Dijkstra 1959. A street has at most a few hundred points, so the graph is
 * made anew for each question.
 */
final class StreetGraph {
  private final List<LineSegment> pieces = new ArrayList<>();
  private final Map<Coordinate, List<Coordinate>> joined = new HashMap<>();

  /** The point of the street nearest to a house. */
  private record Foot(LineSegment piece, Coordinate at) {}

  private record Reached(Coordinate at, double metres) {}

  void add(Coordinate[] way) {
    for (int i = 0; i + 1 < way.length; i++) {
      if (!way[i].equals2D(way[i + 1])) {
        pieces.add(new LineSegment(way[i], way[i + 1]));
        joined.computeIfAbsent(way[i], key -> new ArrayList<>()).add(way[i + 1]);
        joined.computeIfAbsent(way[i + 1], key -> new ArrayList<>()).add(way[i]);
      }
    }
  }

  /**
   * The line along the street between the points of it that are nearest to two houses.
   *
   * @return at least two points that differ; empty where the street has no way, where the houses
   *     have one nearest point, or where no way of the street leads from one to the other
   */
  Optional<List<Coordinate>> between(Coordinate from, Coordinate to) {
    if (pieces.isEmpty()) {
      return Optional.empty();
    }
    Foot start = foot(from);
    Foot end = foot(to);
    if (start.at.equals2D(end.at)) {
      return Optional.empty();
    }
    if (start.piece.equals(end.piece)) {
      return Optional.of(List.of(start.at, end.at));
    }
    return shortest(start, end);
  }

  private Foot foot(Coordinate house) {
    LineSegment nearest =
        pieces.stream()
            .min(Comparator.comparingDouble((LineSegment piece) -> piece.distance(house)))
            .orElseThrow();
    return new Foot(nearest, nearest.closestPoint(house));
  }

  private Optional<List<Coordinate>> shortest(Foot start, Foot end) {
    Map<Coordinate, Double> metresTo = new HashMap<>();
    Map<Coordinate, Coordinate> before = new HashMap<>();
    PriorityQueue<Reached> queue =
        new PriorityQueue<>(Comparator.comparingDouble(Reached::metres).thenComparing(Reached::at));
    metresTo.put(start.at, 0.0);
    queue.add(new Reached(start.at, 0));
    while (!queue.isEmpty()) {
      Reached next = queue.poll();
      if (next.at.equals2D(end.at)) {
        return Optional.of(path(before, end.at));
      }
      if (next.metres > metresTo.get(next.at)) {
        continue;
      }
      List<Coordinate> onward = new ArrayList<>(joined.getOrDefault(next.at, List.of()));
      if (next.at.equals2D(start.at)) {
        onward.add(start.piece.p0);
        onward.add(start.piece.p1);
      }
      if (next.at.equals2D(end.piece.p0) || next.at.equals2D(end.piece.p1)) {
        onward.add(end.at);
      }
      for (Coordinate there : onward) {
        double metres = next.metres + next.at.distance(there);
        if (metres < metresTo.getOrDefault(there, Double.MAX_VALUE)) {
          metresTo.put(there, metres);
          before.put(there, next.at);
          queue.add(new Reached(there, metres));
        }
      }
    }
    return Optional.empty();
  }

  private static List<Coordinate> path(Map<Coordinate, Coordinate> before, Coordinate end) {
    ArrayDeque<Coordinate> path = new ArrayDeque<>();
    for (Coordinate at = end; at != null; at = before.get(at)) {
      path.addFirst(at);
    }
    return List.copyOf(path);
  }
}
