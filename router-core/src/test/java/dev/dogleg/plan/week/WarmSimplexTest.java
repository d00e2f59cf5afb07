package dev.dogleg.plan.week;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.linear.LinearSolver;

/**
 * Programs of partition shape that grow and change, each answer against the LP library (ojAlgo),
 * which solves it from scratch.
 */
class WarmSimplexTest {
  private static final double DEAR = 100;

  static LongStream seeds() {
    return LongStream.rangeClosed(1, 60);
  }

  /** A program as the test knows it: rows, the first of them equalities, and columns. */
  private static final class Program {
    private final SplittableRandom random;
    private final int equalities;
    private final List<double[]> columns = new ArrayList<>();
    private final List<Double> costs = new ArrayList<>();
    private final List<Boolean> live = new ArrayList<>();
    private final WarmSimplex warm = new WarmSimplex();
    private int rows;

    Program(SplittableRandom random, int equalities) {
      this.random = random;
      this.equalities = equalities;
      for (int r = 0; r < equalities; r++) {
        row(true);
      }
      for (int r = 0; r < equalities; r++) {
        double[] column = new double[rows];
        column[r] = 1;
        add(column, DEAR);
      }
    }

    void row(boolean equal) {
      double[] row = new double[columns.size()];
      for (int j = equalities; j < row.length; j++) {
        row[j] = random.nextInt(3) == 0 ? 1 : 0;
      }
      warm.addRow(1, equal, row);
      rows++;
      for (int j = 0; j < row.length; j++) {
        columns.set(j, Arrays.copyOf(columns.get(j), rows));
        columns.get(j)[rows - 1] = row[j];
      }
    }

    void column() {
      double[] column = new double[rows];
      for (int r = 0; r < rows; r++) {
        column[r] = random.nextInt(4) == 0 ? 1 : 0;
      }
      add(column, 1 + random.nextInt(40) / 4.0);
    }

    private void add(double[] column, double cost) {
      int[] where = IntStream.range(0, rows).filter(r -> column[r] != 0).toArray();
      double[] entries = Arrays.stream(where).mapToDouble(r -> column[r]).toArray();
      warm.addColumn(where, entries, cost);
      columns.add(column);
      costs.add(cost);
      live.add(true);
    }

    void change() {
      int j = random.nextInt(equalities, columns.size());
      if (random.nextBoolean()) {
        costs.set(j, 1 + random.nextInt(40) / 4.0);
        warm.setCost(j, costs.get(j));
      } else {
        live.set(j, !live.get(j));
        warm.allow(j, live.get(j));
      }
    }

    double byLibrary() {
      int[] used = IntStream.range(0, columns.size()).filter(live::get).toArray();
      int slacks = rows - equalities;
      double[] objective = new double[used.length + slacks];
      Arrays.setAll(objective, k -> k < used.length ? costs.get(used[k]) : 0);
      LinearSolver.Builder builder = LinearSolver.newBuilder(objective);
      for (int r = 0; r < rows; r++) {
        double[] row = new double[objective.length];
        for (int k = 0; k < used.length; k++) {
          row[k] = columns.get(used[k])[r];
        }
        if (r >= equalities) {
          row[used.length + r - equalities] = 1;
        }
        builder.equality(1, row);
      }
      Optimisation.Result result = builder.lower(0.0).solve();
      assertTrue(result.getState().isOptimal());
      return result.getValue();
    }

    void check(String which) {
      assertTrue(warm.solve(10_000), which);
      double[] use = warm.use();
      double[] price = warm.prices();
      double value = 0;
      for (int j = 0; j < use.length; j++) {
        value += use[j] * costs.get(j);
        double reduced = costs.get(j);
        for (int r = 0; r < rows; r++) {
          reduced -= price[r] * columns.get(j)[r];
        }
        assertTrue(!live.get(j) || reduced > -1e-6, which + ": a column is cheaper than its rows");
        assertTrue(live.get(j) || use[j] < 1e-6, which + ": a column is used that may not be");
      }
      for (int r = 0; r < rows; r++) {
        double sum = 0;
        for (int j = 0; j < use.length; j++) {
          sum += use[j] * columns.get(j)[r];
        }
        assertTrue(sum < 1 + 1e-5 && (r >= equalities || sum > 1 - 1e-5), which + ": row " + r);
      }
      double dual = Arrays.stream(price).sum();
      assertEquals(value, dual, 1e-5 * (1 + value), which);
      assertEquals(byLibrary(), value, 1e-5 * (1 + value), which);
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void everyAnswerIsThatOfTheLibrary(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Program program = new Program(random, 4 + random.nextInt(12));
    program.row(false);
    for (int round = 0; round < 12; round++) {
      for (int k = random.nextInt(15); k >= 0; k--) {
        program.column();
      }
      for (int k = random.nextInt(4); k > 0; k--) {
        program.row(false);
      }
      for (int k = random.nextInt(4); k > 0; k--) {
        program.change();
      }
      program.check("seed " + seed + ", round " + round);
    }
  }
}
