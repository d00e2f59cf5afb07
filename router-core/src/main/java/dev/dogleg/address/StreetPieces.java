package dev.dogleg.address;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Parts streets of one name: what lies within a few hundred metres of each other is one street.
 *
 * <p>Cells of about 300 m are joined with the eight around them; the points of one way are joined
 * whatever lies between them. Union-find (Tarjan 1975).
 */
final class StreetPieces {
  private static final double CELL_METRES = 300;
  private static final double METRES_PER_DEGREE = 111_195;

  private final Map<Long, Long> parents = new HashMap<>();
  private final double cosine;

  /**
   * One street.
   *
   * @param houses houses on it
   * @param ways its ways
   * @param lines its interpolation ways
   */
  record Piece(List<Hit> houses, List<Hit> ways, List<Hit> lines) {
    Hit any() {
      return !ways.isEmpty()
          ? ways.get(ways.size() / 2)
          : !houses.isEmpty() ? houses.get(0) : lines.get(0);
    }
  }

  private StreetPieces(double latitude) {
    this.cosine = Math.max(0.05, Math.cos(Math.toRadians(latitude)));
  }

  static List<Piece> of(List<Hit> houses, List<Hit> ways, List<Hit> lines) {
    List<Hit> all = new ArrayList<>(houses);
    all.addAll(ways);
    all.addAll(lines);
    if (all.isEmpty()) {
      return List.of();
    }
    StreetPieces pieces = new StreetPieces(NodePlaces.lat(all.get(0).at()));
    for (Hit hit : all) {
      pieces.add(hit);
    }
    pieces.joinNeighbours();
    Map<Long, Piece> found = new TreeMap<>();
    Map<Long, Integer> order = new HashMap<>();
    for (Hit hit : all) {
      long root = pieces.root(pieces.cell(hit.at()));
      order.putIfAbsent(root, order.size());
      Piece piece =
          found.computeIfAbsent(
              (long) order.get(root),
              key -> new Piece(new ArrayList<>(), new ArrayList<>(), new ArrayList<>()));
      switch (hit.kind()) {
        case Fields.HOUSE -> piece.houses.add(hit);
        case Fields.STREET -> piece.ways.add(hit);
        default -> piece.lines.add(hit);
      }
    }
    return List.copyOf(found.values());
  }

  private void add(Hit hit) {
    long first = cell(hit.at());
    parents.putIfAbsent(first, first);
    if (hit.shape() == null) {
      return;
    }
    for (long place : hit.shape().places()) {
      long cell = cell(place);
      parents.putIfAbsent(cell, cell);
      join(first, cell);
    }
  }

  private void joinNeighbours() {
    for (long cell : List.copyOf(parents.keySet())) {
      for (long dy = -1; dy <= 1; dy++) {
        for (long dx = -1; dx <= 1; dx++) {
          long other = cell + dy * (1L << 32) + dx;
          if (parents.containsKey(other)) {
            join(cell, other);
          }
        }
      }
    }
  }

  private void join(long a, long b) {
    long rootA = root(a);
    long rootB = root(b);
    if (rootA != rootB) {
      parents.put(Math.max(rootA, rootB), Math.min(rootA, rootB));
    }
  }

  private long root(long cell) {
    long at = cell;
    while (parents.get(at) != at) {
      at = parents.get(at);
    }
    parents.put(cell, at);
    return at;
  }

  private long cell(long place) {
    long y = (long) Math.floor((NodePlaces.lat(place) + 90) * METRES_PER_DEGREE / CELL_METRES);
    long x =
        (long) Math.floor((NodePlaces.lon(place) + 180) * METRES_PER_DEGREE * cosine / CELL_METRES);
    return y << 32 | x;
  }
}
