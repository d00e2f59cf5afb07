package dev.dogleg.plan.week;

import dev.dogleg.itinerary.WeekCertificate;
import dev.dogleg.itinerary.WeekPlan;
import dev.dogleg.itinerary.WeekRequest;
import java.util.function.BooleanSupplier;

/**
 * Plans a week, proven best where the effort suffices.
 *
 * <p>First the fewest counted bookings left out, then least cost ({@code docs/WEEK.md}). A planner
 * holds no state: any thread may use it, and the answer does not depend on the order of the
 * bookings in the request.
 */
public final class WeekPlanner {
  /** Effort where nobody names one: about a minute. */
  public static final long USUAL_EFFORT = 2_000_000_000L;

  private WeekPlanner() {}

  /**
   * Plans a week.
   *
   * @param request what to plan, with its effort limit; at most 200 bookings may name one van-day
   * @return the plan, with its proof and the reasons for what has no room
   */
  public static WeekPlan plan(WeekRequest request) {
    return plan(request, WeekProgress.NONE, () -> false);
  }

  /**
   * Plans a week until it is proven, the effort is spent or somebody asks to stop.
   *
   * @param request what to plan, with its effort limit; at most 200 bookings may name one van-day
   * @param progress told of each better week or bound
   * @param stop asked now and then; once true, the best week so far is returned and marked {@code
   *     CLOCK_LIMIT}
   * @return the plan, with its proof and the reasons for what has no room
   */
  public static WeekPlan plan(WeekRequest request, WeekProgress progress, BooleanSupplier stop) {
    return certified(request, progress, stop).plan();
  }

  /**
   * A plan and what its proof rests on.
   *
   * @param plan the plan
   * @param certificate what its proof rests on; {@link WeekCertificate#NONE} where nothing was
   *     shown, and where a week of one van-day was proven as a day
   */
  public record Solved(WeekPlan plan, WeekCertificate certificate) {}

  /**
   * Plans a week like {@link #plan(WeekRequest, WeekProgress, BooleanSupplier)}, and states what
   * its proof rests on.
   *
   * @param request what to plan, with its effort limit; at most 200 bookings may name one van-day
   * @param progress told of each better week or bound
   * @param stop asked now and then
   * @return plan and certificate
   */
  public static Solved certified(WeekRequest request, WeekProgress progress, BooleanSupplier stop) {
    if (request.days().stream().noneMatch(day -> day.terms().pricesPromises())) {
      return new WeekSolver(request, progress, stop).certified();
    }
    // Prices are 0 or more: a week best without them, and with none to pay, is best.
    WeekRequest plain = PromisedWeek.withoutPrices(request);
    Solved without = new WeekSolver(plain, progress, stop).certified();
    return PromisedWeek.paysNothing(request, without.plan())
        ? without
        : new WeekSolver(request, progress, stop).certified();
  }

  /**
   * Plans a week and states its certificate; a single van-day is proven as a week too.
   *
   * @param request what to plan
   * @param progress told of each better week or bound
   * @param stop asked now and then
   * @return plan and certificate
   */
  public static Solved solve(WeekRequest request, WeekProgress progress, BooleanSupplier stop) {
    return new WeekSolver(request, progress, stop).solve();
  }
}
