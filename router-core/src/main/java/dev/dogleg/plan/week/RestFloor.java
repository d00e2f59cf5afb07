package dev.dogleg.plan.week;

import dev.dogleg.schedule.RuleModes;
import java.util.Arrays;

/**
 * What the rest of a relaxed day is worth at least, after each visit and from each time on: cost
 * less worths of the visits still made, in the parts of the prices.
 *
 * <p>Maintainers: time is cut into cells; a rest that leaves in a cell or later is looked at from
 * the cell's start. The rest never goes straight back to where it comes from (for that the two best
 * rests with different next visits are kept), else a visit may be made again: this is a floor,
 * found in the square of the visits times the cells. Waiting is free, of the rules only what they
 * say of two visits one after the other counts. Tanks count by the levels of {@link RestTanks}: a
 * rest for which they do not last makes a water stop.
 */
final class RestFloor {
  private static final int NOBODY = -1;

  private final RestLegs legs;
  private final RestTanks tanks;
  private final RuleModes modes;
  private final RelaxedDay day;
  private final int n;
  private final int cells;
  private final int levels;
  private final int lanes;

  /** By break (0: still to be thought of, 1: no longer), visit, cell, rule mode and tank level. */
  private final long[][] best;

  private final int[][] next;
  private final long[][] other;

  /** By break, visit and cell: whether it was looked at. */
  private final boolean[][] seen;

  /** By break, visit and cell: the least of all best rests. */
  private final long[][] low;

  /** The greatest of all second best rests of the cell being looked at, or more. */
  private long high;

  /** An empty floor; {@link #fill} before use. */
  RestFloor(RestLegs legs, RestTanks tanks, RuleModes modes) {
    this.legs = legs;
    this.tanks = tanks;
    this.modes = modes;
    day = legs.day;
    n = legs.n;
    cells = legs.cells;
    levels = tanks.levels;
    lanes = levels * modes.size();
    best = new long[2][n * cells * lanes];
    other = new long[2][n * cells * lanes];
    next = new int[2][n * cells * lanes];
    seen = new boolean[2][n * cells];
    low = new long[2][n * cells];
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
      Arrays.fill(seen[free], false);
      Arrays.fill(low[free], RelaxedDay.NEVER);
    }
    for (int k = cells - 1; k >= 0; k--) {
      boolean again = true;
      // A hop within one cell may better a rest of the same cell: then once more.
      for (int turn = 0; again && turn <= n; turn++) {
        again = false;
        for (int free = 1; free >= 0; free--) {
          for (int i = 0; i < n; i++) {
            again |= legs.matters(i, k, free) && fill(i, k, free, worth, scale);
          }
        }
      }
    }
  }

  private boolean fill(int i, int k, int free, long[] worth, long scale) {
    int at = (i * cells + k) * lanes;
    boolean sameCell = false;
    if (k + 1 < cells && !seen[free][i * cells + k]) {
      System.arraycopy(best[free], at + lanes, best[free], at, lanes);
      System.arraycopy(other[free], at + lanes, other[free], at, lanes);
      System.arraycopy(next[free], at + lanes, next[free], at, lanes);
    }
    seen[free][i * cells + k] = true;
    high = greatest(other[free], at);
    long end = legs.end(i, k, free);
    for (int mode = 0; end < RelaxedDay.NEVER && mode < modes.size(); mode++) {
      long price = modes.endPrice(mode);
      for (int level = 0; price < RuleModes.FORBIDDEN && level < levels; level++) {
        offer(free, at + mode * levels + level, day.end(), scale * (end + price));
      }
    }
    int start = legs.start(k);
    boolean mayBreak = free == 0 && start <= day.breakTo();
    int rested = Math.max(start, day.breakFrom()) + day.breakLength();
    for (int j = 0; j < n; j++) {
      if (!legs.inTime(i, j, start)) {
        continue;
      }
      sameCell |= hops(i, k, free, start, j, free, false, worth, scale);
      if (mayBreak) {
        // Rested at the earliest whenever the break begins at its earliest: later cells say it.
        if (start + legs.cell > day.breakFrom()) {
          sameCell |= hops(i, k, free, rested, j, 1, false, worth, scale);
        }
        sameCell |= hops(i, k, free, start, j, 1, true, worth, scale);
      }
    }
    low[free][i * cells + k] = least(best[free], at);
    return sameCell;
  }

  private long greatest(long[] values, int at) {
    long greatest = Long.MIN_VALUE;
    for (int lane = at; lane < at + lanes; lane++) {
      greatest = Math.max(greatest, values[lane]);
    }
    return greatest;
  }

  private long least(long[] values, int at) {
    long least = RelaxedDay.NEVER;
    for (int lane = at; lane < at + lanes; lane++) {
      least = Math.min(least, values[lane]);
    }
    return least;
  }

  /** Whether a rest may better another, whatever rules ask and tanks hold. */
  private boolean helps(int j, int k, int to, int freeThen, long value) {
    return to == k || low[freeThen][j * cells + to] + value < high;
  }

  /** A leg left at a time or within a cell of it, straight or by water. */
  private boolean hops(
      int i,
      int k,
      int free,
      int leave,
      int j,
      int freeThen,
      boolean breakThere,
      long[] worth,
      long scale) {
    boolean sameCell = false;
    int seconds = legs.drive(i, j, leave);
    if (seconds != RestLegs.NO_WAY) {
      int ready = legs.ready(i, j, leave + seconds, breakThere);
      if (ready != RestLegs.NO_WAY) {
        long value = scale * legs.price(i, j, seconds) - worth[j];
        int to = legs.cellOf(j, ready);
        sameCell =
            helps(j, k, to, freeThen, value) && straight(i, k, free, j, to, freeThen, value, scale);
      }
    }
    if (tanks.stops && tanks.seconds(i, j) != RestTanks.NO_WAY) {
      int ready = legs.ready(i, j, leave + tanks.seconds(i, j), breakThere);
      if (ready != RestLegs.NO_WAY) {
        long value = scale * (tanks.price(i, j) + legs.toll(i, j)) - worth[j];
        int to = legs.cellOf(j, ready);
        sameCell |=
            helps(j, k, to, freeThen, value) && byWater(i, k, free, j, to, freeThen, value, scale);
      }
    }
    return sameCell;
  }

  private boolean straight(
      int i, int k, int free, int j, int to, int freeThen, long value, long scale) {
    int use = tanks.use[j];
    boolean better = false;
    for (int mode = 0; mode < modes.size(); mode++) {
      int then = modes.after(mode, j);
      if (then >= 0) {
        long all = value + scale * modes.price(mode, j);
        int from = (i * cells + k) * lanes + mode * levels + use;
        int rest = (j * cells + to) * lanes + then * levels;
        // Fuller tanks cost no more: the least of all that comes, against the most of all there is.
        if (after(i, j, to, freeThen, then * levels + levels - use - 1) + all < other[free][from]) {
          better |= lanes(i, free, from, j, freeThen, rest, levels - use, all);
        }
      }
    }
    return better && to == k;
  }

  /** Offers rests of so many lanes, one after the other, to as many others. */
  private boolean lanes(
      int i, int free, int from, int j, int freeThen, int rest, int count, long all) {
    long[] restBest = best[freeThen];
    long[] restOther = other[freeThen];
    int[] restNext = next[freeThen];
    long[] mineBest = best[free];
    long[] mineOther = other[free];
    int[] mineNext = next[free];
    boolean better = false;
    for (int lane = 0; lane < count; lane++) {
      long after = restNext[rest + lane] == i ? restOther[rest + lane] : restBest[rest + lane];
      if (after >= RelaxedDay.NEVER) {
        continue;
      }
      long value = after + all;
      int at = from + lane;
      if (value < mineBest[at]) {
        if (mineNext[at] != j) {
          mineOther[at] = mineBest[at];
          mineNext[at] = j;
        }
        mineBest[at] = value;
        better = true;
      } else if (value < mineOther[at] && mineNext[at] != j) {
        mineOther[at] = value;
        better = true;
      }
    }
    return better;
  }

  private boolean byWater(
      int i, int k, int free, int j, int to, int freeThen, long value, long scale) {
    boolean better = false;
    for (int mode = 0; mode < modes.size(); mode++) {
      int then = modes.after(mode, j);
      long rest =
          then < 0
              ? RelaxedDay.NEVER
              : after(i, j, to, freeThen, then * levels + tanks.full() - tanks.use[j]);
      int from = (i * cells + k) * lanes + mode * levels;
      long all = rest < RelaxedDay.NEVER ? rest + value + scale * modes.price(mode, j) : rest;
      // Fuller tanks cost no more: what betters nothing at one level betters nothing above it.
      for (int level = 0; level < levels && all < other[free][from + level]; level++) {
        better |= offer(free, from + level, j, all);
      }
    }
    return better && to == k;
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
   * @param mode what rules ask, see {@link RuleModes}
   * @param level what is left of the tanks
   * @return parts; {@link RelaxedDay#NEVER} where the day cannot go on or end
   */
  long of(int i, int before, int a, boolean taken, int mode, int level) {
    int free = taken || !day.hasBreak ? 1 : 0;
    return after(before, i, legs.cellOf(i, a), free, mode * levels + level);
  }

  /**
   * Least value of the rest of a day from a cell on.
   *
   * @param before visit before the one just served, or -1
   * @param i visit just served
   * @param k cell in which it is left at the earliest
   * @param free 1: the break need no longer be thought of, 0: it must be
   * @param lane rule mode and tank level
   * @return parts; {@link RelaxedDay#NEVER} where the day cannot go on or end
   */
  private long after(int before, int i, int k, int free, int lane) {
    int at = (i * cells + k) * lanes + lane;
    return before >= 0 && next[free][at] == before ? other[free][at] : best[free][at];
  }
}
