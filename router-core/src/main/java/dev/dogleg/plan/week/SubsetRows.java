package dev.dogleg.plan.week;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Finds violated subset-row cuts of three bookings by trying all triples. */
final class SubsetRows {
  private static final double LEAST_VIOLATION = 0.02;

  private record Found(double served, RowCut cut) {}

  private SubsetRows() {}

  /**
   * Violated cuts, most violated first; equal ones by booking numbers.
   *
   * @param problem the week
   * @param columns columns of the LP
   * @param use how much of each is chosen
   * @param known cuts already in force
   * @param most how many to return at the most
   */
  static List<RowCut> violated(
      MasterProblem problem, int[] columns, double[] use, List<RowCut> known, int most) {
    int n = problem.model().size();
    double[][] together = new double[n][n];
    List<int[]> used = new ArrayList<>();
    List<Double> amount = new ArrayList<>();
    for (int j = 0; j < columns.length; j++) {
      if (use[j] > 1e-9 && use[j] < 1 - 1e-9) {
        int[] bookings = problem.pool().bookings(columns[j]);
        used.add(bookings);
        amount.add(use[j]);
        for (int a : bookings) {
          for (int b : bookings) {
            together[a][b] += use[j];
          }
        }
      }
    }
    Set<RowCut> inForce = new HashSet<>(known);
    List<Found> found = new ArrayList<>();
    for (int a = 0; a < n; a++) {
      for (int b = a + 1; b < n; b++) {
        for (int c = b + 1; c < n; c++) {
          double pairs = together[a][b] + together[a][c] + together[b][c];
          if (pairs > 1 + LEAST_VIOLATION) {
            double served = pairs - 2 * allThree(used, amount, a, b, c);
            RowCut cut = new RowCut(a, b, c);
            if (served > 1 + LEAST_VIOLATION && !inForce.contains(cut)) {
              found.add(new Found(served, cut));
            }
          }
        }
      }
    }
    found.sort(
        Comparator.comparingDouble((Found f) -> -f.served)
            .thenComparingInt(f -> f.cut.first())
            .thenComparingInt(f -> f.cut.second())
            .thenComparingInt(f -> f.cut.third()));
    return found.stream().limit(most).map(Found::cut).toList();
  }

  private static double allThree(List<int[]> used, List<Double> amount, int a, int b, int c) {
    double sum = 0;
    for (int k = 0; k < used.size(); k++) {
      int hits = 0;
      for (int booking : used.get(k)) {
        if (booking == a || booking == b || booking == c) {
          hits++;
        }
      }
      if (hits == 3) {
        sum += amount.get(k);
      }
    }
    return sum;
  }
}
