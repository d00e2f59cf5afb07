package dev.dogleg.plan.week;

import dev.dogleg.itinerary.DayChoice;
import dev.dogleg.itinerary.Prices;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.itinerary.WeekDay;
import dev.dogleg.itinerary.WeekRequest;
import dev.dogleg.travel.TravelTimes;
import java.util.Arrays;

/**
 * A second, independent solver for weeks of few bookings without windows, traffic, breaks and
 * terms: shortest rounds by Held and Karp 1962, then all ways to share the bookings out, day by day
 * over the set served so far. No LP, no labels, nothing of the planner.
 */
final class SubsetSolver {
  private static final long NEVER = Long.MAX_VALUE / 4;

  private final int n;
  private final WeekRequest week;

  /**
   * What it finds.
   *
   * @param leftOut fewest counted bookings left out
   * @param cost least cost with so many
   */
  record Best(int leftOut, long cost) {}

  private SubsetSolver(WeekRequest week) {
    this.week = week;
    n = week.bookings().size();
  }

  static Best best(WeekRequest week) {
    return new SubsetSolver(week).solve();
  }

  private Best solve() {
    long[] served = new long[1 << n];
    Arrays.fill(served, NEVER);
    served[0] = 0;
    for (int day = 0; day < week.days().size(); day++) {
      long[] round = rounds(day);
      long[] next = served.clone();
      for (int set = 1; set < 1 << n; set++) {
        for (int today = set; today != 0; today = today - 1 & set) {
          if (round[today] < NEVER && served[set ^ today] < NEVER) {
            next[set] = Math.min(next[set], served[set ^ today] + round[today]);
          }
        }
      }
      served = next;
    }
    Best best = new Best(Integer.MAX_VALUE, 0);
    for (int set = 0; set < 1 << n; set++) {
      if (served[set] < NEVER) {
        int left = 0;
        long cost = served[set];
        for (int b = 0; b < n; b++) {
          if ((set >>> b & 1) == 0) {
            left += week.bookings().get(b).counted() ? 1 : 0;
            cost += week.bookings().get(b).leftOutSixtieths();
          }
        }
        if (left < best.leftOut || (left == best.leftOut && cost < best.cost)) {
          best = new Best(left, cost);
        }
      }
    }
    return best;
  }

  /** Cost of the best round of each set on one day, extra prices included. */
  private long[] rounds(int dayNumber) {
    WeekDay day = week.days().get(dayNumber);
    int[] place = new int[n];
    long[] extra = new long[n];
    int[] service = new int[n];
    int allowed = 0;
    for (int b = 0; b < n; b++) {
      WeekBooking booking = week.bookings().get(b);
      for (DayChoice choice : booking.choices()) {
        if (choice.day() == dayNumber) {
          Visit visit = choice.visit();
          place[b] = visit.place();
          service[b] = visit.serviceSeconds();
          extra[b] = choice.extraSixtieths();
          allowed |= 1 << b;
        }
      }
    }
    long[] round = new long[1 << n];
    Arrays.fill(round, NEVER);
    // Seconds and cost of a round rise together only where kilometres are free; so they are.
    int[][] seconds = new int[1 << n][];
    int shift = day.shift().latestEndSeconds() - day.shift().hours().fromSeconds();
    for (int set = 1; set < 1 << n; set++) {
      if ((set & ~allowed) != 0) {
        continue;
      }
      seconds[set] = new int[n];
      int shortest = Integer.MAX_VALUE;
      int busy = 0;
      long prices = 0;
      for (int last = 0; last < n; last++) {
        seconds[set][last] = Integer.MAX_VALUE / 2;
        if ((set >>> last & 1) != 0) {
          busy += service[last];
          prices += extra[last];
          seconds[set][last] = reach(day.travel(), day, place, seconds, set, last);
          int home = seconds[set][last] + drive(day.travel(), place[last], day.shift().endPlace());
          shortest = Math.min(shortest, home);
        }
      }
      if (busy + shortest <= shift) {
        round[set] = (long) shortest * Prices.SIXTIETHS_PER_DRIVE_SECOND + prices;
      }
    }
    return round;
  }

  private int reach(
      TravelTimes travel, WeekDay day, int[] place, int[][] seconds, int set, int last) {
    int before = set & ~(1 << last);
    if (before == 0) {
      return drive(travel, day.shift().startPlace(), place[last]);
    }
    int least = Integer.MAX_VALUE / 2;
    for (int i = 0; i < n; i++) {
      if ((before >>> i & 1) != 0) {
        least = Math.min(least, seconds[before][i] + drive(travel, place[i], place[last]));
      }
    }
    return least;
  }

  private static int drive(TravelTimes travel, int i, int j) {
    return travel.driveSeconds(i, j, 8 * 3600);
  }
}
