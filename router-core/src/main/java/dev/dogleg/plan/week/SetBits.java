package dev.dogleg.plan.week;

/** Sets of small numbers as rows of 64-bit words. */
final class SetBits {
  private SetBits() {}

  /**
   * A set.
   *
   * @param members numbers, 0 or more
   * @param words how many words it has
   * @return its words
   */
  static long[] of(int[] members, int words) {
    long[] row = new long[words];
    for (int member : members) {
      row[member >>> 6] |= 1L << member;
    }
    return row;
  }

  /**
   * The members of a set.
   *
   * @param rows words of sets
   * @param at first word of the set
   * @param words how many words a set has
   * @return numbers, rising
   */
  static int[] members(long[] rows, int at, int words) {
    int count = 0;
    for (int w = 0; w < words; w++) {
      count += Long.bitCount(rows[at + w]);
    }
    int[] members = new int[count];
    int next = 0;
    for (int w = 0; w < words; w++) {
      for (long left = rows[at + w]; left != 0; left &= left - 1) {
        members[next++] = w * Long.SIZE + Long.numberOfTrailingZeros(left);
      }
    }
    return members;
  }
}
