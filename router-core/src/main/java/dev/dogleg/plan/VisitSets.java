package dev.dogleg.plan;

import java.util.Arrays;

/**
 * Sets of visits, each known by a small number; how wide a set is stays in here.
 *
 * <p>Maintainers: sets are rows of {@code words} longs, found by open addressing. Numbers are given
 * in order of first use. Mutable, one thread.
 */
final class VisitSets {
  private final int words;
  private long[] rows;
  private int[] table;
  private int size;
  private final long[] probe;

  /** Sets of visits 0..n-1; set number 0 is the empty one. */
  VisitSets(int n) {
    words = Math.max(1, (n + Long.SIZE - 1) / Long.SIZE);
    rows = new long[words * 64];
    table = new int[128];
    Arrays.fill(table, -1);
    probe = new long[words];
    find();
  }

  /** {@return number of sets known} */
  int size() {
    return size;
  }

  boolean holds(int set, int visit) {
    return (rows[set * words + (visit >>> 6)] >>> visit & 1) != 0;
  }

  /** {@return number of the set with a visit more} */
  int with(int set, int visit) {
    System.arraycopy(rows, set * words, probe, 0, words);
    probe[visit >>> 6] |= 1L << visit;
    return find();
  }

  /** {@return words of all sets; not to be kept while sets are made} */
  long[] rows() {
    return rows;
  }

  /** {@return index of a set's first word in {@link #rows}} */
  int at(int set) {
    return set * words;
  }

  /** {@return the first 64 visits of a set as bits} */
  long bits(int set) {
    return rows[set * words];
  }

  private int find() {
    long mixed = 0;
    for (int word = 0; word < words; word++) {
      mixed = (mixed ^ probe[word]) * 0x9E3779B97F4A7C15L;
      mixed ^= mixed >>> 29;
    }
    int slot = (int) mixed & table.length - 1;
    while (table[slot] >= 0) {
      if (same(table[slot])) {
        return table[slot];
      }
      slot = slot + 1 & table.length - 1;
    }
    if (size * words == rows.length) {
      rows = Arrays.copyOf(rows, rows.length * 2);
    }
    System.arraycopy(probe, 0, rows, size * words, words);
    table[slot] = size++;
    if (size * 2 > table.length) {
      grow();
      return size - 1;
    }
    return table[slot];
  }

  private boolean same(int set) {
    for (int word = 0; word < words; word++) {
      if (rows[set * words + word] != probe[word]) {
        return false;
      }
    }
    return true;
  }

  private void grow() {
    table = new int[table.length * 2];
    Arrays.fill(table, -1);
    for (int set = 0; set < size; set++) {
      long mixed = 0;
      for (int word = 0; word < words; word++) {
        mixed = (mixed ^ rows[set * words + word]) * 0x9E3779B97F4A7C15L;
        mixed ^= mixed >>> 29;
      }
      int slot = (int) mixed & table.length - 1;
      while (table[slot] >= 0) {
        slot = slot + 1 & table.length - 1;
      }
      table[slot] = set;
    }
  }
}
