package dev.dogleg.plan.week;

import java.util.Arrays;

/**
 * What the rest of a relaxed day is worth at least, after each visit and from each time on: cost
 * less worths of the visits still made, in the parts of the prices.
 *
 * <p>Maintainers: time is cut into cells; a rest that leaves in a cell or later is looked at from
 * the cell's start. The rest never goes straight back to where it comes from (for that the two best
 * rests with different next visits are kept), else a visit may be made again: this is a floor,
 * found in the square of the visits times the cells. Waiting is free, of the rules only what they
 * say of two visits one after the other counts.
 */
final class RestFloor {
  private static final int NOBODY = -1;

  private final RestLegs legs;
  private final RelaxedDay day;
  private final int n;
  private final int cells;

  /** By break (0: still to be thought of, 1: no longer), visit and cell. */
  private final long[][] best;

  private final int[][] next;
  private final long[][] other;

  /** An empty floor; {@link #fill} before use. */
  RestFloor(RestLegs legs) {
    this.legs = legs;
    day = legs.day;
    n = legs.n;
    cells = legs.cells;
    best = new long[2][n * cells];
    other = new long[2][n * cells];
    next = new int[2][n * cells];
  }

  /**
   * Computes the floor for some prices.
   *
   * @param worth for each visit what serving it is worth, in parts
   * @param scale parts of a sixtieth; 0: costs do not count
   */
  void fill(long[] worth, long scale) {
    for (int free = 1; free >= 0; free--) {
      Arrays.fill(best[free], RelaxedDay.NEVER);
      Arrays.fill(other[free], RelaxedDay.NEVER);
      Arrays.fill(next[free], NOBODY);
    }
    for (int k = cells - 1; k >= 0; k--) {
      boolean again = true;
      // A hop within one cell may better a rest of the same cell: then once more.
      for (int turn = 0; again && turn <= n; turn++) {
        again = false;
        for (int free = 1; free >= 0; free--) {
          for (int i = 0; legs.matters(k, free) && i < n; i++) {
            again |= fill(i, k, free, worth, scale);
          }
        }
      }
    }
  }

  private boolean fill(int i, int k, int free, long[] worth, long scale) {
    int at = i * cells + k;
    boolean sameCell = false;
    if (k + 1 < cells && next[free][at] == NOBODY && best[free][at] >= RelaxedDay.NEVER) {
      best[free][at] = best[free][at + 1];
      other[free][at] = other[free][at + 1];
      next[free][at] = next[free][at + 1];
    }
    long end = legs.end(i, k, free);
    if (end < RelaxedDay.NEVER) {
      offer(free, at, day.end(), scale * end);
    }
    int start = legs.start(k);
    boolean mayBreak = free == 0 && start <= day.breakTo();
    int rested = Math.max(start, day.breakFrom()) + day.breakLength();
    for (int j = 0; j < n; j++) {
      if (!legs.inTime(i, j, start)) {
        continue;
      }
      sameCell |= hop(i, k, free, start, j, free, false, worth, scale);
      if (mayBreak) {
        // Rested at the earliest whenever the break begins at its earliest: later cells say it.
        if (start + legs.cell > day.breakFrom()) {
          sameCell |= hop(i, k, free, rested, j, 1, false, worth, scale);
        }
        sameCell |= hop(i, k, free, start, j, 1, true, worth, scale);
      }
    }
    return sameCell;
  }

  /** A leg left at a time or within a cell of it. */
  private boolean hop(
      int i,
      int k,
      int free,
      int leave,
      int j,
      int freeThen,
      boolean breakThere,
      long[] worth,
      long scale) {
    int seconds = legs.drive(i, j, leave);
    int ready =
        seconds == RestLegs.NO_WAY
            ? RestLegs.NO_WAY
            : legs.ready(i, j, leave + seconds, breakThere);
    if (ready == RestLegs.NO_WAY) {
      return false;
    }
    int to = legs.cellOf(ready);
    long rest = after(i, j, to, freeThen);
    if (rest >= RelaxedDay.NEVER) {
      return false;
    }
    long value = rest - worth[j] + scale * legs.price(i, j, seconds);
    return offer(free, i * cells + k, j, value) && to == k;
  }

  private boolean offer(int free, int at, int to, long value) {
    if (value < best[free][at]) {
      if (next[free][at] != to) {
        other[free][at] = best[free][at];
        next[free][at] = to;
      }
      best[free][at] = value;
      return true;
    }
    if (to != next[free][at] && value < other[free][at]) {
      other[free][at] = value;
      return true;
    }
    return false;
  }

  /**
   * Least value of the rest of a day.
   *
   * @param i visit just served
   * @param before visit before it, or -1
   * @param a ready to leave it at this second at the earliest
   * @param taken whether the break is behind
   * @return parts; {@link RelaxedDay#NEVER} where the day cannot go on or end
   */
  long of(int i, int before, int a, boolean taken) {
    return after(before, i, legs.cellOf(a), taken || !day.hasBreak ? 1 : 0);
  }

  /**
   * Least value of the rest of a day from a cell on.
   *
   * @param before visit before the one just served, or -1
   * @param i visit just served
   * @param k cell in which it is left at the earliest
   * @param free 1: the break need no longer be thought of, 0: it must be
   * @return parts; {@link RelaxedDay#NEVER} where the day cannot go on or end
   */
  long after(int before, int i, int k, int free) {
    int at = i * cells + k;
    return before >= 0 && next[free][at] == before ? other[free][at] : best[free][at];
  }
}
