package dev.dogleg.plan.week;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Of the weeks that are as good as a proven one takes the least in a stated order: booking by
 * booking in id order, on as early a van-day as can be, left out last.
 *
 * <p>Maintainers: depth first through the bookings, trying each one's van-days in their order, so
 * that the first week found is the least. What a week has above a bound is the sum of what its sets
 * and its bookings have (see {@link WeekBound}); for a proven week that sum is known, so branches
 * that already have more are cut, and columns that alone have more are never looked at. Work is
 * counted in columns looked at; where it is spent, the given week stands.
 */
final class EqualWeeks {
  /** Columns looked at, after which the given week stands: about a second. */
  private static final long MOST_LOOKS = 50_000_000;

  private final MasterProblem problem;
  private final WeekModel model;
  private final WeekChoice known;
  private final WeekBound bound;
  private final int limit;
  private final long room;
  private final long[] excess;
  private final long[] out;
  private final long[] served;
  private long looks;

  /**
   * Sets up.
   *
   * @param problem the week; its pool holds every set that a week as good as the known one may hold
   * @param known a week proven best
   * @param whole a bound on the cost of the whole week, of this problem or of another of the same
   *     week
   */
  EqualWeeks(MasterProblem problem, WeekChoice known, WeekBound whole) {
    this.problem = problem;
    this.model = problem.model();
    this.known = known;
    limit = known.leftOutCounted();
    boolean[] anyone = new boolean[model.size()];
    bound = WeekBound.from(problem, anyone, false, limit, whole.prices(), whole.leastByKind());
    long scale = bound.prices().scale();
    room = Math.multiplyExact(known.costSixtieths(), scale) - bound.scaled();
    excess = new long[problem.pool().size()];
    out = new long[model.size()];
    served = new long[model.size()];
    for (int i = 0; i < model.size(); i++) {
      long left = problem.leftOut(i, false) * scale - bound.prices().cover()[i];
      left += model.counted(i) ? bound.prices().count() : 0;
      out[i] = Math.max(0, left);
      served[i] = Math.max(0, -left);
    }
  }

  /**
   * Looks.
   *
   * @return the least week; the known one where the work was spent
   */
  WeekChoice least() {
    int[][] byKind = new int[model.kinds().size()][];
    for (VanKind kind : model.kinds()) {
      byKind[kind.number()] =
          IntStream.range(0, excess.length)
              .filter(c -> problem.pool().kind(c) == kind.number())
              .filter(c -> bound.mayBeIn(c, known.costSixtieths()))
              .peek(this::measure)
              .toArray();
    }
    int[][] open = new int[model.request().days().size()][];
    for (int day = 0; day < open.length; day++) {
      open[day] = byKind[model.kindOf(day).number()];
    }
    problem.work().count(excess.length);
    Optional<WeekChoice> found = goOn(0, open, new int[open.length], 0, 0);
    problem.work().count(looks);
    return found.orElse(known);
  }

  private void measure(int column) {
    excess[column] = bound.reducedCost(column) - bound.least(problem.pool().kind(column));
  }

  /** What is left, from a booking on; days hold the columns that agree with what is decided. */
  private Optional<WeekChoice> goOn(int booking, int[][] days, int[] many, int leftOut, long over) {
    if (looks > MOST_LOOKS || leftOut > limit || over + leastOf(days, many) > room) {
      return Optional.empty();
    }
    if (booking == model.size()) {
      return exact(days);
    }
    for (int day = 0; day < days.length; day++) {
      if (model.kindOf(day).local(booking) >= 0 && !alikeIsOpen(day, many)) {
        many[day]++;
        Optional<WeekChoice> found =
            goOn(booking + 1, with(days, booking, day), many, leftOut, over + served[booking]);
        many[day]--;
        if (found.isPresent()) {
          return found;
        }
      }
    }
    int left = leftOut + (model.counted(booking) ? 1 : 0);
    return goOn(booking + 1, with(days, booking, -1), many, left, over + out[booking]);
  }

  /** Whether an earlier van-day alike is empty as this one is: then that one comes first. */
  private boolean alikeIsOpen(int day, int[] many) {
    return many[day] == 0
        && model.kindOf(day).vanDays().stream().anyMatch(d -> d < day && many[d] == 0);
  }

  private long leastOf(int[][] days, int[] many) {
    long sum = 0;
    for (int day = 0; day < days.length; day++) {
      long least = many[day] == 0 ? -bound.least(model.kindOf(day).number()) : Long.MAX_VALUE / 4;
      for (int column : days[day]) {
        least = Math.min(least, excess[column]);
      }
      looks += days[day].length;
      sum = Math.min(Long.MAX_VALUE / 4, sum + least);
    }
    return sum;
  }

  private int[][] with(int[][] days, int booking, int on) {
    int[][] next = new int[days.length][];
    for (int day = 0; day < days.length; day++) {
      boolean here = day == on;
      boolean asked = model.kindOf(day).local(booking) >= 0;
      looks += asked ? days[day].length : 0;
      next[day] =
          asked
              ? Arrays.stream(days[day])
                  .filter(c -> problem.pool().serves(c, booking) == here)
                  .toArray()
              : days[day];
    }
    return next;
  }

  /** The week decided on, where it costs what the known one does; else its sets cost more. */
  private Optional<WeekChoice> exact(int[][] days) {
    List<WeekChoice.ChosenSet> sets = new ArrayList<>();
    for (int day = 0; day < days.length; day++) {
      if (days[day].length > 0) {
        int column = days[day][0];
        problem.settle(column);
        measure(column);
        looks += 100;
        if (problem.pool().cost(column) >= RelaxedDay.NEVER) {
          return Optional.empty();
        }
        VanKind kind = model.kindOf(day);
        List<Integer> locals =
            Arrays.stream(problem.pool().bookings(column)).map(kind::local).boxed().toList();
        sets.add(new WeekChoice.ChosenSet(kind, locals));
      }
    }
    WeekChoice week = WeekChoice.of(model, problem.costs(), sets);
    boolean equal =
        week.leftOutCounted() == known.leftOutCounted()
            && week.costSixtieths() == known.costSixtieths();
    return equal ? Optional.of(week) : Optional.empty();
  }

  /** A bound that holds of every week: it costs nothing or more. */
  static WeekBound nothing(MasterProblem problem, int limit) {
    int n = problem.model().size();
    RowPrices free = new RowPrices(RowPrices.COST_SCALE, new long[n], 0, List.of(), new long[0]);
    long[] least = new long[problem.model().kinds().size()];
    return WeekBound.from(problem, new boolean[n], false, limit, free, least);
  }
}
