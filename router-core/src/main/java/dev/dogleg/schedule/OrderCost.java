package dev.dogleg.schedule;

/**
 * The least cost of an order of visits, without stating its timing: what a search asks many times.
 *
 * <p>Mutable inside, one thread.
 */
public final class OrderCost {
  /** Answer for an order that cannot be driven. */
  public static final long IMPOSSIBLE = OrderChain.IMPOSSIBLE;

  private final DayModel day;
  private final OrderChain chain;

  /**
   * For one day.
   *
   * @param day the day
   */
  public OrderCost(DayModel day) {
    this.day = day;
    this.chain = new OrderChain(day, 1);
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
    for (int k = 1; k < order.length; k++) {
      if (day.first[order[k]]) {
        return IMPOSSIBLE;
      }
    }
    return chain.choose(order, limit)
            && chain.runFrom(
                -1, day.from, day.latestEnd, day.latestEnd, false, OrderChain.ANY_SLOT)
            && chain.bestCost() < limit
        ? chain.bestCost()
        : IMPOSSIBLE;
  }
}
