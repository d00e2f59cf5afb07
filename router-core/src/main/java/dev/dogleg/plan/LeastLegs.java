package dev.dogleg.plan;

import dev.dogleg.schedule.DayModel;

/** Least price of each leg over the day: drive and kilometres. */
final class LeastLegs {
  private final int nodes;
  private final long[] price;
  private final int[] seconds;

  LeastLegs(DayModel day) {
    nodes = day.size() + 2;
    price = new long[nodes * nodes];
    seconds = new int[nodes * nodes];
    for (int i = 0; i < nodes; i++) {
      for (int j = 0; j < nodes; j++) {
        int leg = i * nodes + j;
        boolean never =
            i == j
                || i == day.end()
                || j == day.start()
                || !day.reaches(i, j)
                || (j < day.size() && day.first(j) && i != day.start());
        if (never) {
          price[leg] = DayValue.NONE;
          seconds[leg] = Integer.MAX_VALUE / 2;
        } else {
          seconds[leg] = day.leastDrive(i, j, day.from(), Math.max(day.from(), day.latestEnd()));
          price[leg] = day.legPrice(i, j) + day.drivePrice() * seconds[leg];
        }
      }
    }
  }

  /** {@return least price of a leg; {@link DayValue#NONE} where there is none} */
  long of(int i, int j) {
    return price[i * nodes + j];
  }

  /** {@return least duration of a leg; half the largest number where there is none} */
  int seconds(int i, int j) {
    return seconds[i * nodes + j];
  }
}
