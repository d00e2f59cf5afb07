package dev.dogleg.fit;

import dev.dogleg.itinerary.DayPlan;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.itinerary.Proof;
import dev.dogleg.plan.DayPlanner;
import dev.dogleg.plan.PromiseDays;
import dev.dogleg.plan.SetDays;
import dev.dogleg.schedule.DayModel;
import dev.dogleg.schedule.DayTiming;
import dev.dogleg.schedule.LegMemory;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The best day that serves every visit of a request, odds weighed where promises have a price.
 *
 * @param plan the day
 * @param sumSixtieths its cost, and the price of its odds
 * @param proven whether no day of these visits has a smaller sum
 */
record SolvedDay(DayPlan plan, long sumSixtieths, boolean proven) {

  /**
   * What came of it.
   *
   * @param day the day; empty where none was found
   * @param neverFits whether it is proven that there is none
   */
  record Outcome(Optional<SolvedDay> day, boolean neverFits) {}

  /** The best day of all visits, which are booked. */
  static Outcome of(DayRequest request, LegMemory legs) {
    int[] all = IntStream.range(0, request.visits().size()).toArray();
    if (all.length == 0 || all.length > SetDays.MOST) {
      SolvedDay planned = planned(request);
      boolean served = planned.plan().leftOutBooked() == 0;
      return new Outcome(
          served ? Optional.of(planned) : Optional.empty(),
          planned.plan().proof().leftOutBound() > 0);
    }
    DayModel model = DayModel.of(request, legs);
    SetDays.Room room = new SetDays(model).room(all, request.effort());
    if (room.best().isPresent() && request.terms().pricesPromises()) {
      return new Outcome(weighed(request, model, all), false);
    }
    return new Outcome(
        room.best()
            .map(
                best ->
                    stated(
                        request,
                        new DayTiming(model).time(best.order(), best.costSixtieths()).stops(),
                        best.costSixtieths(),
                        best.costSixtieths(),
                        best.proven())),
        room.neverFits());
  }

  /** The same day as the week planner states it; it may leave visits out. */
  static SolvedDay planned(DayRequest request) {
    boolean priced = request.terms().pricesPromises();
    int size = request.visits().size();
    if (priced && size > 0 && size <= SetDays.MOST) {
      Optional<SolvedDay> weighed =
          weighed(request, DayModel.of(request), IntStream.range(0, size).toArray());
      if (weighed.isPresent()) {
        return weighed.get();
      }
    }
    DayPlan plan = DayPlanner.plan(request);
    long odds = priced ? DayOdds.priceSixtieths(request, plan) : 0;
    boolean best = plan.proof().kind() == Proof.Kind.PROVEN_BEST;
    return new SolvedDay(plan, plan.costSixtieths() + odds, best && odds == 0);
  }

  private static Optional<SolvedDay> weighed(DayRequest request, DayModel model, int[] all) {
    return new PromiseDays(request, model)
        .best(all, request.effort())
        .map(
            best ->
                stated(
                    request,
                    best.stops(),
                    best.costSixtieths(),
                    best.sumSixtieths(),
                    best.leastSixtieths() >= best.sumSixtieths()));
  }

  private static SolvedDay stated(
      DayRequest request,
      List<PlannedStop> stops,
      long costSixtieths,
      long sumSixtieths,
      boolean proven) {
    // By its cost alone a day whose odds were weighed need not be the best.
    Proof proof =
        proven && sumSixtieths == costSixtieths
            ? new Proof(Proof.Kind.PROVEN_BEST, 0, costSixtieths, 0)
            : new Proof(Proof.Kind.WORK_LIMIT, 0, 0, 0);
    return new SolvedDay(
        new DayPlan(request.shift(), stops, List.of(), 0, costSixtieths, proof),
        sumSixtieths,
        proven);
  }
}
