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
