package dev.dogleg.plan.week;

/** For each visit and cell of time the visits that may still follow it on a plain day. */
final class PlainOpen {
  private static final int MOST_CELLS = 256;

  private final int width;
  private final int cells;
  private final long[] rows;

  /** Tabulates a day. */
  PlainOpen(PlainDay day) {
    width = day.length / MOST_CELLS + 1;
    cells = day.length / width + 1;
    rows = new long[day.n * cells * day.words];
    for (int i = 0; i < day.n; i++) {
      for (int j = 0; j < day.n; j++) {
        for (int k = 0;
            i != j && k < cells && day.mayFollow(i, Math.max(day.open[i], k * width), j);
            k++) {
          rows[(i * cells + k) * day.words + (j >>> 6)] |= 1L << j;
        }
      }
    }
  }

  /** {@return where, in sets, a visit begun at a second stands in the rows} */
  int index(int visit, int begin) {
    return visit * cells + begin / width;
  }

  /** {@return words of the sets} */
  long[] rows() {
    return rows;
  }
}
