package dev.dogleg.fit;

import dev.dogleg.itinerary.DayPlan;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.Proof;
import dev.dogleg.plan.DayPlanner;
import dev.dogleg.plan.PromiseDays;
import dev.dogleg.plan.SetDays;
import dev.dogleg.schedule.DayModel;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The best day of a request, its odds weighed where promises have a price.
 *
 * @param plan the day
 * @param sumSixtieths its cost, and the price of its odds
 * @param proven whether no day of these visits has a smaller sum
 */
record SolvedDay(DayPlan plan, long sumSixtieths, boolean proven) {

  static SolvedDay of(DayRequest request) {
    DayPlan plan = DayPlanner.plan(request);
    boolean served = plan.noRoom().isEmpty();
    if (served && request.terms().pricesPromises() && !request.visits().isEmpty()) {
      return weighed(request, plan);
    }
    return new SolvedDay(plan, plan.costSixtieths(), plan.proof().kind() == Proof.Kind.PROVEN_BEST);
  }

  /** The day planner does not look at odds. */
  private static SolvedDay weighed(DayRequest request, DayPlan cheapest) {
    int size = request.visits().size();
    if (size > SetDays.MOST) {
      long odds = DayOdds.priceSixtieths(request, cheapest);
      boolean proven = odds == 0 && cheapest.proof().kind() == Proof.Kind.PROVEN_BEST;
      return new SolvedDay(cheapest, cheapest.costSixtieths() + odds, proven);
    }
    PromiseDays.Best best =
        new PromiseDays(request, DayModel.of(request))
            .best(IntStream.range(0, size).toArray(), request.effort())
            .orElseThrow();
    boolean proven = best.leastSixtieths() >= best.sumSixtieths();
    Proof proof =
        new Proof(
            best.oddsSixtieths() == 0 && proven ? Proof.Kind.PROVEN_BEST : Proof.Kind.WORK_LIMIT,
            0,
            best.cheapestSixtieths(),
            0);
    DayPlan plan =
        new DayPlan(request.shift(), best.stops(), List.of(), 0, best.costSixtieths(), proof);
    return new SolvedDay(plan, best.sumSixtieths(), proven);
  }
}
