package dev.dogleg.plan.week;

import java.util.Arrays;

/**
 * What the rest of a plain day is worth at least, by visit and time, and by visit and load: cost
 * less worths of the visits still made, in parts.
 *
 * <p>Maintainers: two relaxations in which a visit may be made again, but never right after the one
 * before it (two-cycle elimination: Houck, Picard, Queyranne, Vemuganti 1980, Opsearch 17:93-109),
 * one that forgets loads, one that forgets times. Cuts only add to what a day costs, so they may be
 * left out. Cells of time are no longer than the shortest step, so one pass from the last cell
 * serves.
 */
final class PlainFloor {
  private static final int MOST_CELLS = 160;
  private static final int NOBODY = -1;

  private final PlainDay day;
  private final int n;
  private final int width;
  private final int cells;
  private final int unit;
  private final int loads;
  private final long[] byTime;
  private final long[] byTimeElse;
  private final int[] byTimeNext;
  private final long[] byLoad;
  private final long[] byLoadElse;
  private final int[] byLoadNext;

  /** An empty floor; {@link #fill} before use. */
  PlainFloor(PlainDay day) {
    this.day = day;
    n = day.n;
    width = Math.max(1, Math.min(day.leastStep(), day.length / MOST_CELLS));
    cells = day.length / width + 1;
    byTime = new long[n * cells];
    byTimeElse = new long[n * cells];
    byTimeNext = new int[n * cells];
    int least = Arrays.stream(day.load).min().orElse(0);
    unit = Math.max(1, Math.min(least, day.mostLoad / MOST_CELLS));
    // Where loads say little, their floor is not asked.
    loads = least > 0 ? day.mostLoad / unit + 1 : 0;
    byLoad = new long[n * loads];
    byLoadElse = new long[n * loads];
    byLoadNext = new int[n * loads];
  }

  /**
   * Computes the floor for some prices.
   *
   * @param arcs value of a way to a visit, the visit's worth taken off, by pair of visits
   * @param ends value of ending after each visit
   */
  void fill(long[] arcs, long[] ends) {
    Arrays.fill(byTime, RelaxedDay.NEVER);
    Arrays.fill(byTimeElse, RelaxedDay.NEVER);
    Arrays.fill(byTimeNext, NOBODY);
    for (int k = cells - 1; k >= 0; k--) {
      int begin = k * width;
      for (int i = 0; i < n; i++) {
        int at = i * cells + k;
        if (begin > day.close[i]) {
          continue;
        }
        int here = Math.max(begin, day.open[i]);
        if (here + day.endStep[i] <= day.length) {
          byTime[at] = ends[i];
        }
        for (int j = 0; j < n; j++) {
          int there = here + day.step[i * n + j];
          if (there <= day.close[j]) {
            int to = j * cells + Math.max(there, day.open[j]) / width;
            long rest = byTimeNext[to] == i ? byTimeElse[to] : byTime[to];
            offer(byTime, byTimeElse, byTimeNext, at, j, arcs[i * n + j] + rest);
          }
        }
      }
    }
    fillLoads(arcs, ends);
  }

  private void fillLoads(long[] arcs, long[] ends) {
    Arrays.fill(byLoadElse, RelaxedDay.NEVER);
    Arrays.fill(byLoadNext, NOBODY);
    for (int left = 0; left < loads; left++) {
      for (int i = 0; i < n; i++) {
        int at = i * loads + left;
        byLoad[at] = ends[i];
        for (int j = 0; j < n; j++) {
          int then = left - day.load[j] / unit;
          if (then >= 0 && day.step[i * n + j] < PlainDay.NO_WAY) {
            int to = j * loads + then;
            long rest = byLoadNext[to] == i ? byLoadElse[to] : byLoad[to];
            offer(byLoad, byLoadElse, byLoadNext, at, j, arcs[i * n + j] + rest);
          }
        }
      }
    }
  }

  private static void offer(long[] best, long[] other, int[] next, int at, int to, long value) {
    if (value < best[at]) {
      other[at] = best[at];
      best[at] = value;
      next[at] = to;
    } else if (value < other[at]) {
      other[at] = value;
    }
  }

  /**
   * Least value of the rest of a day.
   *
   * @param i visit made last
   * @param before visit before it, or -1
   * @param begin second at which it is begun
   * @param carried load points so far, its own included
   * @return parts; {@link RelaxedDay#NEVER} or more where the day can neither go on nor end
   */
  long of(int i, int before, int begin, int carried) {
    int at = i * cells + begin / width;
    long rest = before >= 0 && byTimeNext[at] == before ? byTimeElse[at] : byTime[at];
    if (loads == 0) {
      return rest;
    }
    int left = i * loads + (day.mostLoad - carried + unit - 1) / unit;
    left = Math.min(left, i * loads + loads - 1);
    long light = before >= 0 && byLoadNext[left] == before ? byLoadElse[left] : byLoad[left];
    return Math.max(rest, light);
  }
}
