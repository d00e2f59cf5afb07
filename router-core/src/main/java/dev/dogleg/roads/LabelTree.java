package dev.dogleg.roads;

import java.util.Arrays;

/**
 * Everything one upward search settled, in the order of settling: edge key, cost, the arc that led
 * there and the label it came from.
 *
 * <p>The first labels are the roots: the key on which the place lies, with only its part of it.
 */
final class LabelTree {
  /** Parent of a root. */
  static final int NO_PARENT = -1;

  int size;
  int[] key = new int[256];
  int[] cost = new int[256];
  int[] arc = new int[256];
  int[] parent = new int[256];

  int add(int newKey, int newCost, int newArc, int newParent) {
    if (size == key.length) {
      key = Arrays.copyOf(key, 2 * size);
      cost = Arrays.copyOf(cost, 2 * size);
      arc = Arrays.copyOf(arc, 2 * size);
      parent = Arrays.copyOf(parent, 2 * size);
    }
    key[size] = newKey;
    cost[size] = newCost;
    arc[size] = newArc;
    parent[size] = newParent;
    return size++;
  }

  boolean isRoot(int label) {
    return parent[label] == NO_PARENT;
  }
}
