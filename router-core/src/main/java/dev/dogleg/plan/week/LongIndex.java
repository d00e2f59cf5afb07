package dev.dogleg.plan.week;

import java.util.Arrays;

/** A map from {@code long} keys to numbers, without boxing; open addressing. */
final class LongIndex {
  /** Answer for a key that was never put. */
  static final int MISSING = -1;

  /** A number that callers may put for "known, but nothing". */
  static final int NONE = -2;

  private long[] keys = new long[64];
  private int[] numbers = new int[64];
  private int size;

  LongIndex() {
    Arrays.fill(numbers, MISSING);
  }

  /** {@return the key's number, or {@link #MISSING}} */
  int find(long key) {
    int slot = slot(key);
    return numbers[slot];
  }

  /** Puts a key that is missing. */
  void put(long key, int number) {
    if (2 * ++size > keys.length) {
      long[] oldKeys = keys;
      int[] oldNumbers = numbers;
      keys = new long[2 * oldKeys.length];
      numbers = new int[keys.length];
      Arrays.fill(numbers, MISSING);
      for (int k = 0; k < oldKeys.length; k++) {
        if (oldNumbers[k] != MISSING) {
          int slot = slot(oldKeys[k]);
          keys[slot] = oldKeys[k];
          numbers[slot] = oldNumbers[k];
        }
      }
    }
    int slot = slot(key);
    keys[slot] = key;
    numbers[slot] = number;
  }

  private int slot(long key) {
    long mixed = key * 0x9E3779B97F4A7C15L;
    int slot = (int) (mixed >>> 32) & keys.length - 1;
    while (numbers[slot] != MISSING && keys[slot] != key) {
      slot = slot + 1 & keys.length - 1;
    }
    return slot;
  }
}
