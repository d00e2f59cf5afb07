package dev.dogleg.plan.week;

import java.util.Arrays;

/**
 * For each visit and time the visits that may still come after leaving it then, and the cuts that
 * name one of them. Mutable, one thread: cuts come and go with the prices.
 */
final class StillOpen {
  private static final int MOST_CELLS = 256;

  private final int from;
  private final int width;
  private final int cells;
  private final int words;
  private final long[] rows;
  private final long[] cuts;

  /**
   * Tabulates a day.
   *
   * @param day relaxed day
   * @param step tells what is too late, by water or not
   */
  StillOpen(RelaxedDay day, RunStep step) {
    from = day.from;
    int span = Math.max(1, day.latestEnd - day.from + 1);
    width = (span + MOST_CELLS - 1) / MOST_CELLS;
    cells = (span + width - 1) / width;
    words = Math.max(1, (day.n + Long.SIZE - 1) / Long.SIZE);
    rows = new long[day.n * cells * words];
    cuts = new long[day.n * cells];
    for (int i = 0; i < day.n; i++) {
      for (int j = 0; j < day.n; j++) {
        if (i == j || day.first[j] || !step.reaches(i, j)) {
          continue;
        }
        int service = day.service[j];
        for (int k = 0; k < cells && !step.tooLate(i, from + k * width, j, service); k++) {
          rows[(i * cells + k) * words + (j >>> 6)] |= 1L << j;
        }
      }
    }
  }

  /** {@return where a visit left at a second stands in the tables} */
  int index(int visit, int leave) {
    return visit * cells + (leave - from) / width;
  }

  /** {@return words of sets: the visits that may still come start at an index times the words} */
  long[] rows() {
    return rows;
  }

  /** {@return cuts, as bits, that name a visit that may still come} */
  long cuts(int index) {
    return cuts[index];
  }

  /** Takes the cuts in force. */
  void take(DayDuals duals) {
    Arrays.fill(cuts, 0);
    for (int at = 0; at < cuts.length; at++) {
      for (int w = 0; w < words; w++) {
        for (long left = rows[at * words + w]; left != 0; left &= left - 1) {
          cuts[at] |= duals.cutsOf[w * Long.SIZE + Long.numberOfTrailingZeros(left)];
        }
      }
    }
  }
}
