package dev.dogleg.plan.week;

import java.util.Arrays;
import java.util.List;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.linear.LinearSolver;
import org.ojalgo.structure.Access1D;

/**
 * The master's LP by the LP library, from scratch: for the rare program that {@link WarmSimplex}
 * does not settle, and for comparison. The only class that sees the library.
 */
final class LibraryLp {
  private final MasterProblem problem;
  private final boolean counting;
  private final boolean[] mustServe;
  private final List<RowCut> cuts;
  private final int limit;
  private final double wayOut;

  /**
   * Sets up.
   *
   * @param problem the week
   * @param counting objective: counted bookings left out, else cost
   * @param mustServe bookings that may be left out only at the price of the way out
   * @param cuts cuts in force
   * @param limit most counted bookings left out
   * @param wayOut price of breaking the limit, in the unit of {@link MasterLp}
   */
  LibraryLp(
      MasterProblem problem,
      boolean counting,
      boolean[] mustServe,
      List<RowCut> cuts,
      int limit,
      double wayOut) {
    this.problem = problem;
    this.counting = counting;
    this.mustServe = mustServe;
    this.cuts = cuts;
    this.limit = limit;
    this.wayOut = wayOut;
  }

  /** {@return the answer over some columns} */
  MasterLp.Answer solve(int[] columns) {
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
    double unit = MasterLp.unit(counting);
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

  private MasterLp.Answer read(Optimisation.Result result, int m, int wayOutAt, int rows) {
    int n = problem.model().size();
    int countRow = n + problem.model().kinds().size();
    boolean usable = result.getState().isOptimal() && result.getDualSolution().isPresent();
    long scale = counting ? RowPrices.COUNT_SCALE : RowPrices.COST_SCALE;
    double parts = scale * MasterLp.unit(counting);
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
    return new MasterLp.Answer(
        usable, result.getValue() * MasterLp.unit(counting), use, leftOut, beyond, prices);
  }
}
