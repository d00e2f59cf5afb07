package dev.dogleg.plan.week;

import dev.dogleg.schedule.DayModel;
import java.util.stream.IntStream;

/**
 * At which places water may be had on the way from a node to a visit, but for those that another
 * one beats: sooner there and not dearer, or cheaper and not later, by least drives. One thread.
 */
final class WaterWays {
  private static final int[] NONE = {};

  private final DayModel day;
  private final int n;
  private final int nodes;
  private final int[][] wells;
  private final long[] least;

  /**
   * Ways.
   *
   * @param day a day
   * @param n its visits 0..n-1; n and n + 1 are its start and end, water places come after
   * @param places number of water places
   */
  WaterWays(DayModel day, int n, int places) {
    this.day = day;
    this.n = n;
    nodes = n + 2 + places;
    wells = new int[nodes * nodes][];
    least = new long[nodes * nodes];
  }

  /** {@return water places worth looking at; none on the way home} */
  int[] wells(int i, int j) {
    int pair = i * nodes + j;
    if (wells[pair] == null) {
      wells[pair] =
          j >= n
              ? NONE
              : IntStream.range(n + 2, nodes)
                  .filter(w -> leads(i, j, w))
                  .filter(w -> IntStream.range(n + 2, nodes).noneMatch(v -> beats(i, j, v, w)))
                  .toArray();
      least[pair] = RelaxedDay.NEVER;
      for (int w : wells[pair]) {
        least[pair] = Math.min(least[pair], cost(i, j, w));
      }
    }
    return wells[pair];
  }

  /** {@return least price of both legs, driving and kilometres; NEVER where there is no place} */
  long least(int i, int j) {
    wells(i, j);
    return least[i * nodes + j];
  }

  private boolean leads(int i, int j, int well) {
    return day.reaches(i, well) && day.reaches(well, j);
  }

  private boolean beats(int i, int j, int well, int other) {
    if (well == other || !leads(i, j, well)) {
      return false;
    }
    int seconds = seconds(i, j, well);
    int otherSeconds = seconds(i, j, other);
    long cost = cost(i, j, well);
    long otherCost = cost(i, j, other);
    return seconds <= otherSeconds
        && cost <= otherCost
        && (seconds < otherSeconds || cost < otherCost || well < other);
  }

  private int seconds(int i, int j, int well) {
    return day.leastDrive(i, well) + day.service(well) + day.leastDrive(well, j);
  }

  private long cost(int i, int j, int well) {
    return day.drivePrice() * (day.leastDrive(i, well) + day.leastDrive(well, j))
        + day.legPrice(i, well)
        + day.legPrice(well, j);
  }
}
