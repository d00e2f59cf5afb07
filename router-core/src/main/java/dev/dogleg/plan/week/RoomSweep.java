package dev.dogleg.plan.week;

import java.util.Arrays;
import java.util.List;
import java.util.function.BooleanSupplier;

/**
 * Every set that a better week may hold, given prices of the whole week: those whose excess over
 * the least reduced cost of their van-day lies within what is left between bound and best week
 * (Baldacci, Christofides, Mingozzi 2008, Mathematical Programming 115:351-385).
 */
final class RoomSweep {
  private final MasterProblem problem;
  private final WeekBound bound;
  private final long room;
  private final int mostSets;

  /**
   * Sets up.
   *
   * @param problem the week
   * @param bound bound of cost from the prices
   * @param most weeks that cost more are of no interest
   * @param mostSets partial sets looked at on each kind of van-day, after which it gives up
   */
  RoomSweep(MasterProblem problem, WeekBound bound, long most, int mostSets) {
    this.problem = problem;
    this.bound = bound;
    this.mostSets = mostSets;
    room = Math.subtractExact(Math.multiplyExact(most, bound.prices().scale()), bound.scaled());
  }

  /** {@return the sets, with costs that they cannot be below; null where there are too many} */
  ColumnPool run(List<DayPricer> pricers, BooleanSupplier stop) {
    List<SetSweep> sweeps =
        problem.model().kinds().parallelStream()
            .map(kind -> sweep(kind, pricers.get(kind.number()), stop))
            .toList();
    for (SetSweep sweep : sweeps) {
      problem.work().count(sweep.steps());
    }
    if (!sweeps.stream().allMatch(SetSweep::complete)) {
      return null;
    }
    ColumnPool pool = new ColumnPool(problem.model().size());
    for (VanKind kind : problem.model().kinds()) {
      SetSweep sweep = sweeps.get(kind.number());
      for (int s = 0; s < sweep.size(); s++) {
        int[] locals = sweep.set(s);
        int[] bookings = Arrays.stream(locals).map(kind::booking).toArray();
        int column = pool.add(kind.number(), bookings, sweep.cost(s), ColumnPool.Known.BOUND);
        if (bound.over(pool, column, room)) {
          pool.dropLast();
        }
      }
    }
    return pool;
  }

  private SetSweep sweep(VanKind kind, DayPricer pricer, BooleanSupplier stop) {
    pricer.take(bound.prices(), false);
    long most = Math.addExact(bound.least(kind.number()), room);
    SetSweep.Keep keep = pricer.keep(most);
    return new SetSweep(kind, mostSets, Integer.MAX_VALUE, keep).run(stop);
  }
}
