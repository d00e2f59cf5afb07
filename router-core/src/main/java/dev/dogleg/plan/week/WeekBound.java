package dev.dogleg.plan.week;

import java.util.List;
import java.util.stream.IntStream;

/**
 * A lower bound on every week, in whole numbers, from given prices.
 *
 * <p>Lagrange: whatever the prices, {@code sum(cover) - count * limit - sum(cut) + sum over
 * bookings of min(0, excess of leaving it out) + sum over van-days of the least reduced cost (or 0
 * for a day at home)} is never above the objective of a week that leaves out at most {@code limit}
 * counted bookings. The LP only suggests prices; the bound is computed here in {@code long}s, so it
 * hangs on no tolerance. What a week costs above the bound is the sum of the <i>excess</i> of its
 * parts, each 0 or more: a column whose excess is above the gap is in no better week.
 */
final class WeekBound {
  /** Columns from which on several threads look at them; each writes its own entries. */
  private static final int PARALLEL = 20_000;

  private final MasterProblem problem;
  private final RowPrices prices;
  private final boolean counting;
  private final int[] live;
  private final long scaled;
  private final long[] least;

  private WeekBound(
      MasterProblem problem,
      RowPrices prices,
      boolean counting,
      int[] live,
      long scaled,
      long[] least) {
    this.problem = problem;
    this.prices = prices;
    this.counting = counting;
    this.live = live;
    this.scaled = scaled;
    this.least = least;
  }

  /**
   * Computes the bound by a look at every allowed column.
   *
   * @param problem the week
   * @param state what is allowed
   * @param counting objective: counted bookings left out, else cost
   * @param limit most counted bookings left out
   * @param prices prices of the rows
   * @param reduced receives the reduced cost of each allowed column, in the order of the state
   */
  static WeekBound of(
      MasterProblem problem,
      NodeState state,
      boolean counting,
      int limit,
      RowPrices prices,
      long[] reduced) {
    int[] live = livePrices(prices);
    long[] least = new long[problem.model().kinds().size()];
    int[] columns = state.columns();
    IntStream all = IntStream.range(0, columns.length);
    (columns.length > PARALLEL ? all.parallel() : all)
        .forEach(
            at -> reduced[at] = reducedCost(problem.pool(), prices, live, counting, columns[at]));
    for (int at = 0; at < columns.length; at++) {
      int kind = problem.pool().kind(columns[at]);
      least[kind] = Math.min(least[kind], reduced[at]);
    }
    return from(problem, state.mustServe(), counting, limit, prices, least);
  }

  /**
   * The bound from the least reduced costs.
   *
   * @param problem the week
   * @param mustServe bookings that may not be left out
   * @param counting objective: counted bookings left out, else cost
   * @param limit most counted bookings left out
   * @param prices prices of the rows
   * @param least for each kind a reduced cost, at most 0, that no set allowed is below
   */
  static WeekBound from(
      MasterProblem problem,
      boolean[] mustServe,
      boolean counting,
      int limit,
      RowPrices prices,
      long[] least) {
    long total = -Math.multiplyExact(prices.count(), (long) limit);
    for (long price : prices.cut()) {
      total = Math.subtractExact(total, price);
    }
    for (int i = 0; i < problem.model().size(); i++) {
      total = Math.addExact(total, prices.cover()[i]);
      if (!mustServe[i]) {
        long left = problem.leftOut(i, counting) * prices.scale() - prices.cover()[i];
        left += problem.model().counted(i) ? prices.count() : 0;
        total = Math.addExact(total, Math.min(0, left));
      }
    }
    for (int kind = 0; kind < least.length; kind++) {
      int many = problem.model().kinds().get(kind).vanDays().size();
      total = Math.addExact(total, Math.multiplyExact(least[kind], (long) many));
    }
    return new WeekBound(problem, prices, counting, livePrices(prices), total, least);
  }

  private static int[] livePrices(RowPrices prices) {
    return IntStream.range(0, prices.cut().length).filter(k -> prices.cut()[k] != 0).toArray();
  }

  private static long reducedCost(
      ColumnPool pool, RowPrices prices, int[] live, boolean counting, int column) {
    if (pool.cost(column) >= RelaxedDay.NEVER) {
      return RelaxedDay.NEVER;
    }
    long reduced = counting ? 0 : pool.cost(column) * prices.scale();
    reduced -= pool.sum(column, prices.cover());
    List<RowCut> cuts = prices.cuts();
    for (int k : live) {
      if (pool.counts(column, cuts.get(k))) {
        reduced += prices.cut()[k];
      }
    }
    return reduced;
  }

  /** {@return reduced cost of a column, at its present cost} */
  long reducedCost(int column) {
    return reducedCost(problem.pool(), prices, live, counting, column);
  }

  /** {@return the bound, rounded up to the objective's unit} */
  long value() {
    return -Math.floorDiv(-scaled, prices.scale());
  }

  /** {@return the bound in fixed point} */
  long scaled() {
    return scaled;
  }

  RowPrices prices() {
    return prices;
  }

  /** {@return whether the number left out is bounded, else the cost} */
  boolean counting() {
    return counting;
  }

  /** {@return least reduced cost of a kind of van-day, at most 0} */
  long least(int kind) {
    return least[kind];
  }

  /** Whether a column of any pool lies above its van-day's least by more than a room, in parts. */
  boolean over(ColumnPool pool, int column, long room) {
    return excess(pool, column) > room;
  }

  /** {@return how far a column of any pool lies above its van-day's least, in parts} */
  long excess(ColumnPool pool, int column) {
    return reducedCost(pool, prices, live, counting, column) - least[pool.kind(column)];
  }

  /** Whether a column can be in a week whose objective is at most {@code most}. */
  boolean mayBeIn(int column, long most) {
    long room = Math.subtractExact(Math.multiplyExact(most, prices.scale()), scaled);
    return !over(problem.pool(), column, room);
  }

  long[] leastByKind() {
    return least.clone();
  }
}
