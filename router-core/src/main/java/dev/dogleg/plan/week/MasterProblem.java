package dev.dogleg.plan.week;

/**
 * A week to be put together from a pool.
 *
 * @param model bookings and kinds of van-days
 * @param pool their sets; every set that a week below the ceiling may hold
 * @param costs exact costs of sets
 * @param work counter and limit
 */
record MasterProblem(WeekModel model, ColumnPool pool, SetCosts costs, WorkCount work) {
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
}
