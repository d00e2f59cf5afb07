package dev.dogleg.plan.week;

import java.util.Arrays;
import java.util.List;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.linear.LinearSolver;
import org.ojalgo.structure.Access1D;

/**
 * The LP over some of the columns: the only class that sees the LP library.
 *
 * <p>Rows: every booking is served or left out; every kind of van-day has at most as many columns
 * as van-days; counted bookings left out at most {@code limit} (with a dear way out, so that the LP
 * always has an answer); every cut. What comes back is only a suggestion of prices and of where to
 * branch; nothing is proven here.
 */
final class MasterLp {
  private final MasterProblem problem;
  private final boolean counting;
  private final boolean[] mustServe;
  private final List<RowCut> cuts;
  private final int limit;
  private final double wayOut;

  /**
   * Answer of the LP.
   *
   * <p>{@code usable}: whether the library called it optimal; {@code use}: for each column asked
   * about, how much of it is chosen; {@code leftOut}: for each booking, how much of it is left out;
   * {@code beyond}: how far the limit is exceeded and must-serves are broken; {@code prices}:
   * prices of the rows.
   */
  static final class Answer {
    private final boolean usable;
    private final double[] use;
    private final double[] leftOut;
    private final double beyond;
    private final RowPrices prices;
    private final double value;

    Answer(
        boolean usable,
        double value,
        double[] use,
        double[] leftOut,
        double beyond,
        RowPrices prices) {
      this.usable = usable;
      this.value = value;
      this.use = use;
      this.leftOut = leftOut;
      this.beyond = beyond;
      this.prices = prices;
    }

    /** {@return the objective, in its own unit, as the library computed it} */
    double value() {
      return value;
    }

    boolean usable() {
      return usable;
    }

    /** {@return whether every column is used all or not at all} */
    boolean isWhole() {
      return usable && Arrays.stream(use).allMatch(x -> Math.abs(x - Math.rint(x)) < 1e-6);
    }

    double[] use() {
      return use;
    }

    double[] leftOut() {
      return leftOut;
    }

    double beyond() {
      return beyond;
    }

    RowPrices prices() {
      return prices;
    }
  }

  MasterLp(
      MasterProblem problem,
      boolean counting,
      boolean[] mustServe,
      List<RowCut> cuts,
      int limit,
      long wayOut) {
    this.problem = problem;
    this.counting = counting;
    this.mustServe = mustServe;
    this.cuts = cuts;
    this.limit = limit;
    this.wayOut = wayOut / unit(counting);
  }

  /** Units in which the LP sees the objective, so that its numbers are neither huge nor tiny. */
  private static double unit(boolean counting) {
    return counting ? 1 : 4096;
  }

  /** Solves over some columns. */
  Answer solve(int[] columns) {
    ColumnPool pool = problem.pool();
    List<VanKind> kinds = problem.model().kinds();
    int n = problem.model().size();
    int m = columns.length;
    int countRow = n + kinds.size();
    int rows = countRow + 1 + cuts.size();
    int slackAt = m + n;
    int wayOutAt = slackAt + rows - n;
    double[][] row = new double[rows][wayOutAt + 1];
    double[] objective = new double[wayOutAt + 1];
    double[] rightSide = new double[rows];
    Arrays.fill(rightSide, 1);
    rightSide[countRow] = limit;
    double unit = unit(counting);
    for (VanKind kind : kinds) {
      rightSide[n + kind.number()] = kind.vanDays().size();
    }
    for (int j = 0; j < m; j++) {
      int column = columns[j];
      objective[j] = counting ? 0 : pool.cost(column) / unit;
      for (int booking : pool.bookings(column)) {
        row[booking][j] = 1;
      }
      row[n + pool.kind(column)][j] = 1;
      for (int k = 0; k < cuts.size(); k++) {
        row[countRow + 1 + k][j] = pool.counts(column, cuts.get(k)) ? 1 : 0;
      }
    }
    for (int i = 0; i < n; i++) {
      row[i][m + i] = 1;
      objective[m + i] = mustServe[i] ? wayOut : problem.leftOut(i, counting) / unit;
      row[countRow][m + i] = problem.model().counted(i) ? 1 : 0;
    }
    for (int r = n; r < rows; r++) {
      row[r][slackAt + r - n] = 1;
    }
    row[countRow][wayOutAt] = -1;
    objective[wayOutAt] = wayOut;
    LinearSolver.Builder builder = LinearSolver.newBuilder(objective);
    for (int r = 0; r < rows; r++) {
      builder.equality(rightSide[r], row[r]);
    }
    return read(builder.lower(0.0).solve(), m, wayOutAt, rows);
  }

  private Answer read(Optimisation.Result result, int m, int wayOutAt, int rows) {
    int n = problem.model().size();
    int countRow = n + problem.model().kinds().size();
    boolean usable = result.getState().isOptimal() && result.getDualSolution().isPresent();
    long scale = counting ? RowPrices.COUNT_SCALE : RowPrices.COST_SCALE;
    double parts = scale * unit(counting);
    long[] price = new long[rows];
    if (usable) {
      Access1D<?> dual = result.getDualSolution().get().get();
      for (int r = 0; r < rows; r++) {
        // The library gives its dual solution the opposite sign of the textbook.
        price[r] = Math.round(-dual.doubleValue(r) * parts);
      }
    }
    double[] use = new double[m];
    for (int j = 0; j < m; j++) {
      use[j] = result.doubleValue(j);
    }
    double[] leftOut = new double[n];
    double beyond = result.doubleValue(wayOutAt);
    for (int i = 0; i < n; i++) {
      leftOut[i] = result.doubleValue(m + i);
      beyond += mustServe[i] ? leftOut[i] : 0;
    }
    long[] cut = new long[cuts.size()];
    for (int k = 0; k < cut.length; k++) {
      cut[k] = Math.max(0, -price[countRow + 1 + k]);
    }
    RowPrices prices =
        new RowPrices(scale, Arrays.copyOf(price, n), Math.max(0, -price[countRow]), cuts, cut);
    return new Answer(usable, result.getValue() * unit(counting), use, leftOut, beyond, prices);
  }
}
