package dev.dogleg.plan.week;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A week to be put together from a pool.
 *
 * @param model bookings and kinds of van-days
 * @param pool their sets; every set that a week below the ceiling may hold
 * @param costs exact costs of sets
 * @param work counter and limit
 */
record MasterProblem(WeekModel model, ColumnPool pool, SetCosts costs, WorkCount work) {
  private static final double USED = 1e-7;

  /** Objective of leaving out a booking. */
  long leftOut(int booking, boolean counting) {
    if (counting) {
      return model.counted(booking) ? 1 : 0;
    }
    return model.leftOutSixtieths(booking);
  }

  /** Asks the exact cost of a column. */
  void settle(int column) {
    if (!pool.isExact(column)) {
      VanKind kind = model.kinds().get(pool.kind(column));
      int[] bookings = pool.bookings(column);
      int[] locals = new int[bookings.length];
      for (int k = 0; k < locals.length; k++) {
        locals[k] = kind.local(bookings[k]);
      }
      pool.settle(column, costs.least(kind, locals));
    }
  }

  /**
   * Asks the exact costs of the columns in use.
   *
   * @param columns columns of an LP
   * @param use how much of each is chosen
   * @param counting objective: counted bookings left out, else cost
   * @return whether the LP is another one now
   */
  boolean settleUsed(int[] columns, double[] use, boolean counting) {
    boolean changed = false;
    for (int j = 0; j < columns.length; j++) {
      if (use[j] > USED && !pool.isExact(columns[j])) {
        long before = pool.cost(columns[j]);
        settle(columns[j]);
        long after = pool.cost(columns[j]);
        changed |= counting ? after >= RelaxedDay.NEVER : after != before;
      }
    }
    return changed;
  }

  /** {@return the week of columns that are chosen all or not at all, at its exact cost} */
  WeekChoice week(int[] columns, double[] use) {
    List<WeekChoice.ChosenSet> sets = new ArrayList<>();
    for (int j = 0; j < columns.length; j++) {
      for (int copy = 0; copy < Math.rint(use[j]); copy++) {
        VanKind kind = model.kinds().get(pool.kind(columns[j]));
        List<Integer> locals =
            Arrays.stream(pool.bookings(columns[j])).map(kind::local).boxed().toList();
        sets.add(new WeekChoice.ChosenSet(kind, locals));
      }
    }
    return WeekChoice.of(model, costs, sets);
  }

  /** Whether a column can be driven, as far as is known. */
  boolean possible(int column) {
    return pool.cost(column) < RelaxedDay.NEVER;
  }
}
