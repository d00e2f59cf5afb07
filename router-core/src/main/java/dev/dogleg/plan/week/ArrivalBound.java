package dev.dogleg.plan.week;

import java.util.Arrays;

/**
 * Least reduced cost with which a door can be ready to be left by a second of the day, whatever was
 * served before, even twice.
 *
 * <p>Maintainers: one pass over cells of time; in each cell and at each door stand the earliest
 * second and the least amount met there, which together are a bound for all that fall into it.
 * Cells are no wider than the shortest way on, so that every way leads to a later one.
 */
final class ArrivalBound {
  private static final int WIDEST = 240;
  private static final int NARROWEST = 20;

  private final PricedDay priced;
  private final int n;
  private final int width;
  private final int cells;
  private final int from;
  private final long[] amount;
  private final int[] time;

  ArrivalBound(PricedDay priced) {
    this.priced = priced;
    RelaxedDay day = priced.day();
    n = day.n;
    from = day.from;
    width = Math.min(WIDEST, shortestWay(day));
    cells = width < NARROWEST ? 0 : (day.latestEnd - from) / width + 2;
    amount = new long[2 * n * cells];
    time = new int[2 * n * cells];
    Arrays.fill(amount, PricedDay.NEVER);
    Arrays.fill(time, Integer.MAX_VALUE);
    if (cells > 0) {
      fill(day);
    }
  }

  private static int shortestWay(RelaxedDay day) {
    int shortest = WIDEST;
    for (int j = 0; j < day.n; j++) {
      for (int i = 0; i <= day.n; i++) {
        if (i != j && day.legs.spanEnds(i, j) != null) {
          shortest = Math.min(shortest, day.service[j] + day.legs.least(i, j));
        }
      }
    }
    return shortest;
  }

  private void fill(RelaxedDay day) {
    for (int j = 0; j < n; j++) {
      if (priced.reaches(day.start(), j)) {
        push(day, day.start(), from, 0, 0, 0, j);
      }
    }
    for (int cell = 0; cell < cells; cell++) {
      for (int taken = 0; taken < 2; taken++) {
        for (int i = 0; i < n; i++) {
          int at = (taken * n + i) * cells + cell;
          if (amount[at] < PricedDay.NEVER) {
            for (int j = 0; j < n; j++) {
              if (j != i && !day.first[j] && priced.reaches(i, j)) {
                push(day, i, time[at], amount[at], taken, 0, j);
                if (taken == 0 && day.hasBreak && time[at] <= day.breakTo()) {
                  push(day, i, time[at], amount[at], 1, day.breakLength(), j);
                }
              }
            }
          }
        }
      }
    }
    for (int row = 0; row < 2 * n; row++) {
      for (int cell = 1; cell < cells; cell++) {
        int at = row * cells + cell;
        amount[at] = Math.min(amount[at], amount[at - 1]);
      }
    }
  }

  private void push(RelaxedDay day, int i, int leave, long before, int taken, int pause, int j) {
    int arrive = leave + day.legs.least(i, j);
    if (arrive > day.close[j]) {
      return;
    }
    // The break is over earliest where it is taken at the door that is reached.
    int there = pause > 0 ? Math.max(arrive, day.breakFrom()) + pause : arrive;
    int done = Math.max(day.open[j], there) + day.service[j];
    if (done > day.doneBy[j] || done + day.home[j] > day.latestEnd) {
      return;
    }
    long after = before + priced.leg(i, j, leave, day.latestEnd) - priced.reward(j);
    int at = (taken * n + j) * cells + (done - from) / width;
    amount[at] = Math.min(amount[at], after);
    time[at] = Math.min(time[at], done);
  }

  /** {@return no partial day ready at a door by a second has a smaller reduced cost} */
  long least(int j, int by, boolean taken) {
    if (cells == 0) {
      return -PricedDay.NEVER;
    }
    int cell = Math.min(cells - 1, (by - from) / width);
    return by < from ? PricedDay.NEVER : amount[((taken ? n : 0) + j) * cells + cell];
  }
}
