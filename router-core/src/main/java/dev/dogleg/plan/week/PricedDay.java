package dev.dogleg.plan.week;

import java.util.stream.IntStream;

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
  private final int[][] cuts;
  private final long[] cutPrice;

  /**
   * Sets up.
   *
   * @param kind kind of van-day
   * @param day its relaxed day, free where counting
   * @param prices prices of the rows
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
    int[] live =
        IntStream.range(0, prices.cut().length)
            .filter(k -> prices.cut()[k] > 0 && members(kind, prices.cuts().get(k)).length > 1)
            .toArray();
    cuts = new int[live.length][];
    cutPrice = new long[live.length];
    for (int k = 0; k < live.length; k++) {
      cuts[k] = members(kind, prices.cuts().get(live[k]));
      cutPrice[k] = prices.cut()[live[k]];
    }
  }

  private static int[] members(VanKind kind, RowCut cut) {
    return IntStream.of(cut.first(), cut.second(), cut.third())
        .map(kind::local)
        .filter(local -> local >= 0)
        .toArray();
  }

  /**
   * What a set is worth: the rewards of its bookings less the prices of the cuts of which it holds
   * two or more. Grows by no more than a booking's reward when the booking is added.
   */
  long worth(long[] set) {
    long sum = 0;
    for (int w = 0; w < set.length; w++) {
      for (long left = set[w]; left != 0; left &= left - 1) {
        sum += reward[w * Long.SIZE + Long.numberOfTrailingZeros(left)];
      }
    }
    for (int k = 0; k < cuts.length; k++) {
      int held = 0;
      for (int j : cuts[k]) {
        held += (int) (set[j >>> 6] >>> j & 1);
      }
      sum -= held > 1 ? cutPrice[k] : 0;
    }
    return sum;
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
