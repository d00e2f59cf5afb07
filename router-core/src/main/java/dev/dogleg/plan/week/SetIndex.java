package dev.dogleg.plan.week;

import java.util.Arrays;

/** Sets as rows of words, numbered in order of first use; open addressing. */
final class SetIndex {
  private final int words;
  private long[] rows;
  private int[] table = new int[256];
  private int size;

  SetIndex(int words) {
    this.words = words;
    rows = new long[64 * words];
    Arrays.fill(table, -1);
  }

  int size() {
    return size;
  }

  /** Forgets all sets. */
  void clear() {
    size = 0;
    Arrays.fill(table, -1);
  }

  /** {@return the words of all sets, in their order; only to be read} */
  long[] rows() {
    return rows;
  }

  /** {@return number of a set, or -1} */
  int find(long[] set) {
    int slot = slot(set, 0);
    return table[slot];
  }

  /** {@return number of a set that is missing so far} */
  int put(long[] set) {
    if (2 * (size + 1) > table.length) {
      table = new int[2 * table.length];
      Arrays.fill(table, -1);
      for (int k = 0; k < size; k++) {
        table[slot(rows, k * words)] = k;
      }
    }
    if ((size + 1) * words > rows.length) {
      rows = Arrays.copyOf(rows, 2 * rows.length);
    }
    System.arraycopy(set, 0, rows, size * words, words);
    table[slot(set, 0)] = size;
    return size++;
  }

  private int slot(long[] from, int at) {
    long mixed = 0;
    for (int w = 0; w < words; w++) {
      mixed = (mixed ^ from[at + w]) * 0x9E3779B97F4A7C15L;
      mixed ^= mixed >>> 29;
    }
    int slot = (int) (mixed ^ mixed >>> 32) & table.length - 1;
    while (table[slot] >= 0 && !same(from, at, table[slot] * words)) {
      slot = slot + 1 & table.length - 1;
    }
    return slot;
  }

  private boolean same(long[] from, int at, int row) {
    for (int w = 0; w < words; w++) {
      if (from[at + w] != rows[row + w]) {
        return false;
      }
    }
    return true;
  }
}
