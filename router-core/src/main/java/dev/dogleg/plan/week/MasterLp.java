package dev.dogleg.plan.week;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The LP over some of the columns, asked again and again as columns and cuts come and go.
 *
 * <p>Rows: every booking is served or left out; every kind of van-day has at most as many columns
 * as van-days; counted bookings left out at most {@code limit} (with a dear way out, so that the LP
 * always has an answer); every cut. What comes back is only a suggestion of prices and of where to
 * branch; nothing is proven here. It goes on from the basis before ({@link WarmSimplex}); only
 * where that does not settle the library solves from scratch.
 */
final class MasterLp {
  private static final int MOST_PIVOTS = 20_000;

  /** A program with so many times the columns asked for is set up anew. */
  private static final int MOST_IDLE = 3;

  private final MasterProblem problem;
  private final boolean counting;
  private final boolean[] mustServe;
  private final int limit;
  private final double wayOut;
  private WarmSimplex simplex;
  private final Map<Integer, Integer> number = new LinkedHashMap<>();
  private final List<RowCut> rows = new ArrayList<>();

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

  MasterLp(MasterProblem problem, boolean counting, boolean[] mustServe, int limit, long wayOut) {
    this.problem = problem;
    this.counting = counting;
    this.mustServe = mustServe;
    this.limit = limit;
    this.wayOut = wayOut / unit(counting);
  }

  /** Units in which the LP sees the objective, so that its numbers are neither huge nor tiny. */
  static double unit(boolean counting) {
    return counting ? 1 : 4096;
  }

  /**
   * Solves over some columns.
   *
   * @param columns columns
   * @param cuts cuts in force
   */
  Answer solve(int[] columns, List<RowCut> cuts) {
    if (simplex == null || !cuts.containsAll(rows) || tooIdle(columns)) {
      setUp(cuts, columns);
    } else {
      cuts.stream().filter(cut -> !rows.contains(cut)).toList().forEach(this::addRow);
    }
    number.values().forEach(at -> simplex.allow(at, false));
    for (int column : columns) {
      int at = number.computeIfAbsent(column, this::addColumn);
      simplex.allow(at, true);
      simplex.setCost(at, price(column));
    }
    if (!simplex.solve(MOST_PIVOTS)) {
      simplex = null;
      return new LibraryLp(problem, counting, mustServe, cuts, limit, wayOut).solve(columns);
    }
    return answer(columns, cuts);
  }

  private boolean tooIdle(int[] columns) {
    return number.size() > MOST_IDLE * (columns.length + 100);
  }

  private double price(int column) {
    return counting ? 0 : problem.pool().cost(column) / unit(counting);
  }

  /** The program from its rows on, begun with the basis before, as far as there was one. */
  private void setUp(List<RowCut> cuts, int[] columns) {
    int[] before = simplex == null ? new int[0] : simplex.inside();
    Map<Integer, Integer> old = new LinkedHashMap<>(number);
    int n = problem.model().size();
    simplex = new WarmSimplex();
    number.clear();
    rows.clear();
    for (int i = 0; i < n; i++) {
      simplex.addRow(1, true, new double[0]);
    }
    for (VanKind kind : problem.model().kinds()) {
      simplex.addRow(kind.vanDays().size(), false, new double[0]);
    }
    simplex.addRow(limit, false, new double[0]);
    int countRow = simplex.rows() - 1;
    for (int i = 0; i < n; i++) {
      double price = mustServe[i] ? wayOut : problem.leftOut(i, counting) / unit(counting);
      boolean counted = problem.model().counted(i);
      simplex.addColumn(
          counted ? new int[] {i, countRow} : new int[] {i},
          counted ? new double[] {1, 1} : new double[] {1},
          price);
    }
    simplex.addColumn(new int[] {countRow}, new double[] {-1}, wayOut);
    cuts.forEach(this::addRow);
    for (int column : columns) {
      number.put(column, addColumn(column));
    }
    Set<Integer> inside = Arrays.stream(before).boxed().collect(Collectors.toSet());
    old.forEach(
        (column, at) -> {
          if (inside.contains(at) && number.containsKey(column)) {
            simplex.enter(number.get(column));
          }
        });
    for (int i = 0; i <= n; i++) {
      if (inside.isEmpty() || inside.contains(i)) {
        simplex.enter(i);
      }
    }
  }

  private void addRow(RowCut cut) {
    double[] row = new double[problem.model().size() + 1 + number.size()];
    number.forEach((column, at) -> row[at] = problem.pool().counts(column, cut) ? 1 : 0);
    simplex.addRow(1, false, row);
    rows.add(cut);
  }

  private int addColumn(int column) {
    int n = problem.model().size();
    int kinds = problem.model().kinds().size();
    int[] bookings = problem.pool().bookings(column);
    int[] where = new int[bookings.length + 1 + rows.size()];
    System.arraycopy(bookings, 0, where, 0, bookings.length);
    int count = bookings.length;
    where[count++] = n + problem.pool().kind(column);
    for (int k = 0; k < rows.size(); k++) {
      if (problem.pool().counts(column, rows.get(k))) {
        where[count++] = n + kinds + 1 + k;
      }
    }
    double[] ones = new double[count];
    Arrays.fill(ones, 1);
    return simplex.addColumn(Arrays.copyOf(where, count), ones, price(column));
  }

  private Answer answer(int[] columns, List<RowCut> cuts) {
    int n = problem.model().size();
    int countRow = n + problem.model().kinds().size();
    long scale = counting ? RowPrices.COUNT_SCALE : RowPrices.COST_SCALE;
    double parts = scale * unit(counting);
    double[] prices = simplex.prices();
    double[] all = simplex.use();
    double[] use = new double[columns.length];
    double value = 0;
    for (int j = 0; j < use.length; j++) {
      use[j] = all[number.get(columns[j])];
      value += use[j] * price(columns[j]);
    }
    double beyond = all[n];
    value += beyond * wayOut;
    double[] leftOut = Arrays.copyOf(all, n);
    for (int i = 0; i < n; i++) {
      beyond += mustServe[i] ? leftOut[i] : 0;
      value += leftOut[i] * (mustServe[i] ? wayOut : problem.leftOut(i, counting) / unit(counting));
    }
    long[] cover = new long[n];
    Arrays.setAll(cover, i -> Math.round(prices[i] * parts));
    long[] cut = new long[cuts.size()];
    for (int k = 0; k < cut.length; k++) {
      int row = countRow + 1 + rows.indexOf(cuts.get(k));
      cut[k] = Math.max(0, Math.round(-prices[row] * parts));
    }
    long count = Math.max(0, Math.round(-prices[countRow] * parts));
    RowPrices rowPrices = new RowPrices(scale, cover, count, cuts, cut);
    return new Answer(true, value * unit(counting), use, leftOut, beyond, rowPrices);
  }
}
