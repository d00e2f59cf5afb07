package dev.dogleg.roads;

/**
 * A place on its stretch of road: which keys leave or reach it, and what part of them is driven.
 *
 * <p>Parts are split so that the part before a place and the part after it always add up to the
 * whole stretch, to the millisecond and to the centimetre.
 */
final class Seat {
  private final RoadGraph graph;
  private final int edge;
  private final int offsetCm;

  Seat(RoadGraph graph, RoadPoint point) {
    this.graph = graph;
    this.edge = point.edge();
    this.offsetCm = point.offsetCm();
  }

  /** Drivable keys of the stretch and of its twins, in ascending order within a direction. */
  int[] startKeys() {
    int[] keys = new int[2];
    int count = 0;
    for (int direction = 0; direction < 2; direction++) {
      int node = graph.tail[2 * edge + direction];
      for (int i = graph.outFirst[node]; i < graph.outFirst[node + 1]; i++) {
        int key = graph.outKeys[i];
        if (graph.original[key >> 1] == graph.original[edge] && (key & 1) == direction) {
          if (count == keys.length) {
            keys = java.util.Arrays.copyOf(keys, 2 * count);
          }
          keys[count++] = key;
        }
      }
    }
    return java.util.Arrays.copyOf(keys, count);
  }

  /** Centimetres from the tail of a key of this stretch to the place. */
  int arrivingCm(int key) {
    return (key & 1) == 0 ? offsetCm : graph.lengthCm[key >> 1] - offsetCm;
  }

  /** Centimetres from the place to the head of the key. */
  int leavingCm(int key) {
    return graph.lengthCm[key >> 1] - arrivingCm(key);
  }

  /** Milliseconds from the tail of the key to the place. */
  int arrivingMs(int key) {
    long whole = graph.lengthCm[key >> 1];
    if (whole == 0) {
      return 0;
    }
    return (int) ((2L * graph.edgeMs[key] * arrivingCm(key) + whole) / (2 * whole));
  }

  /** Milliseconds from the place to the head of the key. */
  int leavingMs(int key) {
    return graph.edgeMs[key] - arrivingMs(key);
  }

  /**
   * The key on which another place of the same stretch lies straight ahead.
   *
   * @param other the place to reach
   * @return a drivable key, or -1
   */
  int straightTo(Seat other) {
    if (graph.original[edge] != graph.original[other.edge]) {
      return -1;
    }
    for (int key = 2 * edge; key <= 2 * edge + 1; key++) {
      if (graph.drivable(key) && arrivingCm(key) <= other.arrivingCm(key)) {
        return key;
      }
    }
    return -1;
  }
}
