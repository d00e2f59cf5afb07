package dev.dogleg.roads;

import java.util.Arrays;

/**
 * Dijkstra on edge keys over the arcs that lead up the hierarchy; one thread, many searches.
 *
 * <p>Forward, a label is a key driven in full, and the van stands at its head; backward, a key yet
 * to be driven, from its tail. Queue entries are cost and key in one long, so that equal costs are
 * settled by key and every run repeats.
 */
final class UpwardSearch {
  private final Hierarchy hierarchy;
  private final RoadGraph graph;
  private final int[] best;
  private final int[] fromArc;
  private final int[] fromLabel;
  private final int[] touched;
  private int touchedCount;
  private final LongHeap queue = new LongHeap();

  UpwardSearch(Hierarchy hierarchy) {
    this.hierarchy = hierarchy;
    this.graph = hierarchy.graph;
    this.best = new int[graph.tail.length];
    Arrays.fill(best, Integer.MAX_VALUE);
    this.fromArc = new int[best.length];
    this.fromLabel = new int[best.length];
    this.touched = new int[best.length];
  }

  /** All that can be reached going up from a place. */
  LabelTree from(Seat place) {
    for (int key : place.startKeys()) {
      offer(key, place.leavingMs(key), -1, LabelTree.NO_PARENT);
    }
    LabelTree tree = new LabelTree();
    while (!queue.isEmpty()) {
      int label = settle(tree);
      if (label < 0) {
        continue;
      }
      int key = tree.key[label];
      int node = graph.head(key);
      for (int i = hierarchy.upFirst[node]; i < hierarchy.upFirst[node + 1]; i++) {
        int arc = hierarchy.upArcs[i];
        relax(arc, graph.turnWeight(key, hierarchy.first(arc)), hierarchy.last(arc), tree, label);
      }
    }
    return done(tree);
  }

  /** All from which a place can be reached coming down. */
  LabelTree to(Seat place) {
    for (int key : place.startKeys()) {
      offer(key, place.arrivingMs(key), -1, LabelTree.NO_PARENT);
    }
    LabelTree tree = new LabelTree();
    while (!queue.isEmpty()) {
      int label = settle(tree);
      if (label < 0) {
        continue;
      }
      int key = tree.key[label];
      int node = graph.tail[key];
      for (int i = hierarchy.downFirst[node]; i < hierarchy.downFirst[node + 1]; i++) {
        int arc = hierarchy.downArcs[i];
        relax(arc, graph.turnWeight(hierarchy.last(arc), key), hierarchy.first(arc), tree, label);
      }
    }
    return done(tree);
  }

  private int settle(LabelTree tree) {
    long top = queue.poll();
    int key = (int) top;
    int cost = (int) (top >>> 32);
    if (cost != best[key]) {
      return -1;
    }
    return tree.add(key, cost, fromArc[key], fromLabel[key]);
  }

  private void relax(int arc, int turn, int newKey, LabelTree tree, int label) {
    if (turn == RoadGraph.CLOSED) {
      return;
    }
    long cost = (long) tree.cost[label] + turn + hierarchy.weight(arc);
    if (cost < best[newKey]) {
      offer(newKey, (int) cost, arc, label);
    }
  }

  private void offer(int key, int cost, int arc, int label) {
    if (best[key] == Integer.MAX_VALUE) {
      touched[touchedCount++] = key;
    }
    best[key] = cost;
    fromArc[key] = arc;
    fromLabel[key] = label;
    queue.add((long) cost << 32 | key);
  }

  private LabelTree done(LabelTree tree) {
    for (int i = 0; i < touchedCount; i++) {
      best[touched[i]] = Integer.MAX_VALUE;
    }
    touchedCount = 0;
    return tree;
  }
}
