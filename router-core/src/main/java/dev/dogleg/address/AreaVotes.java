package dev.dogleg.address;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Postcodes and towns that tagged houses give to the untagged ones around them, by cells of a
 * hundredth of a degree (about a square kilometre).
 */
final class AreaVotes {
  private static final double CELL_DEGREES = 0.01;
  private static final int LEAST_SHARE_PERCENT = 10;

  private final Map<Long, Map<String, Integer>> cells = new HashMap<>();
  private final Map<Long, List<String>> answers = new HashMap<>();

  void add(long packed, String value) {
    if (!value.isEmpty()) {
      cells
          .computeIfAbsent(cell(packed, 0, 0), key -> new TreeMap<>())
          .merge(value.intern(), 1, Integer::sum);
    }
  }

  /**
   * Values of the cell, once all votes are in, most votes first; of the cells around it where it
   * has none.
   */
  List<String> at(long packed) {
    return answers.computeIfAbsent(cell(packed, 0, 0), key -> count(packed));
  }

  private List<String> count(long packed) {
    List<String> own = ranked(cells.getOrDefault(cell(packed, 0, 0), Map.of()));
    if (!own.isEmpty()) {
      return own;
    }
    Map<String, Integer> around = new TreeMap<>();
    for (int dy = -1; dy <= 1; dy++) {
      for (int dx = -1; dx <= 1; dx++) {
        cells
            .getOrDefault(cell(packed, dy, dx), Map.of())
            .forEach((value, votes) -> around.merge(value, votes, Integer::sum));
      }
    }
    return ranked(around);
  }

  private static List<String> ranked(Map<String, Integer> votes) {
    int all = votes.values().stream().mapToInt(Integer::intValue).sum();
    List<Map.Entry<String, Integer>> entries = new ArrayList<>(votes.entrySet());
    entries.removeIf(entry -> entry.getValue() * 100 < all * LEAST_SHARE_PERCENT);
    entries.sort(
        Comparator.comparingInt((Map.Entry<String, Integer> entry) -> -entry.getValue())
            .thenComparing(Map.Entry::getKey));
    return entries.stream().map(Map.Entry::getKey).toList();
  }

  private static long cell(long packed, int dy, int dx) {
    long y = (long) Math.floor(NodePlaces.lat(packed) / CELL_DEGREES) + dy;
    long x = (long) Math.floor(NodePlaces.lon(packed) / CELL_DEGREES) + dx;
    return y * 1_000_000 + x;
  }
}
