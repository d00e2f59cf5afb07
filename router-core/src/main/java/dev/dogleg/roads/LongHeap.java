package dev.dogleg.roads;

import java.util.Arrays;

/** A binary heap of plain longs, least first; boxes nothing. */
final class LongHeap {
  private long[] items = new long[256];
  private int size;

  boolean isEmpty() {
    return size == 0;
  }

  void add(long item) {
    if (size == items.length) {
      items = Arrays.copyOf(items, 2 * size);
    }
    int at = size++;
    while (at > 0) {
      int up = (at - 1) / 2;
      if (items[up] <= item) {
        break;
      }
      items[at] = items[up];
      at = up;
    }
    items[at] = item;
  }

  /** Takes out the least item; the heap must not be empty. */
  long poll() {
    long least = items[0];
    long last = items[--size];
    int at = 0;
    while (2 * at + 1 < size) {
      int down = 2 * at + 1;
      if (down + 1 < size && items[down + 1] < items[down]) {
        down++;
      }
      if (items[down] >= last) {
        break;
      }
      items[at] = items[down];
      at = down;
    }
    items[at] = last;
    return least;
  }
}
