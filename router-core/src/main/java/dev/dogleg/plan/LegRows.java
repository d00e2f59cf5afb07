package dev.dogleg.plan;

import dev.dogleg.schedule.DayModel;

/**
 * Least duration of each leg of a day over spans of the day, made when first asked for: what many
 * parts of one day share.
 *
 * <p>Maintainers: the day is cut into {@link #CELLS} equal cells; for each leg and each span of
 * cells the least duration is kept, so a lookup is one index. Mutable inside, one thread.
 */
final class LegRows {
  /** Cells of a day. */
  static final int CELLS = 16;

  private final DayModel day;
  private final int nodes;
  private final int from;
  private final int width;
  private final int[][] rows;

  /** Legs between the visits, the start and the end place of a day. */
  LegRows(DayModel day) {
    this.day = day;
    nodes = day.size() + 2;
    from = day.from();
    width = Math.max(1, (Math.max(0, day.latestEnd() - from) + CELLS) / CELLS);
    rows = new int[nodes * nodes][];
  }

  /** {@return the cell of a second} */
  int cell(int time) {
    return Math.max(0, Math.min(CELLS - 1, (time - from) / width));
  }

  /**
   * A leg; a road must lead there.
   *
   * @return at index {@code lo * CELLS + hi} its least seconds over cells {@code lo..hi}; not to be
   *     changed
   */
  int[] row(int i, int j) {
    int leg = i * nodes + j;
    if (rows[leg] == null) {
      rows[leg] = filled(i, j);
    }
    return rows[leg];
  }

  private int[] filled(int i, int j) {
    int[] seconds = new int[CELLS * CELLS];
    boolean steady = day.steadyUntil(i, j, from) >= day.latestEnd();
    int always = steady ? day.drive(i, j, from) : 0;
    for (int lo = 0; lo < CELLS; lo++) {
      int start = from + lo * width;
      seconds[lo * CELLS + lo] = steady ? always : day.leastDrive(i, j, start, start + width - 1);
    }
    for (int lo = 0; lo < CELLS; lo++) {
      int running = seconds[lo * CELLS + lo];
      for (int hi = lo + 1; hi < CELLS; hi++) {
        running = Math.min(running, seconds[hi * CELLS + hi]);
        seconds[lo * CELLS + hi] = running;
      }
    }
    return seconds;
  }
}
