package dev.dogleg.plan.week;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The master's prices as one kind of van-day sees them: a worth for each of its visits, and up to
 * 64 cuts with the visits of each.
 *
 * <p>Maintainers: leaving a cut's price away only lowers a reduced cost, so where there are more
 * than 64 the cheapest are left away and every bound stays a bound.
 */
final class DayDuals {
  private static final int MOST_CUTS = Long.SIZE;

  /** Parts of the objective's unit; 0 in {@code costScale}: cost is not the objective. */
  final long costScale;

  /** For each local visit its price less the extra price of the choice, in parts. */
  final long[] worth;

  /** For each local visit its price, in parts. */
  final long[] cover;

  /** For each local visit the cuts that name it, as bits. */
  final long[] cutsOf;

  /** Prices of the cuts, by bit. */
  final long[] cutPrice;

  DayDuals(VanKind kind, RowPrices prices, boolean counting) {
    costScale = counting ? 0 : prices.scale();
    int n = kind.size();
    worth = new long[n];
    cover = new long[n];
    for (int j = 0; j < n; j++) {
      cover[j] = prices.cover()[kind.booking(j)];
      worth[j] = cover[j] - costScale * kind.extraSixtieths(j);
    }
    List<RowCut> cuts = prices.cuts();
    int[] chosen =
        IntStream.range(0, cuts.size())
            .filter(k -> prices.cut()[k] > 0 && named(kind, cuts.get(k)) > 1)
            .boxed()
            .sorted(
                Comparator.comparingLong((Integer k) -> -prices.cut()[k]).thenComparingInt(k -> k))
            .limit(MOST_CUTS)
            .mapToInt(Integer::intValue)
            .toArray();
    cutsOf = new long[n];
    cutPrice = Arrays.stream(chosen).mapToLong(k -> prices.cut()[k]).toArray();
    for (int bit = 0; bit < chosen.length; bit++) {
      RowCut cut = cuts.get(chosen[bit]);
      for (int booking : new int[] {cut.first(), cut.second(), cut.third()}) {
        if (kind.local(booking) >= 0) {
          cutsOf[kind.local(booking)] |= 1L << bit;
        }
      }
    }
  }

  private static int named(VanKind kind, RowCut cut) {
    return (kind.local(cut.first()) >= 0 ? 1 : 0)
        + (kind.local(cut.second()) >= 0 ? 1 : 0)
        + (kind.local(cut.third()) >= 0 ? 1 : 0);
  }

  /**
   * Reduced cost of a set, or of what is served of a day so far.
   *
   * @param set local numbers, one bit each
   * @param costSixtieths its cost, extra prices included
   * @return parts
   */
  long reduced(long[] set, long costSixtieths) {
    long reduced = costScale * costSixtieths;
    long once = 0;
    long twice = 0;
    for (int w = 0; w < set.length; w++) {
      for (long left = set[w]; left != 0; left &= left - 1) {
        int j = w * Long.SIZE + Long.numberOfTrailingZeros(left);
        reduced -= cover[j];
        twice |= once & cutsOf[j];
        once |= cutsOf[j];
      }
    }
    return reduced + sum(twice);
  }

  /** {@return sum of the prices of some cuts, given as bits} */
  long sum(long cuts) {
    long sum = 0;
    for (long left = cuts; left != 0; left &= left - 1) {
      sum += cutPrice[Long.numberOfTrailingZeros(left)];
    }
    return sum;
  }
}
