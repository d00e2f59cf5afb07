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
 * Every order whose cost alone lies below the best sum so far is looked at, depth first, the most
 * hopeful visit first, cut off where the rest comes too late or costs too much ({@link
 * SubsetBound}); odds are 0 or more, so no other order can be better. Each order has its stated
 * timing ({@code docs/TIMING.md}). One thread.
 */
public final class PromiseDays {
  /** Orders of one set whose cost is reckoned, after which its best is not proven. */
  private static final int MOST_ORDERS = 4_000;

  private final DayModel day;
  private final SetDays sets;
  private final OrderCost costs;
  private final DayTiming timing;
  private final PromiseOdds odds;
  private final LegRows rows;

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
    rows = new LegRows(day);
    sets = new SetDays(day, rows);
    costs = new OrderCost(day);
    timing = new DayTiming(day);
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

  private SubsetBound bound(int[] visits) {
    DayModel part = day.part(visits);
    LeastLegs legs = LeastLegs.ofPart(day, visits, part, rows);
    WorkMeter unlimited = new WorkMeter(Long.MAX_VALUE, () -> false);
    return new SubsetBound(part, new DayValue(part, true), legs, 0, unlimited);
  }

  /** Orders of one set. */
  private final class Orders {
    private final int[] visits;
    private final SubsetBound bound;
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
      bound = sum > floor && proven ? bound(visits) : null;
    }

    void run() {
      if (bound != null) {
        next(0, 0, day.from(), 0);
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

    /** Goes on from a prefix that costs at least {@code spent} and is ready no earlier. */
    private void next(int length, int served, int ready, long spent) {
      int n = visits.length;
      if (length == n) {
        whole();
        return;
      }
      long[] hopes = new long[n];
      int from = length == 0 ? n : order[length - 1];
      for (int j = 0; j < n; j++) {
        int left = (served >> j & 1) == 0 ? bound.ready(served, from, ready, j) : day.latestEnd();
        hopes[j] =
            left < day.latestEnd()
                ? spent + bound.price(served, from, ready, j) + bound.rest(served | 1 << j, j, left)
                : sum;
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
        next(
            length + 1,
            served | 1 << j,
            bound.ready(served, from, ready, j),
            spent + bound.price(served, from, ready, j));
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
