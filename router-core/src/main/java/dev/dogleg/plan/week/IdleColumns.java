package dev.dogleg.plan.week;

import java.util.Arrays;

/** Which columns of an LP with many of them are far from use. */
final class IdleColumns {
  /** Columns of the LP above which those far from use go: up to 60 bookings, and for each more. */
  private static final int MOST = 500;

  private static final int FEW_BOOKINGS = 60;
  private static final int MORE_A_BOOKING = 16;

  private IdleColumns() {}

  /**
   * Picks them.
   *
   * @param problem the week and its columns
   * @param all columns of the LP
   * @param ruler tells reduced costs at its prices
   * @return about half of all where they are too many, those of the highest reduced cost; else none
   */
  static int[] of(MasterProblem problem, int[] all, WeekBound ruler) {
    int most = MOST + MORE_A_BOOKING * Math.max(0, problem.model().size() - FEW_BOOKINGS);
    if (all.length < most) {
      return new int[0];
    }
    ColumnPool pool = problem.pool();
    long[] least = new long[problem.model().kinds().size()];
    long[] over = new long[all.length];
    for (int j = 0; j < all.length; j++) {
      over[j] = ruler.reducedCost(all[j]);
      int kind = pool.kind(all[j]);
      least[kind] = Math.min(least[kind], over[j]);
    }
    for (int j = 0; j < all.length; j++) {
      over[j] -= least[pool.kind(all[j])];
    }
    long[] sorted = over.clone();
    Arrays.sort(sorted);
    long far = sorted[most / 2];
    int idle = 0;
    int[] found = new int[all.length];
    for (int j = 0; j < all.length; j++) {
      if (over[j] > far) {
        found[idle++] = all[j];
      }
    }
    return Arrays.copyOf(found, idle);
  }
}
