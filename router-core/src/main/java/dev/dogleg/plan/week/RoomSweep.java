package dev.dogleg.plan.week;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

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
   * @param bound bound of cost, or of the number left out, from the prices
   * @param most weeks that cost more, or leave out more, are of no interest
   * @param mostSets partial sets looked at on each kind of van-day, after which it gives up
   */
  RoomSweep(MasterProblem problem, WeekBound bound, long most, int mostSets) {
    this.problem = problem;
    this.bound = bound;
    this.mostSets = mostSets;
    room = Math.subtractExact(Math.multiplyExact(most, bound.prices().scale()), bound.scaled());
  }

  /** {@return the sets, with costs that they cannot be below; null where there are too many} */
  ColumnPool run(List<DayPricer> pricers) {
    List<Optional<ListedSets>> all = lists(pricers);
    if (!all.stream().allMatch(Optional::isPresent)) {
      return null;
    }
    ColumnPool pool = new ColumnPool(problem.model().size());
    for (VanKind kind : problem.model().kinds()) {
      ListedSets sets = all.get(kind.number()).orElseThrow();
      for (int s = 0; s < sets.size(); s++) {
        int[] bookings = Arrays.stream(sets.set(s)).map(kind::booking).toArray();
        int column = pool.add(kind.number(), bookings, sets.cost(s), ColumnPool.Known.BOUND);
        if (bound.over(pool, column, room)) {
          pool.dropLast();
        }
      }
    }
    return pool;
  }

  /**
   * The same by kind of van-day.
   *
   * @return for each kind its sets; empty where there are too many
   */
  List<Optional<ListedSets>> lists(List<DayPricer> pricers) {
    List<Optional<ListedSets>> all =
        problem.model().kinds().parallelStream()
            .map(kind -> Optional.ofNullable(within(kind, pricers.get(kind.number()))))
            .toList();
    pricers.forEach(pricer -> problem.work().count(pricer.takeSteps()));
    return all;
  }

  private ListedSets within(VanKind kind, DayPricer pricer) {
    pricer.take(bound.prices(), bound.counting());
    return pricer.within(Math.addExact(bound.least(kind.number()), room), mostSets);
  }

  /**
   * Columns of a room to begin with.
   *
   * @param pool the room's columns
   * @param bound tells reduced costs
   * @param most number of columns
   * @return those of the least reduced cost
   */
  static int[] cheapest(ColumnPool pool, WeekBound bound, int most) {
    return IntStream.range(0, pool.size())
        .boxed()
        .sorted(
            Comparator.comparingLong((Integer c) -> bound.excess(pool, c)).thenComparingInt(c -> c))
        .limit(most)
        .mapToInt(Integer::intValue)
        .toArray();
  }
}
