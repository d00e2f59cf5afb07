package dev.dogleg.plan.week;

import dev.dogleg.schedule.StepTerms;
import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * Another floor of what the rest of a day is worth: no visit is made twice, but how they lie to
 * each other is forgotten. What is left of the day is filled with the visits that pay most a
 * second, the last of them in part (Dantzig 1957, Operations Research 5:266-277).
 *
 * <p>Maintainers: a visit takes its service and the shortest way that leads to it from another
 * visit; it earns its worth less the cheapest such way. It is tightest where drives are short and
 * days full, just where {@link RestFloor} goes in circles.
 */
final class RestFill {
  private final RelaxedDay day;
  private final int[] seconds;
  private final int[] shortest;
  private final long[] wayCost;
  private final long[] gain;
  private final int[] byGain;
  private int paying;
  private long scale;
  private int leastHome = Integer.MAX_VALUE / 4;
  private long leastHomeCost = RelaxedDay.NEVER;

  /** An empty one; {@link #fill} before use. */
  RestFill(RelaxedDay day, StepTerms terms) {
    this.day = day;
    int n = day.n;
    seconds = new int[n];
    shortest = new int[n];
    wayCost = new long[n];
    gain = new long[n];
    byGain = new int[n];
    for (int j = 0; j < n; j++) {
      int way = Integer.MAX_VALUE / 4;
      int served = Integer.MAX_VALUE / 4;
      long cost = RelaxedDay.NEVER;
      for (int i = 0; i < n; i++) {
        if (i != j && !day.first[j] && day.legs.reaches(i, j) && terms.leg(i, j)) {
          int least = day.legs.least(i, j);
          way = Math.min(way, least);
          int service = Math.max(day.service[j], terms.leastService(i, j));
          served = Math.min(served, least + service);
          long toll = day.legs.price(i, j) + terms.leastPrice(i, j);
          cost = Math.min(cost, day.driveCost(least) + toll);
        }
      }
      shortest[j] = way;
      seconds[j] = served;
      wayCost[j] = cost;
      if (day.legs.reaches(j, day.end())) {
        int home = day.legs.least(j, day.end());
        leastHome = Math.min(leastHome, home);
        leastHomeCost = Math.min(leastHomeCost, day.driveCost(home) + day.legs.price(j, day.end()));
      }
    }
  }

  /**
   * Takes prices.
   *
   * @param worth for each visit what serving it is worth, in parts
   * @param costScale parts of a sixtieth; 0: costs do not count
   */
  void fill(long[] worth, long costScale) {
    scale = costScale;
    for (int j = 0; j < gain.length; j++) {
      gain[j] = wayCost[j] >= RelaxedDay.NEVER ? -1 : worth[j] - costScale * wayCost[j];
    }
    int[] order =
        IntStream.range(0, gain.length)
            .filter(j -> gain[j] > 0)
            .boxed()
            .sorted(
                Comparator.comparingDouble((Integer j) -> -(double) gain[j] / (seconds[j] + 1))
                    .thenComparingInt(j -> j))
            .mapToInt(Integer::intValue)
            .toArray();
    paying = order.length;
    System.arraycopy(order, 0, byGain, 0, paying);
  }

  /**
   * Least value of the rest of a day.
   *
   * @param rows words of sets of visits
   * @param at first word of the set of those that are served already, or some of them
   * @param a ready to leave the last one at this second at the earliest
   * @param taken whether the break is behind
   * @return parts
   */
  long of(long[] rows, int at, int a, boolean taken) {
    long room = (long) day.latestEnd - a - leastHome;
    if (day.hasBreak && !taken) {
      room = Math.max(room - day.breakLength(), (long) day.breakFrom() - a - leastHome);
    }
    long value = scale * leastHomeCost;
    for (int k = 0; k < paying && room > 0; k++) {
      int j = byGain[k];
      boolean served = (rows[at + (j >>> 6)] >>> j & 1) != 0;
      if (served || a + shortest[j] > day.close[j]) {
        continue;
      }
      if (seconds[j] <= room) {
        value -= gain[j];
        room -= seconds[j];
      } else {
        // In part, rounded against us.
        value -= (long) Math.ceil((double) gain[j] / seconds[j] * room) + 1;
        return value;
      }
    }
    return value;
  }
}
