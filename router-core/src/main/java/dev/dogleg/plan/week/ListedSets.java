package dev.dogleg.plan.week;

import java.util.Arrays;

/**
 * Sets of bookings of one kind of van-day, each with a cost that it cannot be below. Immutable once
 * filled.
 */
final class ListedSets {
  private static final int BYTE = 256;

  private final int words;
  private int size;
  private long[] sets = new long[256];
  private long[] costs = new long[256];

  /** None yet, of so many words each. */
  ListedSets(int words) {
    this.words = words;
  }

  /**
   * Adds a set.
   *
   * @param rows words of sets
   * @param at first word of the set
   * @param cost what it costs at least, extra prices of choices included
   */
  void add(long[] rows, int at, long cost) {
    if ((size + 1) * words > sets.length) {
      sets = Arrays.copyOf(sets, 2 * sets.length + words);
    }
    if (size == costs.length) {
      costs = Arrays.copyOf(costs, 2 * size);
    }
    System.arraycopy(rows, at, sets, size * words, words);
    costs[size++] = cost;
  }

  int size() {
    return size;
  }

  /** {@return what serving just this set costs at least, extra prices of choices included} */
  long cost(int k) {
    return costs[k];
  }

  /** {@return local numbers of the bookings of a set, rising} */
  int[] set(int k) {
    return SetBits.members(sets, k * words, words);
  }

  /**
   * The sets that may have a low reduced cost.
   *
   * @param duals prices
   * @param most those above this reduced cost are left away, in parts
   * @return sets in the same order
   */
  ListedSets upTo(DayDuals duals, long most) {
    long[] worth = byByte(duals.cover);
    int bytes = words * Long.BYTES;
    ListedSets found = new ListedSets(words);
    long[] one = new long[words];
    for (int k = 0; k < size; k++) {
      long reduced = duals.costScale * costs[k];
      for (int b = 0; b < bytes; b++) {
        long word = sets[k * words + b / Long.BYTES];
        reduced -= worth[b * BYTE + (int) (word >>> (b % Long.BYTES * Byte.SIZE) & 0xff)];
      }
      // Cuts only add to it.
      if (reduced <= most) {
        System.arraycopy(sets, k * words, one, 0, words);
        if (duals.reduced(one, costs[k]) <= most) {
          found.add(sets, k * words, costs[k]);
        }
      }
    }
    return found;
  }

  /** {@return for each set its reduced cost, in parts} */
  long[] reduced(DayDuals duals) {
    long[] reduced = new long[size];
    long[] one = new long[words];
    for (int k = 0; k < size; k++) {
      System.arraycopy(sets, k * words, one, 0, words);
      reduced[k] = duals.reduced(one, costs[k]);
    }
    return reduced;
  }

  /** Sums of prices for each value of each byte of a set. */
  private long[] byByte(long[] price) {
    long[] sums = new long[words * Long.BYTES * BYTE];
    for (int at = 1; at < sums.length; at++) {
      int value = at % BYTE;
      if (value != 0) {
        int visit = at / BYTE * Byte.SIZE + Integer.numberOfTrailingZeros(value);
        long own = visit < price.length ? price[visit] : 0;
        sums[at] = sums[at - value + (value & (value - 1))] + own;
      }
    }
    return sums;
  }
}
