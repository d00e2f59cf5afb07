package dev.dogleg.plan.week;

/**
 * A relaxed day with rewards for serving bookings: what a master's prices make of it.
 *
 * <p>Amounts are in the parts of {@link RowPrices#scale()}. With {@code costScale} 0 only rewards
 * count.
 */
final class PricedDay {
  /** An amount that no day reaches; sums of a few still fit. */
  static final long NEVER = Long.MAX_VALUE / 8;

  private final RelaxedDay day;
  private final long costScale;
  private final long[] reward;
  private final int[] ready;

  /**
   * Sets up.
   *
   * @param kind kind of van-day
   * @param day its relaxed day, free where counting
   * @param prices prices of the rows; their cuts are not looked at
   * @param counting whether only rewards count
   */
  PricedDay(VanKind kind, RelaxedDay day, RowPrices prices, boolean counting) {
    this.day = day;
    costScale = counting ? 0 : prices.scale();
    reward = new long[day.n];
    for (int j = 0; j < day.n; j++) {
      reward[j] = prices.cover()[kind.booking(j)] - costScale * kind.extraSixtieths(j);
    }
    ready = day.readySeconds();
  }

  RelaxedDay day() {
    return day;
  }

  int size() {
    return day.n;
  }

  /** {@return what serving a booking is worth, its extra price taken off} */
  long reward(int j) {
    return reward[j];
  }

  /** {@return first second at which a door may be left} */
  int ready(int j) {
    return ready[j];
  }

  /** {@return a cost in parts} */
  long parts(long cost) {
    return costScale * cost;
  }

  /** {@return least cost of a leg left within a span, in parts} */
  long leg(int i, int j, int earliest, int latest) {
    return costScale == 0 ? 0 : costScale * day.leastCost(i, j, earliest, latest);
  }

  boolean reaches(int i, int j) {
    return day.legs.spanEnds(i, j) != null;
  }
}
