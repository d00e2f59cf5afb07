package dev.dogleg.plan.week;

/**
 * Told how planning a week goes on; called by the planning thread, so an answer must be quick.
 *
 * @see WeekPlanner
 */
@FunctionalInterface
public interface WeekProgress {
  /** Where nobody wants to know. */
  WeekProgress NONE = (leftOut, cost, leftOutBound, costBound, steps) -> {};

  /**
   * Something got better: the best week or a bound.
   *
   * @param leftOut counted bookings left out in the best week so far
   * @param costSixtieths its cost
   * @param leftOutBound no week leaves out fewer counted bookings
   * @param costBoundSixtieths no week that leaves out {@code leftOutBound} costs less; 0 as long as
   *     nothing is known
   * @param steps solver steps taken
   */
  void update(
      int leftOut, long costSixtieths, int leftOutBound, long costBoundSixtieths, long steps);
}
