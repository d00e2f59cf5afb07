package dev.dogleg.plan;

import java.util.Arrays;

/**
 * Relaxed ends of days that begin at one door with one number of visits to come.
 *
 * <p>A label says: leaving by {@code latest}, visits remembered in {@code memory}, at this cost.
 * One is useless beside another that is no dearer, may leave no earlier and remembers no more.
 * Sorted by cost once sealed.
 */
final class NgLabels {
  int size;
  long[] cost = new long[4];
  int[] latest = new int[4];
  long[] memory = new long[4];
  int[] nextVisit = new int[4];
  int[] nextLabel = new int[4];

  void add(long newCost, int newLatest, long newMemory, int visit, int label) {
    int kept = 0;
    for (int k = 0; k < size; k++) {
      if (cost[k] <= newCost && latest[k] >= newLatest && (memory[k] & ~newMemory) == 0) {
        return;
      }
    }
    for (int k = 0; k < size; k++) {
      if (newCost <= cost[k] && newLatest >= latest[k] && (newMemory & ~memory[k]) == 0) {
        continue;
      }
      set(kept++, cost[k], latest[k], memory[k], nextVisit[k], nextLabel[k]);
    }
    if (kept == cost.length) {
      cost = Arrays.copyOf(cost, kept * 2);
      latest = Arrays.copyOf(latest, kept * 2);
      memory = Arrays.copyOf(memory, kept * 2);
      nextVisit = Arrays.copyOf(nextVisit, kept * 2);
      nextLabel = Arrays.copyOf(nextLabel, kept * 2);
    }
    set(kept, newCost, newLatest, newMemory, visit, label);
    size = kept + 1;
  }

  private void set(int at, long c, int l, long m, int visit, int label) {
    cost[at] = c;
    latest[at] = l;
    memory[at] = m;
    nextVisit[at] = visit;
    nextLabel[at] = label;
  }

  /** Sorts by cost; equal ones keep their order. */
  void seal() {
    Integer[] order = new Integer[size];
    Arrays.setAll(order, k -> k);
    long[] byCost = cost;
    Arrays.sort(order, (x, y) -> Long.compare(byCost[x], byCost[y]));
    NgLabels copy = new NgLabels();
    copy.cost = new long[Math.max(1, size)];
    copy.latest = new int[Math.max(1, size)];
    copy.memory = new long[Math.max(1, size)];
    copy.nextVisit = new int[Math.max(1, size)];
    copy.nextLabel = new int[Math.max(1, size)];
    for (int k = 0; k < size; k++) {
      int old = order[k];
      copy.set(k, cost[old], latest[old], memory[old], nextVisit[old], nextLabel[old]);
    }
    cost = copy.cost;
    latest = copy.latest;
    memory = copy.memory;
    nextVisit = copy.nextVisit;
    nextLabel = copy.nextLabel;
  }
}
