package dev.dogleg.plan.week;

import java.util.Arrays;

/**
 * A linear program that is solved again and again while columns come and go, rows are added and
 * costs change: each time from the basis before.
 *
 * <p>Minimise cost times x, x 0 or more, each row equal to its right side or at most that. It only
 * suggests: nothing that is proven hangs on its tolerances.
 *
 * <p>Maintainers: primal simplex with an explicit inverse of the basis, kept from call to call
 * (Dantzig, Orchard-Hays 1954, Mathematical Tables and Other Aids to Computation 8:64-67). What a
 * new row breaks is mended first by minimising the sum of what is broken (composite phase one:
 * Wolfe 1965, SIAM Journal 13:316-326). Right sides are moved by tiny amounts that differ from row
 * to row, against cycling; the answer is computed without them. Logical columns 0..rows-1 come
 * first, one a row; that of an equality must be 0. One thread.
 */
final class WarmSimplex {
  private static final double TINY = 1e-9;
  private static final double LEAST_PIVOT = 1e-7;
  private static final double NUDGE = 1e-6;
  private static final int FRESHEN = 200;
  private static final int LOGICAL = -1;
  private static final int NOBODY = -1;

  private int rows;
  private double[] right = new double[0];
  private double[] moved = new double[0];
  private boolean[] equality = new boolean[0];

  /** By row: the column in the basis there, or LOGICAL with the row of the logical beside it. */
  private int[] basic = new int[0];

  private int[] logical = new int[0];
  private double[][] inverse = new double[0][];
  private double[] value = new double[0];

  private int columns;
  private int[][] at = new int[64][];
  private double[][] entry = new double[64][];
  private double[] cost = new double[64];
  private boolean[] inBasis = new boolean[64];
  private boolean[] live = new boolean[64];
  private boolean[] logicalBasic = new boolean[0];
  private int pivots;
  private double[] way = new double[0];

  /**
   * Adds a row; its logical enters the basis.
   *
   * @param rightSide its right side
   * @param equal whether it must be equal, else at most
   * @param coefficients its entries by column
   */
  void addRow(double rightSide, boolean equal, double[] coefficients) {
    int r = rows++;
    right = Arrays.copyOf(right, rows);
    moved = Arrays.copyOf(moved, rows);
    equality = Arrays.copyOf(equality, rows);
    basic = Arrays.copyOf(basic, rows);
    logical = Arrays.copyOf(logical, rows);
    value = Arrays.copyOf(value, rows);
    way = Arrays.copyOf(way, rows);
    logicalBasic = Arrays.copyOf(logicalBasic, rows);
    inverse = Arrays.copyOf(inverse, rows);
    for (int i = 0; i < r; i++) {
      inverse[i] = Arrays.copyOf(inverse[i], rows);
    }
    right[r] = rightSide;
    moved[r] = rightSide + NUDGE * (1 + (r * 7919L % 997) / 997.0);
    equality[r] = equal;
    basic[r] = LOGICAL;
    logical[r] = r;
    logicalBasic[r] = true;
    double[] row = new double[rows];
    row[r] = 1;
    for (int i = 0; i < r; i++) {
      double factor = basic[i] == LOGICAL ? 0 : coefficients[basic[i]];
      if (factor != 0) {
        for (int k = 0; k < r; k++) {
          row[k] -= factor * inverse[i][k];
        }
      }
    }
    inverse[r] = row;
    for (int j = 0; j < columns; j++) {
      if (coefficients[j] != 0) {
        int count = at[j].length;
        at[j] = Arrays.copyOf(at[j], count + 1);
        entry[j] = Arrays.copyOf(entry[j], count + 1);
        at[j][count] = r;
        entry[j][count] = coefficients[j];
      }
    }
  }

  /**
   * Adds a column.
   *
   * @param rowsOf rows in which it has an entry
   * @param entries its entries there
   * @param price its cost
   * @return its number
   */
  int addColumn(int[] rowsOf, double[] entries, double price) {
    if (columns == cost.length) {
      at = Arrays.copyOf(at, 2 * columns);
      entry = Arrays.copyOf(entry, 2 * columns);
      cost = Arrays.copyOf(cost, 2 * columns);
      inBasis = Arrays.copyOf(inBasis, 2 * columns);
      live = Arrays.copyOf(live, 2 * columns);
    }
    at[columns] = rowsOf;
    entry[columns] = entries;
    cost[columns] = price;
    inBasis[columns] = false;
    live[columns] = true;
    return columns++;
  }

  /** Lets a column be used, or not; one in the basis leaves it when it can. */
  void allow(int column, boolean used) {
    live[column] = used;
  }

  void setCost(int column, double price) {
    cost[column] = price;
  }

  /** Puts a column into the basis in the place of a row's logical, to begin with; if it can. */
  boolean enter(int column) {
    return inBasis[column] || enter(column, new boolean[rows], 0.01);
  }

  private boolean enter(int column, boolean[] stays, double leastPivot) {
    direction(column, 0);
    int place = -1;
    for (int i = 0; i < rows; i++) {
      double most = place < 0 ? leastPivot : Math.abs(way[place]);
      if (basic[i] == LOGICAL && !stays[logical[i]] && Math.abs(way[i]) > most) {
        place = i;
      }
    }
    if (place >= 0) {
      pivot(place, column, 0);
    }
    return place >= 0;
  }

  /**
   * Solves.
   *
   * @param most pivots at the most
   * @return whether the answer is optimal
   */
  boolean solve(int most) {
    values(moved);
    boolean mended = false;
    for (int k = 0; k < most; k++) {
      if (pivots >= FRESHEN && !freshen()) {
        return false;
      }
      double[] price = prices(!mended);
      if (price == null) {
        mended = true;
        price = prices(false);
      }
      int best = entering(price, !mended);
      if (best == NOBODY) {
        values(right);
        return mended;
      }
      int column = best >= rows ? best - rows : LOGICAL;
      direction(column, best);
      int place = leaving(!mended);
      if (place < 0) {
        return false;
      }
      pivot(place, column, best);
    }
    return false;
  }

  /** Values of what is in the basis. */
  private void values(double[] side) {
    for (int i = 0; i < rows; i++) {
      double sum = 0;
      double[] row = inverse[i];
      for (int k = 0; k < rows; k++) {
        sum += row[k] * side[k];
      }
      value[i] = sum;
    }
  }

  private boolean fixed(int i) {
    return basic[i] == LOGICAL ? equality[logical[i]] : !live[basic[i]];
  }

  /** What is broken at a place of the basis: -1 too small, 1 too large, 0 nothing. */
  private int broken(int i) {
    if (value[i] < -TINY) {
      return -1;
    }
    return fixed(i) && value[i] > 10 * NUDGE ? 1 : 0;
  }

  /** Prices of the rows; mending: of what is broken, null where nothing is. */
  private double[] prices(boolean mending) {
    double[] price = new double[rows];
    boolean any = false;
    for (int i = 0; i < rows; i++) {
      double factor;
      if (mending) {
        factor = broken(i);
        any |= factor != 0;
      } else {
        factor = basic[i] == LOGICAL ? 0 : cost[basic[i]];
      }
      if (factor != 0) {
        double[] row = inverse[i];
        for (int k = 0; k < rows; k++) {
          price[k] += factor * row[k];
        }
      }
    }
    return mending && !any ? null : price;
  }

  /** The column of least reduced cost: a logical below {@code rows}, else a column above it. */
  private int entering(double[] price, boolean mending) {
    double least = -(mending ? 1e-7 : 1e-8);
    int best = NOBODY;
    for (int r = 0; r < rows; r++) {
      if (!equality[r] && !logicalBasic[r] && -price[r] < least) {
        least = -price[r];
        best = r;
      }
    }
    for (int j = 0; j < columns; j++) {
      if (live[j] && !inBasis[j]) {
        double reduced = mending ? 0 : cost[j];
        int[] where = at[j];
        double[] entries = entry[j];
        for (int k = 0; k < where.length; k++) {
          reduced -= price[where[k]] * entries[k];
        }
        if (reduced < least) {
          least = reduced;
          best = rows + j;
        }
      }
    }
    return best;
  }

  /** How the basis changes with a column, or with a logical. */
  private void direction(int column, int logicalRow) {
    for (int i = 0; i < rows; i++) {
      double[] row = inverse[i];
      double sum = 0;
      if (column == LOGICAL) {
        sum = row[logicalRow];
      } else {
        int[] where = at[column];
        double[] entries = entry[column];
        for (int k = 0; k < where.length; k++) {
          sum += row[where[k]] * entries[k];
        }
      }
      way[i] = sum;
    }
  }

  private int leaving(boolean mending) {
    int place = -1;
    double least = Double.MAX_VALUE;
    for (int i = 0; i < rows; i++) {
      double by = way[i];
      if (Math.abs(by) < LEAST_PIVOT) {
        continue;
      }
      int broken = mending ? broken(i) : 0;
      double ratio;
      if (broken < 0) {
        // Too small: it blocks only on the way up.
        ratio = by < 0 ? value[i] / by : Double.MAX_VALUE;
      } else if (broken > 0) {
        ratio = by > 0 ? value[i] / by : Double.MAX_VALUE;
      } else if (fixed(i)) {
        ratio = 0;
      } else {
        ratio = by > 0 ? Math.max(0, value[i]) / by : Double.MAX_VALUE;
      }
      boolean better = ratio < least - TINY;
      boolean equal = !better && ratio <= least + TINY;
      if (ratio < Double.MAX_VALUE
          && (better || (equal && (place < 0 || Math.abs(by) > Math.abs(way[place]))))) {
        least = Math.min(least, ratio);
        place = i;
      }
    }
    return place;
  }

  private void pivot(int place, int column, int logicalRow) {
    if (basic[place] == LOGICAL) {
      logicalBasic[logical[place]] = false;
    } else {
      inBasis[basic[place]] = false;
    }
    basic[place] = column;
    if (column == LOGICAL) {
      logical[place] = logicalRow;
      logicalBasic[logicalRow] = true;
    } else {
      inBasis[column] = true;
    }
    double[] out = inverse[place];
    double by = 1 / way[place];
    for (int k = 0; k < rows; k++) {
      out[k] *= by;
    }
    value[place] *= by;
    for (int i = 0; i < rows; i++) {
      double factor = way[i];
      if (i != place && factor != 0) {
        double[] row = inverse[i];
        for (int k = 0; k < rows; k++) {
          row[k] -= factor * out[k];
        }
        value[i] -= factor * value[place];
      }
    }
    pivots++;
  }

  /** Computes the inverse anew; false where the basis is no basis. */
  private boolean freshen() {
    int[] inside = new int[rows];
    int count = 0;
    for (int i = 0; i < rows; i++) {
      if (basic[i] != LOGICAL) {
        inside[count++] = basic[i];
        inBasis[basic[i]] = false;
      }
    }
    int[] chosen = Arrays.copyOf(inside, count);
    boolean[] stays = logicalBasic.clone();
    toLogicals();
    boolean all = true;
    for (int column : chosen) {
      all &= enter(column, stays, LEAST_PIVOT);
    }
    pivots = 0;
    values(moved);
    return all;
  }

  private void toLogicals() {
    for (int i = 0; i < rows; i++) {
      Arrays.fill(inverse[i], 0);
      inverse[i][i] = 1;
      basic[i] = LOGICAL;
      logical[i] = i;
      logicalBasic[i] = true;
    }
  }

  /** {@return number of rows} */
  int rows() {
    return rows;
  }

  /** {@return prices of the rows after {@link #solve}} */
  double[] prices() {
    return prices(false);
  }

  /** {@return values of the columns after {@link #solve}} */
  double[] use() {
    double[] use = new double[columns];
    for (int i = 0; i < rows; i++) {
      if (basic[i] != LOGICAL) {
        use[basic[i]] = Math.max(0, value[i]);
      }
    }
    return use;
  }

  /** {@return the columns in the basis} */
  int[] inside() {
    return Arrays.stream(basic).filter(column -> column != LOGICAL).toArray();
  }
}
