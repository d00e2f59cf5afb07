package dev.dogleg.plan.week;

import dev.dogleg.plan.week.NodeState.Decision;
import dev.dogleg.plan.week.NodeState.Says;

/**
 * Chooses what to split a part of the search on: the most undecided of the left-outs, else of the
 * (booking, kind) pairs, else of the pairs of bookings on one van-day; equal ones by number.
 */
final class BranchChoice {
  private static final double UNDECIDED = 1e-5;

  private final MasterProblem problem;
  private final Relaxation relaxation;
  private double nearest = 0.5 - UNDECIDED;
  private Decision chosen;

  BranchChoice(MasterProblem problem, NodeState state, Relaxation relaxation) {
    this.problem = problem;
    this.relaxation = relaxation;
    leftOut();
    if (chosen == null) {
      onKind();
    }
    if (chosen == null) {
      with();
    }
    if (chosen == null) {
      anything(state);
    }
  }

  /** {@return the question; null where none is left} */
  Decision decision() {
    return chosen;
  }

  private void offer(double amount, Says says, int booking, int other) {
    double off = Math.abs(amount - 0.5);
    if (off < nearest - 1e-6) {
      nearest = off;
      chosen = new Decision(says, booking, other, true);
    }
  }

  private void leftOut() {
    double[] leftOut = relaxation.answer().leftOut();
    for (int i = 0; i < leftOut.length; i++) {
      offer(leftOut[i], Says.LEFT_OUT, i, -1);
    }
  }

  private void onKind() {
    ColumnPool pool = problem.pool();
    double[][] amount = new double[problem.model().size()][problem.model().kinds().size()];
    each(
        (column, use, bookings) -> {
          for (int booking : bookings) {
            amount[booking][pool.kind(column)] += use;
          }
        });
    for (int i = 0; i < amount.length; i++) {
      for (int kind = 0; kind < amount[i].length; kind++) {
        offer(amount[i][kind], Says.ON_KIND, i, kind);
      }
    }
  }

  private void with() {
    int n = problem.model().size();
    double[][] amount = new double[n][n];
    each(
        (column, use, bookings) -> {
          for (int i : bookings) {
            for (int j : bookings) {
              amount[i][j] += use;
            }
          }
        });
    for (int i = 0; i < n; i++) {
      for (int j = i + 1; j < n; j++) {
        offer(amount[i][j], Says.WITH, i, j);
      }
    }
  }

  /** Where the LP is whole but its bound lags behind: any question that splits the columns. */
  private void anything(NodeState state) {
    for (int column : relaxation.columns()) {
      for (int booking : problem.pool().bookings(column)) {
        Decision decision = new Decision(Says.ON_KIND, booking, problem.pool().kind(column), true);
        Decision not = new Decision(Says.ON_KIND, booking, problem.pool().kind(column), false);
        int with = state.with(decision, problem.pool()).columns().length;
        int without = state.with(not, problem.pool()).columns().length;
        if (with < state.columns().length && without < state.columns().length) {
          chosen = decision;
          return;
        }
      }
    }
  }

  private interface Each {
    void column(int column, double use, int[] bookings);
  }

  private void each(Each each) {
    for (int j = 0; j < relaxation.columns().length; j++) {
      double use = relaxation.answer().use()[j];
      if (use > 1e-9) {
        each.column(relaxation.columns()[j], use, problem.pool().bookings(relaxation.columns()[j]));
      }
    }
  }
}
