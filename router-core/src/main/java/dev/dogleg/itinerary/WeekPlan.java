package dev.dogleg.itinerary;

import java.util.List;
import java.util.Objects;
import java.util.OptionalLong;

/**
 * A planned week.
 *
 * @param days one plan per van-day, in the request's order; their own lists of what has no room are
 *     empty and their costs hold no price of a choice or of leaving out
 * @param noRoom what is left out, in id order
 * @param leftOutCounted number of counted bookings left out
 * @param costSixtieths sum of the days' costs, of the extra prices of the choices taken, of the
 *     prices of what is left out, and of {@code oddsSixtieths}
 * @param oddsSixtieths price of the promises that the days do not keep often enough, where it was
 *     weighed; empty where promises have no price, and where a week best without it has none to pay
 * @param proof how far from perfect it can be
 */
public record WeekPlan(
    List<DayPlan> days,
    List<WeekNoRoom> noRoom,
    int leftOutCounted,
    long costSixtieths,
    OptionalLong oddsSixtieths,
    Proof proof) {
  /** Checks that nothing is null or negative. */
  public WeekPlan {
    days = List.copyOf(days);
    noRoom = List.copyOf(noRoom);
    Objects.requireNonNull(proof, "proof");
    if (leftOutCounted < 0 || costSixtieths < 0 || oddsSixtieths.orElse(0) < 0) {
      throw new IllegalArgumentException("counts and costs are 0 or more");
    }
  }

  /**
   * A week whose promises have no price.
   *
   * @param days one plan per van-day
   * @param noRoom what is left out, in id order
   * @param leftOutCounted number of counted bookings left out
   * @param costSixtieths the week's cost
   * @param proof how far from perfect it can be
   */
  public WeekPlan(
      List<DayPlan> days,
      List<WeekNoRoom> noRoom,
      int leftOutCounted,
      long costSixtieths,
      Proof proof) {
    this(days, noRoom, leftOutCounted, costSixtieths, OptionalLong.empty(), proof);
  }
}
