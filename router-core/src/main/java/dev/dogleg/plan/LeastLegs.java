package dev.dogleg.plan;

import dev.dogleg.schedule.DayModel;

/**
 * Least price and duration of each leg over spans of the day.
 *
 * <p>Where tanks are planned, a leg between two visits is at least the better of the straight one
 * and one by way of a water stop. A leg that a must rule forbids is none.
 *
 * <p>Maintainers: the day is cut into {@link #CELLS} equal cells; for each leg and each span of
 * cells the least duration is kept, so a lookup is one index. Built once per search.
 */
final class LeastLegs {
  private static final int CELLS = 16;

  /** A duration that no day holds. */
  static final int NO_ROAD = Integer.MAX_VALUE / 4;

  private final int nodes;
  private final int from;
  private final int width;
  private final long drivePrice;
  private final long[] legPrice;
  private final int[] seconds;
  private final int[] least;
  private final ViaWater water;

  LeastLegs(DayModel day) {
    nodes = day.size() + 2;
    from = day.from();
    width = Math.max(1, (Math.max(0, day.latestEnd() - from) + CELLS) / CELLS);
    drivePrice = day.drivePrice();
    legPrice = new long[nodes * nodes];
    seconds = new int[nodes * nodes * CELLS * CELLS];
    least = new int[nodes * nodes];
    for (int i = 0; i < nodes; i++) {
      for (int j = 0; j < nodes; j++) {
        int leg = i * nodes + j;
        boolean never =
            i == j
                || i == day.end()
                || j == day.start()
                || !day.reaches(i, j)
                || !day.steps().leg(i, j)
                || (j < day.size() && day.first(j) && i != day.start());
        if (never) {
          least[leg] = NO_ROAD;
          legPrice[leg] = DayValue.NONE;
        } else {
          legPrice[leg] = day.legPrice(i, j);
          fill(day, i, j, leg);
          least[leg] = seconds[leg * CELLS * CELLS + CELLS - 1];
        }
      }
    }
    water = day.steps().mostStops() > 0 ? new ViaWater(day) : null;
  }

  private void fill(DayModel day, int i, int j, int leg) {
    int base = leg * CELLS * CELLS;
    boolean steady = day.steadyUntil(i, j, from) >= day.latestEnd();
    int always = steady ? day.drive(i, j, from) : 0;
    for (int lo = 0; lo < CELLS; lo++) {
      int start = from + lo * width;
      int running = steady ? always : day.leastDrive(i, j, start, start + width - 1);
      seconds[base + lo * CELLS + lo] = running;
    }
    for (int lo = 0; lo < CELLS; lo++) {
      int running = seconds[base + lo * CELLS + lo];
      for (int hi = lo + 1; hi < CELLS; hi++) {
        running = Math.min(running, seconds[base + hi * CELLS + hi]);
        seconds[base + lo * CELLS + hi] = running;
      }
    }
  }

  private int cell(int time) {
    return Math.max(0, Math.min(CELLS - 1, (time - from) / width));
  }

  /** {@return least price of a leg; {@link DayValue#NONE} where there is none} */
  long price(int i, int j) {
    int leg = i * nodes + j;
    long straight = least[leg] == NO_ROAD ? DayValue.NONE : legPrice[leg] + drivePrice * least[leg];
    return water == null ? straight : Math.min(straight, water.price(i, j));
  }

  /**
   * {@return least price of a leg left within a span; {@link DayValue#NONE} where there is none}
   */
  long price(int i, int j, int earliest, int latest) {
    int leg = i * nodes + j;
    long straight =
        least[leg] == NO_ROAD
            ? DayValue.NONE
            : legPrice[leg]
                + drivePrice * seconds[leg * CELLS * CELLS + cell(earliest) * CELLS + cell(latest)];
    return water == null ? straight : Math.min(straight, water.price(i, j));
  }

  /** {@return least duration of a leg left within a span; {@link #NO_ROAD} where there is none} */
  int seconds(int i, int j, int earliest, int latest) {
    int leg = i * nodes + j;
    int straight =
        least[leg] == NO_ROAD
            ? NO_ROAD
            : seconds[leg * CELLS * CELLS + cell(earliest) * CELLS + cell(latest)];
    return water == null ? straight : Math.min(straight, water.seconds(i, j));
  }

  /** {@return least duration of a leg; {@link #NO_ROAD} where there is none} */
  int seconds(int i, int j) {
    int straight = least[i * nodes + j];
    return water == null ? straight : Math.min(straight, water.seconds(i, j));
  }

  /** {@return least duration of a leg left about a time; {@link #NO_ROAD} where there is none} */
  int seconds(int i, int j, int about) {
    return seconds(i, j, about, about);
  }
}
