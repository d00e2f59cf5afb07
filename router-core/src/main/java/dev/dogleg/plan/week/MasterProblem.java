package dev.dogleg.plan.week;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;

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
      pool.settle(column, exactCost(column));
    }
  }

  private long exactCost(int column) {
    VanKind kind = model.kinds().get(pool.kind(column));
    int[] bookings = pool.bookings(column);
    int[] locals = new int[bookings.length];
    for (int k = 0; k < locals.length; k++) {
      locals[k] = kind.local(bookings[k]);
    }
    return costs.least(kind, locals, pool.cost(column));
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
    int[] open =
        IntStream.range(0, columns.length)
            .filter(j -> use[j] > USED && !pool.isExact(columns[j]))
            .map(j -> columns[j])
            .toArray();
    // Kinds are asked side by side; the pool is changed by one thread.
    Map<Integer, Long> exact = new ConcurrentHashMap<>();
    model.kinds().parallelStream()
        .forEach(
            kind ->
                Arrays.stream(open)
                    .filter(column -> pool.kind(column) == kind.number())
                    .forEach(column -> exact.put(column, exactCost(column))));
    boolean changed = false;
    for (int column : open) {
      long before = pool.cost(column);
      long after = exact.get(column);
      pool.settle(column, after);
      changed |= counting ? after >= RelaxedDay.NEVER : after != before;
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
