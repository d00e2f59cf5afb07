package dev.dogleg.plan;

import dev.dogleg.arrival.PromiseOdds;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.schedule.DayModel;
import dev.dogleg.schedule.DayTiming;
import dev.dogleg.schedule.OrderCost;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The best day of a set of visits where promises have a price: its cost and the price of its odds
 * together.
 *
 * <p>Maintainers: odds are not additive along a day, so they are added to finished orders only.
 * Every order whose cost alone lies below the best sum so far is looked at, depth first, cheapest
 * leg first, cut off by the least legs still to drive (Held and Karp 1962); odds are 0 or more, so
 * no other order can be better. Each order has its stated timing ({@code docs/TIMING.md}). One
 * thread.
 */
public final class PromiseDays {
  /** Orders of one set whose cost is reckoned, after which its best is not proven. */
  private static final int MOST_ORDERS = 4_000;

  private final DayModel day;
  private final SetDays sets;
  private final OrderCost costs;
  private final DayTiming timing;
  private final PromiseOdds odds;
  private final LeastLegs legs;

  /**
   * A best day.
   *
   * @param costSixtieths its cost without odds
   * @param oddsSixtieths the price of its odds
   * @param leastSixtieths no order of the set has a smaller sum of both
   * @param cheapestSixtieths no order of the set costs less without odds
   * @param stops its events
   */
  public record Best(
      long costSixtieths,
      long oddsSixtieths,
      long leastSixtieths,
      long cheapestSixtieths,
      List<PlannedStop> stops) {
    /** Copies the list. */
    public Best {
      stops = List.copyOf(stops);
    }

    /** {@return cost and odds together} */
    public long sumSixtieths() {
      return costSixtieths + oddsSixtieths;
    }
  }

  /**
   * Days of one groomer on one date.
   *
   * @param request all visits that may be asked for; its terms price odds
   * @param day the same as a model
   */
  public PromiseDays(DayRequest request, DayModel day) {
    this.day = day;
    sets = new SetDays(day);
    costs = new OrderCost(day);
    timing = new DayTiming(day);
    legs = new LeastLegs(day);
    odds = new PromiseOdds(request);
  }

  /**
   * The best day of a set.
   *
   * @param visits the visits that must be served, rising, at most {@link SetDays#MOST}
   * @param effort limit in steps of the day engine
   * @return the day; empty where none serves them all, or none was found within the effort
   */
  public Optional<Best> best(int[] visits, long effort) {
    Optional<SetDays.Best> cheapest = sets.best(visits, effort);
    if (cheapest.isEmpty()) {
      return Optional.empty();
    }
    Orders orders = new Orders(visits, cheapest.get());
    orders.run();
    return Optional.of(orders.best());
  }

  /** Orders of one set. */
  private final class Orders {
    private final int[] visits;
    private final long[] rest;
    private final int[] order;
    private final boolean proven;
    private final long floor;
    private long sum;
    private long cost;
    private int[] best;
    private List<PlannedStop> stops;
    private int looked;
    private boolean complete = true;

    Orders(int[] visits, SetDays.Best cheapest) {
      this.visits = visits;
      order = new int[visits.length];
      proven = cheapest.proven();
      floor = cheapest.costSixtieths();
      sum = Long.MAX_VALUE;
      take(cheapest.order(), cheapest.costSixtieths());
      rest = sum > floor ? leastRest() : new long[0];
    }

    void run() {
      if (rest.length > 0 && proven) {
        next(0, 0, 0);
      }
    }

    Best best() {
      long cheapest = proven ? floor : 0;
      return new Best(cost, sum - cost, proven && complete ? sum : cheapest, cheapest, stops);
    }

    private void take(int[] found, long costSixtieths) {
      List<PlannedStop> timed = timing.time(found, costSixtieths).stops();
      long both = costSixtieths + odds.priceSixtieths(timed);
      boolean better =
          both < sum
              || (both == sum
                  && (costSixtieths < cost
                      || (costSixtieths == cost && Arrays.compare(found, best) < 0)));
      if (better) {
        sum = both;
        cost = costSixtieths;
        best = found.clone();
        stops = timed;
      }
    }

    /** Least legs from a visit through all of a set of others to the end, by (set, visit). */
    private long[] leastRest() {
      int n = visits.length;
      long[] least = new long[n * (1 << n)];
      for (int set = 0; set < 1 << n; set++) {
        for (int i = 0; i < n; i++) {
          long value = DayValue.NONE;
          if (set == 0) {
            value = legs.price(visits[i], day.end());
          }
          for (int j = 0; j < n; j++) {
            if ((set >> j & 1) != 0 && j != i) {
              long rest = least[(set & ~(1 << j)) * n + j];
              value = Math.min(value, legs.price(visits[i], visits[j]) + rest);
            }
          }
          least[set * n + i] = Math.min(value, DayValue.NONE);
        }
      }
      return least;
    }

    private void next(int length, int served, long spent) {
      int n = visits.length;
      if (length == n) {
        whole();
        return;
      }
      long[] hopes = new long[n];
      Arrays.fill(hopes, Long.MAX_VALUE);
      int from = length == 0 ? day.start() : visits[order[length - 1]];
      int all = (1 << n) - 1;
      for (int j = 0; j < n; j++) {
        if ((served >> j & 1) == 0) {
          int left = all & ~served & ~(1 << j);
          hopes[j] = spent + legs.price(from, visits[j]) + rest[left * n + j];
        }
      }
      for (int tried = length; tried < n; tried++) {
        int j = 0;
        for (int k = 1; k < n; k++) {
          j = hopes[k] < hopes[j] ? k : j;
        }
        if (hopes[j] >= sum || !complete) {
          return;
        }
        hopes[j] = Long.MAX_VALUE;
        order[length] = j;
        next(length + 1, served | 1 << j, spent + legs.price(from, visits[j]));
      }
    }

    private void whole() {
      if (++looked > MOST_ORDERS) {
        complete = false;
        return;
      }
      int[] found = Arrays.stream(order).map(k -> visits[k]).toArray();
      long costSixtieths = costs.of(found, sum);
      if (costSixtieths < sum) {
        take(found, costSixtieths);
      }
    }
  }
}
