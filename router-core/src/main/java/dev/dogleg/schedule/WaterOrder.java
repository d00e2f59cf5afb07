package dev.dogleg.schedule;

import java.util.Arrays;

/**
 * Finds the water stops of an order of visits: the cheapest day, then the fewest stops, then the
 * first stop earliest in the order and at the place of least number, then the next stop likewise.
 *
 * <p>Maintainers: tried in just that order, so the first of equals is the one. A day is given up
 * where the tanks do not last, or its legs alone cost too much. Mutable, one thread.
 */
final class WaterOrder {
  /** Told of each order of stops that the tanks allow. */
  interface Trial {
    /**
     * Times it.
     *
     * @param stops visits, and water stops from node {@code n + 2} on
     * @param limit a cost of this or more is of no interest
     * @return its least cost, {@link OrderChain#IMPOSSIBLE} where it is not below the limit
     */
    long cost(int[] stops, long limit);
  }

  private final DayModel day;
  private final StepTerms terms;
  private final Trial trial;
  private int[] order = new int[0];
  private long[] rest = new long[0];
  private int[] stops = new int[0];
  private int[] best;
  private long bestCost;

  WaterOrder(DayModel day, Trial trial) {
    this.day = day;
    this.terms = day.steps();
    this.trial = trial;
  }

  /**
   * The least cost of an order below a limit; {@link OrderChain#IMPOSSIBLE} where there is none.
   */
  long cheapest(int[] visits, long limit) {
    order = visits;
    best = null;
    bestCost = limit;
    int most = Math.min(terms.mostStops(), visits.length - 1);
    stops = new int[visits.length + Math.max(0, most)];
    rest = new long[visits.length + 1];
    for (int k = visits.length - 1; k > 0; k--) {
      rest[k] = rest[k + 1] + leastWay(visits[k - 1], visits[k]);
    }
    for (int count = 0; count <= most; count++) {
      next(0, 0, count, 0, 0, 0);
    }
    return best == null ? OrderChain.IMPOSSIBLE : bestCost;
  }

  /** {@return the stops of the cheapest day found last; null where there was none} */
  int[] stops() {
    return best;
  }

  private void next(int k, int length, int left, int fresh, int grey, long spent) {
    if (k == order.length) {
      if (left == 0) {
        int[] found = Arrays.copyOf(stops, length);
        long cost = trial.cost(found, bestCost);
        if (cost < bestCost) {
          bestCost = cost;
          best = found;
        }
      }
      return;
    }
    if (left > order.length - k || spent + rest[Math.max(1, k)] >= bestCost) {
      return;
    }
    int visit = order[k];
    if (k > 0 && left > 0 && terms.lasts(terms.fresh(visit), terms.grey(visit))) {
      for (int w = 0; w < day.waterPlaces(); w++) {
        int water = day.waterNode(w);
        if (day.reaches(order[k - 1], water) && day.reaches(water, visit)) {
          stops[length] = water;
          stops[length + 1] = visit;
          long there = spent + leg(order[k - 1], water) + leg(water, visit);
          next(k + 1, length + 2, left - 1, terms.fresh(visit), terms.grey(visit), there);
        }
      }
    }
    int used = fresh + terms.fresh(visit);
    int made = grey + terms.grey(visit);
    if (terms.lasts(used, made) && (k == 0 || day.reaches(order[k - 1], visit))) {
      stops[length] = visit;
      next(k + 1, length + 1, left, used, made, k == 0 ? 0 : spent + leg(order[k - 1], visit));
    }
  }

  private long leg(int i, int j) {
    return day.legPrice(i, j) + day.drivePrice() * day.leastDrive(i, j);
  }

  private long leastWay(int i, int j) {
    long least = day.reaches(i, j) ? leg(i, j) : OrderChain.IMPOSSIBLE / 1024;
    for (int w = 0; w < day.waterPlaces(); w++) {
      int water = day.waterNode(w);
      if (day.reaches(i, water) && day.reaches(water, j)) {
        least = Math.min(least, leg(i, water) + leg(water, j));
      }
    }
    return least;
  }
}
