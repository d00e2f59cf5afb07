package dev.dogleg.plan.week;

import dev.dogleg.itinerary.WeekCertificate;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Prices (duals) of the master's rows in fixed point: whole numbers, {@code scale} parts to the
 * unit of the objective.
 *
 * <p>{@code scale}: parts of one unit; {@code cover}: for each booking, what serving it is worth;
 * {@code count}: price of leaving out one more counted booking than the limit, 0 or more; {@code
 * cuts}: the cuts; {@code cut}: price of each cut, 0 or more.
 */
final class RowPrices {
  private final long scale;
  private final long[] cover;
  private final long count;
  private final List<RowCut> cuts;
  private final long[] cut;

  RowPrices(long scale, long[] cover, long count, List<RowCut> cuts, long[] cut) {
    this.scale = scale;
    this.cover = cover;
    this.count = count;
    this.cuts = cuts;
    this.cut = cut;
  }

  long scale() {
    return scale;
  }

  long[] cover() {
    return cover;
  }

  long count() {
    return count;
  }

  List<RowCut> cuts() {
    return cuts;
  }

  long[] cut() {
    return cut;
  }

  /** {@return the cuts that have a price} */
  List<RowCut> pricedCuts() {
    return IntStream.range(0, cut.length).filter(k -> cut[k] > 0).mapToObj(cuts::get).toList();
  }

  /** Parts of a sixtieth. */
  static final long COST_SCALE = WeekCertificate.COST_PARTS;

  /** Parts of one booking left out. */
  static final long COUNT_SCALE = WeekCertificate.COUNT_PARTS;
}
