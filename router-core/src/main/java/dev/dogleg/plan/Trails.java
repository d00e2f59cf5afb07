package dev.dogleg.plan;

import java.util.Arrays;

/** Remembers for each partial day the visit it ended with and the partial day before. */
final class Trails {
  private int[] before = new int[256];
  private int[] visit = new int[256];
  private int size;

  /** {@return number of a new trail; -1 as {@code from} starts at the start place} */
  int add(int from, int last) {
    if (size == before.length) {
      before = Arrays.copyOf(before, size * 2);
      visit = Arrays.copyOf(visit, size * 2);
    }
    before[size] = from;
    visit[size] = last;
    return size++;
  }

  /** {@return visits of a trail, in order} */
  int[] order(int trail) {
    int length = 0;
    for (int at = trail; at >= 0; at = before[at]) {
      length++;
    }
    int[] order = new int[length];
    for (int at = trail; at >= 0; at = before[at]) {
      order[--length] = visit[at];
    }
    return order;
  }
}
