package dev.dogleg.roads;

import java.util.Arrays;

/**
 * Which edge keys hang together both ways, turns and bans included (strongly connected components,
 * Tarjan 1972, without recursion).
 *
 * <p>Networks are numbered by falling size, so 0 is the mainland. The importing library hides small
 * networks by default (200 edges; seven in a hundred edges of one suburb tried); here none is
 * hidden, and a place is moved off a loose piece only where a real network is near.
 */
final class Islands {
  /** A network of at least so many keys is a real island, not a loose piece of the map. */
  static final int REAL_KEYS = 200;

  private final RoadGraph graph;
  private final int[] index;
  private final int[] low;
  private final int[] network;
  private final int[] stack;
  private int stackSize;
  private int nextIndex = 1;
  private int networks;

  private Islands(RoadGraph graph) {
    this.graph = graph;
    int keys = graph.tail.length;
    this.index = new int[keys];
    this.low = new int[keys];
    this.network = new int[keys];
    this.stack = new int[keys];
    Arrays.fill(network, -1);
  }

  /**
   * Finds the networks.
   *
   * @param graph roads
   * @return network number by key, -1 where not drivable
   */
  static int[] find(RoadGraph graph) {
    Islands islands = new Islands(graph);
    for (int key = 0; key < graph.tail.length; key++) {
      if (graph.drivable(key) && islands.index[key] == 0) {
        islands.visit(key);
      }
    }
    islands.numberBySize();
    return islands.network;
  }

  /**
   * Number of keys of each network.
   *
   * @param network what {@link #find} gave
   * @return sizes, falling
   */
  static int[] sizes(int[] network) {
    int count = Arrays.stream(network).max().orElse(-1) + 1;
    int[] sizes = new int[count];
    for (int number : network) {
      if (number >= 0) {
        sizes[number]++;
      }
    }
    return sizes;
  }

  private void visit(int root) {
    int[] path = new int[64];
    int[] position = new int[64];
    int depth = 0;
    path[0] = root;
    open(root);
    while (depth >= 0) {
      int key = path[depth];
      int node = graph.head(key);
      int at = graph.outFirst[node] + position[depth]++;
      if (at >= graph.outFirst[node + 1]) {
        close(key);
        if (--depth >= 0) {
          low[path[depth]] = Math.min(low[path[depth]], low[key]);
        }
        continue;
      }
      int next = graph.outKeys[at];
      if (graph.turnMs(key, next) == RoadGraph.CLOSED) {
        continue;
      }
      if (index[next] == 0) {
        if (++depth == path.length) {
          path = Arrays.copyOf(path, 2 * depth);
          position = Arrays.copyOf(position, 2 * depth);
        }
        path[depth] = next;
        position[depth] = 0;
        open(next);
      } else if (network[next] < 0) {
        low[key] = Math.min(low[key], index[next]);
      }
    }
  }

  private void open(int key) {
    index[key] = nextIndex;
    low[key] = nextIndex++;
    stack[stackSize++] = key;
  }

  private void close(int key) {
    if (low[key] != index[key]) {
      return;
    }
    int member;
    do {
      member = stack[--stackSize];
      network[member] = networks;
    } while (member != key);
    networks++;
  }

  /** Falling size; equal sizes by smallest key, so that a rebuilt cache numbers alike. */
  private void numberBySize() {
    int[] sizes = sizes(network);
    int[] firstKey = new int[networks];
    Arrays.fill(firstKey, Integer.MAX_VALUE);
    for (int key = network.length - 1; key >= 0; key--) {
      if (network[key] >= 0) {
        firstKey[network[key]] = key;
      }
    }
    Integer[] order = new Integer[networks];
    Arrays.setAll(order, i -> i);
    Arrays.sort(
        order,
        (a, b) ->
            sizes[a] != sizes[b]
                ? Integer.compare(sizes[b], sizes[a])
                : Integer.compare(firstKey[a], firstKey[b]));
    int[] number = new int[networks];
    for (int i = 0; i < networks; i++) {
      number[order[i]] = i;
    }
    for (int key = 0; key < network.length; key++) {
      network[key] = network[key] < 0 ? -1 : number[network[key]];
    }
  }
}
