package dev.dogleg.schedule;

/**
 * The least cost of an order of visits, without stating its timing: what a search asks many times.
 *
 * <p>Maintainers: where the limit is far above what the order needs at least, the most hopeful
 * start with few runs gives a tighter one first. Mutable inside, one thread.
 */
public final class OrderCost {
  /** Answer for an order that cannot be driven. */
  public static final long IMPOSSIBLE = OrderChain.IMPOSSIBLE;

  private static final int BEAM = 3;
  private static final int LOOSE = 512;

  private final DayModel day;
  private final OrderChain chain;
  private final WaterOrder water;
  private final WaterOrder roughWater;

  /**
   * For one day.
   *
   * @param day the day
   */
  public OrderCost(DayModel day) {
    this.day = day;
    this.chain = new OrderChain(day, 1);
    this.water = new WaterOrder(day, this::ofStops);
    this.roughWater = new WaterOrder(day, this::roughOfStops);
  }

  /**
   * Least cost of driving some visits in an order, if it is less than a limit.
   *
   * @param order numbers of the model's visits, each at most once
   * @param limit a cost of this or more is of no interest; {@link #IMPOSSIBLE} for none
   * @return cost in sixtieths, without the prices of what is left out; 0 for no visits; {@link
   *     #IMPOSSIBLE} where no timing keeps every rule and stays below the limit
   */
  public long of(int[] order, long limit) {
    if (order.length == 0) {
      return limit > 0 ? 0 : IMPOSSIBLE;
    }
    if (firstComesLater(order)) {
      return IMPOSSIBLE;
    }
    return day.steps().water() ? water.cheapest(order, limit) : ofStops(order, limit);
  }

  /**
   * A cost that some visits can be driven for in an order, near the least one and quicker to find.
   *
   * @param order numbers of the model's visits, each at most once; not empty
   * @param limit a cost of this or more is of no interest
   * @return cost in sixtieths, as {@link #of}; {@link #IMPOSSIBLE} where none was found
   */
  public long roughly(int[] order, long limit) {
    if (firstComesLater(order)) {
      return IMPOSSIBLE;
    }
    return day.steps().water() ? roughWater.cheapest(order, limit) : roughOfStops(order, limit);
  }

  private boolean firstComesLater(int[] order) {
    for (int k = 1; k < order.length; k++) {
      if (day.doors.first[order[k]]) {
        return true;
      }
    }
    return false;
  }

  /**
   * The stops of a day at its least cost: the visits, and water stops between them.
   *
   * @param order numbers of the model's visits, each once
   * @param least its least cost
   * @return nodes
   */
  int[] stops(int[] order, long least) {
    water.cheapest(order, least + 1);
    return water.stops();
  }

  private long ofStops(int[] order, long limit) {
    if (!chain.choose(order, limit)) {
      return IMPOSSIBLE;
    }
    long below = limit;
    if (limit - chain.floor() > chain.floor() / LOOSE) {
      below = narrow(limit);
      if (below <= chain.floor() || !chain.choose(order, below)) {
        return below < limit ? below : IMPOSSIBLE;
      }
    }
    boolean better =
        chain.runFrom(-1, day.from(), day.latestEnd(), day.latestEnd(), false, OrderChain.ANY_SLOT)
            && chain.bestCost() < below;
    if (better) {
      return chain.bestCost();
    }
    return below < limit ? below : IMPOSSIBLE;
  }

  private long roughOfStops(int[] order, long limit) {
    if (!chain.choose(order, limit)) {
      return IMPOSSIBLE;
    }
    long found = narrow(limit);
    return found < limit ? found : IMPOSSIBLE;
  }

  /** Tries the start that seems best with few runs, so that the exact pass has a limit to go by. */
  private long narrow(long limit) {
    int start = chain.hopefulStart();
    chain.narrow(BEAM);
    boolean better = chain.runFrom(-1, start, start, start, false, OrderChain.ANY_SLOT);
    return better ? Math.min(limit, chain.bestCost()) : limit;
  }
}
