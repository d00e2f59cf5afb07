package dev.dogleg.cli.command;

import dev.dogleg.itinerary.WeekRequest;
import dev.dogleg.plan.week.WeekPlanner;
import dev.dogleg.plan.week.WeekProgress;
import java.util.function.BooleanSupplier;

/**
 * Who answers a week's request: {@link WeekPlanner#certified} in every run. A run believes none of
 * the answer before the audit has passed it; so that this can be tried, tests give answers of their
 * own.
 */
@FunctionalInterface
interface WeekPlanning {
  /**
   * Plans a week and states what its proof rests on.
   *
   * @param request what to plan
   * @param progress told of each better week or bound
   * @param stop asked now and then
   * @return plan and certificate
   */
  WeekPlanner.Solved certified(WeekRequest request, WeekProgress progress, BooleanSupplier stop);
}
