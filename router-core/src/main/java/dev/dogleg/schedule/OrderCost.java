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

  /**
   * For one day.
   *
   * @param day the day
   */
  public OrderCost(DayModel day) {
    this.day = day;
  }

  /**
   * Least cost of driving some visits in an order.
   *
   * @param order numbers of the model's visits, each at most once
   * @return cost in sixtieths, without the prices of what is left out; 0 for no visits; {@link
   *     #IMPOSSIBLE} where no timing keeps every rule
   */
  public long of(int[] order) {
    if (order.length == 0) {
      return 0;
    }
    for (int k = 1; k < order.length; k++) {
      if (day.first[order[k]]) {
        return IMPOSSIBLE;
      }
    }
    OrderChain chain = new OrderChain(day, order, 1);
    return chain.runFrom(-1, day.from, day.latestEnd, day.latestEnd, false, OrderChain.ANY_SLOT)
        ? chain.bestCost()
        : IMPOSSIBLE;
  }
}
