package dev.dogleg.plan;

import dev.dogleg.schedule.DayModel;
import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * How many booked visits must still be left out for want of time, and what the others cost at
 * least.
 *
 * <p>Maintainers: each visit needs its service and its shortest leg in; as many as fit, shortest
 * needs first, is more than any order can serve. For days with more visits than room.
 */
final class CountBound {
  private final DayModel day;
  private final int[] byNeed;
  private final int[] need;
  private final long[] leg;
  private int homeSeconds = LeastLegs.NO_ROAD;
  private long homePrice = DayValue.NONE;

  CountBound(DayModel day, LeastLegs legs) {
    this.day = day;
    int n = day.size();
    need = new int[n];
    leg = new long[n];
    for (int j = 0; j < n; j++) {
      int shortest = LeastLegs.NO_ROAD;
      leg[j] = DayValue.BOOKED / 1024;
      for (int i = 0; i <= n; i++) {
        shortest = Math.min(shortest, legs.seconds(i, j));
        leg[j] = Math.min(leg[j], legs.price(i, j));
      }
      need[j] = day.service(j) + shortest;
      homeSeconds = Math.min(homeSeconds, legs.seconds(j, day.end()));
      homePrice = Math.min(homePrice, legs.price(j, day.end()));
    }
    byNeed =
        IntStream.range(0, n)
            .filter(j -> day.visit(j).booked())
            .boxed()
            .sorted(Comparator.comparing(j -> need[j]))
            .mapToInt(Integer::intValue)
            .toArray();
  }

  /** {@return more visits than this, booked or not, no day can serve; 1 or more} */
  int mostServed() {
    int[] needs = need.clone();
    Arrays.sort(needs);
    int free = fit(needs, day.hasBreak() ? day.breakFrom() : day.latestEnd());
    int paused = fit(needs, day.latestEnd() - day.breakLength());
    return Math.max(1, Math.max(free, paused));
  }

  private int fit(int[] needs, int endBy) {
    long end = (long) day.from() + homeSeconds;
    int fit = 0;
    while (fit < needs.length && end + needs[fit] <= Math.min(endBy, day.latestEnd())) {
      end += needs[fit++];
    }
    return fit;
  }

  /** {@return packed value that no completion is below} */
  long after(VisitSets sets, int set, boolean taken, int earliest) {
    if (!day.hasBreak() || taken) {
      return least(sets, set, earliest, day.latestEnd());
    }
    long unbroken = least(sets, set, earliest, Math.min(day.latestEnd(), day.breakFrom()));
    return Math.min(unbroken, least(sets, set, earliest + day.breakLength(), day.latestEnd()));
  }

  private long least(VisitSets sets, int set, int earliest, int endBy) {
    long end = (long) earliest + homeSeconds;
    int fit = 0;
    int open = 0;
    long cheapest = DayValue.BOOKED / 1024;
    for (int j : byNeed) {
      if (!sets.holds(set, j)) {
        open++;
        cheapest = Math.min(cheapest, leg[j]);
        if (end + need[j] <= endBy) {
          end += need[j];
          fit++;
        }
      }
    }
    long cost = homePrice + (fit == 0 ? 0 : fit * cheapest);
    return DayValue.BOOKED * (open - fit)
        + cost
        + day.endCost((int) Math.min(end, day.latestEnd()));
  }
}
