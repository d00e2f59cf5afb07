package dev.dogleg.plan.week;

import dev.dogleg.travel.TravelTimes;
import java.util.Arrays;

/**
 * The legs of one day with durations rounded down to a few steady spans.
 *
 * <p>Maintainers: the day is cut into cells of {@value #CELL} seconds; in each the duration is the
 * least over its leaving times, and equal neighbours are one span. Where the way by a water place
 * is shorter than the direct one (only in matrices that break the triangle inequality), it counts.
 * Nodes 0..n-1 are visits, n the start place, n+1 the end place.
 */
final class RelaxedLegs {
  private static final int CELL = 900;
  private static final int NONE = Integer.MAX_VALUE;

  private final int nodes;
  private final int[][] spanEnd;
  private final int[][] spanSeconds;
  private final int[] least;
  private final long[] price;

  RelaxedLegs(
      TravelTimes travel,
      int[] place,
      int[] water,
      int from,
      int latestEnd,
      long kilometreSeconds) {
    nodes = place.length;
    spanEnd = new int[nodes * nodes][];
    spanSeconds = new int[nodes * nodes][];
    least = new int[nodes * nodes];
    price = new long[nodes * nodes];
    int cells = Math.max(0, latestEnd - from) / CELL + 1;
    int[] ends = new int[cells];
    int[] seconds = new int[cells];
    for (int i = 0; i < nodes; i++) {
      for (int j = 0; j < nodes; j++) {
        boolean direct = travel.reaches(place[i], place[j]);
        int by = i < nodes - 2 && j < nodes - 2 ? leastBy(travel, place[i], place[j], water) : NONE;
        if (i == j || (!direct && by == NONE)) {
          continue;
        }
        int count = 0;
        int lowest = Integer.MAX_VALUE;
        for (int cell = 0; cell < cells; cell++) {
          int start = from + cell * CELL;
          int end = start + CELL - 1;
          int drive = direct ? leastOver(travel, place[i], place[j], start, end) : by;
          drive = Math.min(drive, by);
          lowest = Math.min(lowest, drive);
          if (count > 0 && seconds[count - 1] == drive) {
            ends[count - 1] = end;
          } else {
            ends[count] = end;
            seconds[count++] = drive;
          }
        }
        int leg = i * nodes + j;
        spanEnd[leg] = Arrays.copyOf(ends, count);
        spanEnd[leg][count - 1] = Integer.MAX_VALUE;
        spanSeconds[leg] = Arrays.copyOf(seconds, count);
        least[leg] = lowest;
        price[leg] = direct ? price(travel, place[i], place[j], kilometreSeconds) : Long.MAX_VALUE;
        for (int w = 0; w < water.length && by != NONE; w++) {
          if (travel.reaches(place[i], water[w]) && travel.reaches(water[w], place[j])) {
            long there = price(travel, place[i], water[w], kilometreSeconds);
            long back = price(travel, water[w], place[j], kilometreSeconds);
            price[leg] = Math.min(price[leg], there + back);
          }
        }
      }
    }
  }

  private static long price(TravelTimes travel, int i, int j, long kilometreSeconds) {
    return (travel.lengthMetres(i, j) * kilometreSeconds * 60 + 500) / 1000;
  }

  /** Least duration by way of a place where water may be taken. */
  private static int leastBy(TravelTimes travel, int i, int j, int[] water) {
    int least = NONE;
    for (int w : water) {
      if (travel.reaches(i, w) && travel.reaches(w, j)) {
        least = Math.min(least, travel.leastDriveSeconds(i, w) + travel.leastDriveSeconds(w, j));
      }
    }
    return least;
  }

  private static int leastOver(TravelTimes travel, int i, int j, int start, int end) {
    return travel.steadyUntil(i, j, start) >= end
        ? travel.driveSeconds(i, j, start)
        : travel.leastDriveSeconds(i, j, start, end);
  }

  /** {@return last leaving times of the spans, the last of which never ends; null: no road} */
  int[] spanEnds(int i, int j) {
    return spanEnd[i * nodes + j];
  }

  /** {@return durations of the spans, never above the true one} */
  int[] spanSeconds(int i, int j) {
    return spanSeconds[i * nodes + j];
  }

  /** {@return least duration over the day; only where a road leads} */
  int least(int i, int j) {
    return least[i * nodes + j];
  }

  /** {@return price of the kilometres} */
  long price(int i, int j) {
    return price[i * nodes + j];
  }
}
