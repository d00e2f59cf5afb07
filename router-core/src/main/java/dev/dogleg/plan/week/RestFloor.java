package dev.dogleg.plan.week;

import java.util.Arrays;

/**
 * What the rest of a relaxed day is worth at least, after each visit and from each time on: cost
 * less worths of the visits still made, in the parts of the prices.
 *
 * <p>Maintainers: time is cut into cells; a rest that leaves in a cell or later is looked at from
 * the cell's start. The rest never goes straight back to where it comes from (for that the two best
 * rests with different next visits are kept), else a visit may be made again: this is a floor,
 * found in the square of the visits times the cells. Waiting is free, of the rules nothing counts.
 */
final class RestFloor {
  /** Cells times pairs of visits, at the most. */
  private static final int MOST_WORK = 2_500_000;

  private static final int MOST_CELLS = 200;

  /** A leg is taken to be as short as at its shortest over 2^8 seconds. */
  private static final int SLOT_BITS = 8;

  private static final int NOBODY = -1;

  private final RelaxedDay day;
  private final int n;
  private final int cellBits;
  private final int cell;
  private final int cells;

  /** By break (0: still to be thought of, 1: no longer), visit and cell. */
  private final long[][] best;

  private final int[][] next;
  private final long[][] other;

  /** By leg and slot: its least seconds. */
  private final int[] drive;

  /** By leg: a later start can not be in time. */
  private final int[] latest;

  private final int slots;

  /** An empty floor; {@link #fill} before use. */
  RestFloor(RelaxedDay day) {
    this.day = day;
    n = day.n;
    int span = Math.max(1, day.latestEnd - day.from + 1);
    int most = Math.max(24, Math.min(MOST_CELLS, MOST_WORK / Math.max(1, n * n)));
    int bits = 0;
    while (span >> bits > most) {
      bits++;
    }
    cellBits = bits;
    cell = 1 << bits;
    cells = ((span - 1) >> cellBits) + 1;
    best = new long[2][n * cells];
    other = new long[2][n * cells];
    next = new int[2][n * cells];
    slots = ((span + cell) >> SLOT_BITS) + 2;
    drive = new int[n * (n + 1) * slots];
    latest = new int[n * (n + 1)];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j <= n; j++) {
        describe(i, j);
      }
    }
  }

  /** Tabulates a leg to a visit, or (n) to the end of the day. */
  private void describe(int i, int j) {
    int leg = i * (n + 1) + j;
    int[] ends = i == j ? null : day.legs.spanEnds(i, j == n ? day.end() : j);
    if (ends == null || (j < n && day.first[j])) {
      latest[leg] = Integer.MIN_VALUE;
      return;
    }
    int[] seconds = day.legs.spanSeconds(i, j == n ? day.end() : j);
    int span = 0;
    for (int slot = 0; slot < slots; slot++) {
      while (ends[span] < day.from + (slot << SLOT_BITS)) {
        span++;
      }
      int least = seconds[span];
      for (int k = span; ends[k] < day.from + ((slot + 1) << SLOT_BITS) - 1; k++) {
        least = Math.min(least, seconds[k + 1]);
      }
      drive[leg * slots + slot] = least;
    }
    int arriveBy = day.latestEnd;
    if (j < n) {
      int readyBy = Math.min(day.doneBy[j], day.latestEnd - day.home[j]);
      arriveBy = Math.min(day.close[j], readyBy - day.service[j]);
    }
    latest[leg] = Math.min(day.leaveBy[i], arriveBy - day.legs.least(i, j == n ? day.end() : j));
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
          for (int i = 0; matters(k, free) && i < n; i++) {
            again |= fill(i, k, free, worth, scale);
          }
        }
      }
    }
  }

  /** Whether the van can be there so with the break behind or ahead. */
  private boolean matters(int k, int free) {
    if (!day.hasBreak) {
      return free == 1;
    }
    int start = day.from + k * cell;
    return free == 0
        ? start <= Math.max(day.breakTo(), day.breakFrom())
        : start + cell > day.breakFrom() + day.breakLength();
  }

  private boolean fill(int i, int k, int free, long[] worth, long scale) {
    int at = i * cells + k;
    boolean sameCell = false;
    if (k + 1 < cells && next[free][at] == NOBODY && best[free][at] >= RelaxedDay.NEVER) {
      best[free][at] = best[free][at + 1];
      other[free][at] = other[free][at + 1];
      next[free][at] = next[free][at + 1];
    }
    int start = day.from + k * cell;
    offerEnd(i, k, free, scale);
    boolean mayBreak = free == 0 && start <= day.breakTo();
    int rested = Math.max(start, day.breakFrom()) + day.breakLength();
    for (int j = 0; j < n; j++) {
      if (start > latest[i * (n + 1) + j]) {
        continue;
      }
      sameCell |= hop(i, k, free, start, j, free, false, worth, scale);
      if (mayBreak) {
        // Rested at the earliest whenever the break begins at its earliest: later cells say it.
        if (start + cell > day.breakFrom()) {
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
    int leg = i * (n + 1) + j;
    if (leave > latest[leg]) {
      return false;
    }
    int seconds = driveFrom(leg, leave);
    int arrive = leave + seconds;
    if (arrive > day.close[j]) {
      return false;
    }
    int begin = arrive;
    if (breakThere) {
      if (arrive > day.breakTo()) {
        return false;
      }
      begin = Math.max(arrive, day.breakFrom()) + day.breakLength();
    }
    int ready = Math.max(begin, day.open[j]) + day.service[j];
    if (ready > day.doneBy[j] || ready > day.latestEnd) {
      return false;
    }
    int to = (ready - day.from) >> cellBits;
    int there = j * cells + to;
    long rest = next[freeThen][there] == i ? other[freeThen][there] : best[freeThen][there];
    if (rest >= RelaxedDay.NEVER) {
      return false;
    }
    long value = rest - worth[j] + scale * (day.driveCost(seconds) + day.legs.price(i, j));
    return offer(free, i * cells + k, j, value) && to == k;
  }

  /** Least drive of a leg left within the cell that begins with a time. */
  private int driveFrom(int leg, int leave) {
    int first = drive[leg * slots + ((leave - day.from) >> SLOT_BITS)];
    int last = drive[leg * slots + ((leave + cell - 1 - day.from) >> SLOT_BITS)];
    return Math.min(first, last);
  }

  private void offerEnd(int i, int k, int free, long scale) {
    int leg = i * (n + 1) + n;
    int start = day.from + k * cell;
    if (start > latest[leg]) {
      return;
    }
    int seconds = driveFrom(leg, start);
    int endBy =
        day.hasBreak && free == 0 ? Math.min(day.latestEnd, day.breakFrom()) : day.latestEnd;
    if (start + seconds <= endBy) {
      long cost =
          day.driveCost(seconds) + day.legs.price(i, day.end()) + day.endCost(start + seconds);
      offer(free, i * cells + k, day.end(), scale * cost);
    }
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
    int free = taken || !day.hasBreak ? 1 : 0;
    int at = i * cells + ((a - day.from) >> cellBits);
    return before >= 0 && next[free][at] == before ? other[free][at] : best[free][at];
  }
}
