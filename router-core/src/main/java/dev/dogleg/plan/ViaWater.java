package dev.dogleg.plan;

import dev.dogleg.schedule.DayModel;
import java.util.Arrays;

/** Least price and duration from visit to visit by way of a water stop, whatever the hour. */
final class ViaWater {
  private final int nodes;
  private final long[] price;
  private final int[] seconds;

  ViaWater(DayModel day) {
    nodes = day.size() + 2;
    price = new long[nodes * nodes];
    seconds = new int[nodes * nodes];
    Arrays.fill(price, DayValue.NONE);
    Arrays.fill(seconds, LeastLegs.NO_ROAD);
    for (int i = 0; i < day.size(); i++) {
      for (int j = 0; j < day.size(); j++) {
        if (i != j && day.steps().leg(i, j) && !day.first(j)) {
          fill(day, i, j);
        }
      }
    }
  }

  private void fill(DayModel day, int i, int j) {
    int leg = i * nodes + j;
    for (int w = 0; w < day.waterPlaces(); w++) {
      int node = day.waterNode(w);
      if (day.reaches(i, node) && day.reaches(node, j)) {
        int drive = day.leastDrive(i, node) + day.leastDrive(node, j);
        seconds[leg] = Math.min(seconds[leg], drive + day.service(node));
        long metres = day.legPrice(i, node) + day.legPrice(node, j);
        price[leg] = Math.min(price[leg], metres + day.drivePrice() * drive);
      }
    }
  }

  /** {@return least price; {@link DayValue#NONE} where there is no way} */
  long price(int i, int j) {
    return price[i * nodes + j];
  }

  /** {@return least seconds, the stop's included; {@link LeastLegs#NO_ROAD} where there is none} */
  int seconds(int i, int j) {
    return seconds[i * nodes + j];
  }
}
