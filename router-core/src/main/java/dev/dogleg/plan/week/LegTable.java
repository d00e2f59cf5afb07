package dev.dogleg.plan.week;

import dev.dogleg.travel.TravelTimes;

/**
 * Durations of the legs between places, looked up at a few leaving times and straight in between:
 * near the truth, not a bound. One table serves every van-day with the same travel times; a leg is
 * tabled when it is first asked for. One thread.
 */
final class LegTable {
  /** Leaving times are looked up every 2^9 = 512 seconds. */
  private static final int CELL_BITS = 9;

  private static final int CELL = 1 << CELL_BITS;

  private final TravelTimes travel;
  private final int from;
  private final int cells;
  private final int[][] seconds;

  /**
   * A table.
   *
   * @param travel travel times
   * @param from first leaving time
   * @param to last leaving time; earlier and later ones are taken for these two
   */
  LegTable(TravelTimes travel, int from, int to) {
    this.travel = travel;
    this.from = from;
    cells = (Math.max(0, to - from) >>> CELL_BITS) + 1;
    seconds = new int[travel.size() * travel.size()][];
  }

  /** {@return durations of a leg, for {@link #drive}; null where no road leads} */
  int[] leg(int i, int j) {
    int pair = i * travel.size() + j;
    if (seconds[pair] == null && travel.reaches(i, j)) {
      seconds[pair] = look(i, j);
    }
    return seconds[pair];
  }

  private int[] look(int i, int j) {
    int[] found = new int[cells + 1];
    boolean steady = true;
    for (int cell = 0; cell <= cells; cell++) {
      found[cell] = travel.driveSeconds(i, j, from + cell * CELL);
      steady &= found[cell] == found[0];
    }
    return steady ? new int[] {found[0]} : found;
  }

  /** {@return seconds of a leg left at a time} */
  int drive(int[] leg, int leave) {
    if (leg.length == 1) {
      return leg[0];
    }
    int after = leave - from;
    int cell = after >> CELL_BITS;
    if (cell < 0) {
      return leg[0];
    }
    if (cell >= cells) {
      return leg[cells];
    }
    return leg[cell] + (((leg[cell + 1] - leg[cell]) * (after & (CELL - 1))) >> CELL_BITS);
  }

  /** {@return about the last leaving time of a leg that arrives by a time} */
  int leaveFor(int[] leg, int arrive) {
    int leave = arrive - drive(leg, arrive);
    for (int k = 0; k < 2 && leg.length > 1; k++) {
      leave = arrive - drive(leg, leave);
    }
    return leave;
  }
}
