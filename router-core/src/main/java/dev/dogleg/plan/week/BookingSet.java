package dev.dogleg.plan.week;

import java.util.Arrays;

/** An immutable set of booking numbers; how wide it is stays in here. */
final class BookingSet {
  private final long[] words;

  private BookingSet(long[] words) {
    this.words = words;
  }

  /** {@return the set of some numbers} */
  static BookingSet of(int[] numbers) {
    int top = 0;
    for (int number : numbers) {
      top = Math.max(top, number);
    }
    long[] words = new long[top / Long.SIZE + 1];
    for (int number : numbers) {
      words[number >>> 6] |= 1L << number;
    }
    return new BookingSet(words);
  }

  /** {@return the set that stands in a row of words} */
  static BookingSet ofRow(long[] rows, int at, int wide) {
    int top = wide;
    while (top > 1 && rows[at + top - 1] == 0) {
      top--;
    }
    return new BookingSet(Arrays.copyOfRange(rows, at, at + top));
  }

  /** {@return the set as a row of so many words} */
  long[] row(int wide) {
    return Arrays.copyOf(words, wide);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof BookingSet set && Arrays.equals(words, set.words);
  }

  @Override
  public int hashCode() {
    long hash = 0;
    for (long word : words) {
      hash = (hash ^ word) * 0x9E3779B97F4A7C15L;
      hash ^= hash >>> Integer.SIZE;
    }
    return (int) hash;
  }
}
