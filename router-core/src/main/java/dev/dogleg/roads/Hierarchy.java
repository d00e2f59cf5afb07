package dev.dogleg.roads;

/**
 * The contracted graph: edge keys and shortcuts, each hung at its lower end, with the sums of all
 * that lies inside a shortcut.
 *
 * <p>An arc is an edge key (id below {@code 2 * edges}) or a shortcut (id above). Every arc knows
 * its first and last edge key, the milliseconds of search weight, and per road class, in turns and
 * in centimetres what is driven on it, so no path is unpacked to fill a matrix.
 */
final class Hierarchy {
  /** Numbers kept for each arc: one per road class, then turn milliseconds, then centimetres. */
  static final int SUMS = RoadNetwork.ROAD_CLASSES.size() + 2;

  /** Index of the turn milliseconds among the sums. */
  static final int TURN_MS = SUMS - 2;

  /** Index of the centimetres among the sums. */
  static final int LENGTH_CM = SUMS - 1;

  final RoadGraph graph;

  /** Position of a node in the order of contraction. */
  final int[] level;

  /** First key, last key, skipped arc one and two, weight: by shortcut. */
  final int[] firstKey;

  final int[] lastKey;
  final int[] skipped1;
  final int[] skipped2;
  final int[] weight;

  /** {@link #SUMS} numbers for each shortcut. */
  final int[] sums;

  /** Arcs that lead up out of a node (forward search). */
  final int[] upFirst;

  final int[] upArcs;

  /** Arcs that lead down into a node, followed backwards (backward search). */
  final int[] downFirst;

  final int[] downArcs;

  Hierarchy(
      RoadGraph graph, int[] level, int[] firstKey, int[] lastKey, int[] skipped1, int[] skipped2) {
    this.graph = graph;
    this.level = level;
    this.firstKey = firstKey;
    this.lastKey = lastKey;
    this.skipped1 = skipped1;
    this.skipped2 = skipped2;
    this.weight = new int[firstKey.length];
    this.sums = new int[firstKey.length * SUMS];
    sumUp();
    this.upFirst = new int[graph.nodes + 1];
    this.downFirst = new int[graph.nodes + 1];
    this.upArcs = hang(upFirst, true);
    this.downArcs = hang(downFirst, false);
  }

  /**
   * Bottom-up: what is skipped before what skips it. Mostly that is the order of the numbers, but
   * the loops that one contracted node leaves behind may stand in any order among themselves.
   */
  private void sumUp() {
    boolean[] summed = new boolean[firstKey.length];
    int[] waiting = new int[firstKey.length + 1];
    for (int start = 0; start < firstKey.length; start++) {
      int depth = 0;
      waiting[depth++] = start;
      while (depth > 0) {
        int shortcut = waiting[depth - 1];
        int one = unsummed(skipped1[shortcut], summed);
        int two = unsummed(skipped2[shortcut], summed);
        if (depth + 1 >= waiting.length && (one >= 0 || two >= 0)) {
          throw new IllegalStateException("shortcut " + shortcut + " skips itself");
        }
        if (one >= 0) {
          waiting[depth++] = one;
        } else if (two >= 0) {
          waiting[depth++] = two;
        } else {
          depth--;
          sum(shortcut);
          summed[shortcut] = true;
        }
      }
    }
  }

  private int unsummed(int arc, boolean[] summed) {
    int shortcut = arc - graph.tail.length;
    return shortcut >= 0 && !summed[shortcut] ? shortcut : -1;
  }

  private void sum(int shortcut) {
    int one = skipped1[shortcut];
    int two = skipped2[shortcut];
    int turnMs = graph.turnMs(last(one), first(two));
    if (turnMs == RoadGraph.CLOSED
        || first(one) != firstKey[shortcut]
        || last(two) != lastKey[shortcut]
        || head(one) != tail(two)) {
      throw new IllegalStateException("shortcut " + shortcut + " does not fit what it skips");
    }
    weight[shortcut] =
        Math.addExact(
            Math.addExact(weight(one), weight(two)),
            turnMs + graph.entryWeight(last(one), first(two)));
    for (int k = 0; k < SUMS; k++) {
      sums[shortcut * SUMS + k] = Math.addExact(sum(one, k), sum(two, k));
    }
    sums[shortcut * SUMS + TURN_MS] += turnMs;
  }

  private int[] hang(int[] firstOf, boolean up) {
    int arcs = graph.tail.length + firstKey.length;
    for (int arc = 0; arc < arcs; arc++) {
      if (hangs(arc, up)) {
        firstOf[(up ? tail(arc) : head(arc)) + 1]++;
      }
    }
    for (int node = 0; node < graph.nodes; node++) {
      firstOf[node + 1] += firstOf[node];
    }
    int[] next = firstOf.clone();
    int[] hung = new int[firstOf[graph.nodes]];
    for (int arc = 0; arc < arcs; arc++) {
      if (hangs(arc, up)) {
        hung[next[up ? tail(arc) : head(arc)]++] = arc;
      }
    }
    return hung;
  }

  private boolean hangs(int arc, boolean up) {
    if (!isShortcut(arc) && !graph.drivable(arc)) {
      return false;
    }
    int from = level[tail(arc)];
    int to = level[head(arc)];
    return up ? from <= to : to <= from;
  }

  boolean isShortcut(int arc) {
    return arc >= graph.tail.length;
  }

  int first(int arc) {
    return isShortcut(arc) ? firstKey[arc - graph.tail.length] : arc;
  }

  int last(int arc) {
    return isShortcut(arc) ? lastKey[arc - graph.tail.length] : arc;
  }

  int tail(int arc) {
    return graph.tail[first(arc)];
  }

  int head(int arc) {
    return graph.head(last(arc));
  }

  int weight(int arc) {
    return isShortcut(arc) ? weight[arc - graph.tail.length] : graph.edgeMs[arc];
  }

  /** One of the {@link #SUMS} numbers of an arc. */
  int sum(int arc, int k) {
    if (isShortcut(arc)) {
      return sums[(arc - graph.tail.length) * SUMS + k];
    }
    if (k == LENGTH_CM) {
      return graph.lengthCm[arc >> 1];
    }
    return k == graph.roadClass[arc >> 1] ? graph.edgeMs[arc] : 0;
  }
}
