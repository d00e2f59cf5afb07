package dev.dogleg.plan.week;

import java.util.Arrays;

/** Whole numbers in a growing row. */
final class IntBag {
  private int[] items = new int[8];
  private int size;

  void add(int item) {
    if (size == items.length) {
      items = Arrays.copyOf(items, 2 * size);
    }
    items[size++] = item;
  }

  int get(int k) {
    return items[k];
  }

  int size() {
    return size;
  }
}
