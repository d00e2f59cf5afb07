package dev.dogleg.roads;

import com.graphhopper.routing.ch.PrepareContractionHierarchies;
import com.graphhopper.storage.BaseGraph;
import com.graphhopper.storage.CHConfig;
import com.graphhopper.storage.CHStorage;

/** Contracts a graph with the library and flattens the result. */
final class HierarchyBuilder {
  private HierarchyBuilder() {}

  /**
   * Contracts on edges, with turns.
   *
   * @param base imported graph, frozen
   * @param graph the same, flat
   * @return the hierarchy
   */
  static Hierarchy contract(BaseGraph base, RoadGraph graph) {
    CHConfig config = CHConfig.edgeBased(VanProfile.NAME, new VanWeighting(graph));
    CHStorage store = PrepareContractionHierarchies.fromGraph(base, config).doWork().getCHStorage();
    int shortcuts = store.getShortcuts();
    int[] firstKey = new int[shortcuts];
    int[] lastKey = new int[shortcuts];
    int[] skipped1 = new int[shortcuts];
    int[] skipped2 = new int[shortcuts];
    for (int shortcut = 0; shortcut < shortcuts; shortcut++) {
      long at = store.toShortcutPointer(shortcut);
      firstKey[shortcut] = store.getOrigEdgeKeyFirst(at);
      lastKey[shortcut] = store.getOrigEdgeKeyLast(at);
      skipped1[shortcut] = arc(store.getSkippedEdge1(at), firstKey[shortcut], graph);
      skipped2[shortcut] = arc(store.getSkippedEdge2(at), lastKey[shortcut], graph);
    }
    int[] level = new int[graph.nodes];
    for (int node = 0; node < graph.nodes; node++) {
      level[node] = store.getLevel(store.toNodePointer(node));
    }
    store.close();
    return new Hierarchy(graph, level, firstKey, lastKey, skipped1, skipped2);
  }

  /** The library numbers edges, then shortcuts; ours are keys, then shortcuts. */
  private static int arc(int stored, int outerKey, RoadGraph graph) {
    return stored < graph.edges ? outerKey : stored + graph.edges;
  }
}
