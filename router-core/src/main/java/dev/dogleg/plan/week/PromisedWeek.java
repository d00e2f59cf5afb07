package dev.dogleg.plan.week;

import dev.dogleg.arrival.PromiseOdds;
import dev.dogleg.itinerary.DayTerms;
import dev.dogleg.itinerary.WeekDay;
import dev.dogleg.itinerary.WeekPlan;
import dev.dogleg.itinerary.WeekRequest;
import java.util.List;
import java.util.stream.IntStream;

/** A week whose promises have a price, seen without it. */
final class PromisedWeek {
  private PromisedWeek() {}

  /** {@return the same week without prices of promises} */
  static WeekRequest withoutPrices(WeekRequest request) {
    List<WeekDay> days =
        request.days().stream()
            .map(day -> new WeekDay(day.shift(), day.travel(), withoutPrices(day.terms())))
            .toList();
    return new WeekRequest(
        days, request.bookings(), request.prices(), request.seed(), request.effort());
  }

  private static DayTerms withoutPrices(DayTerms terms) {
    return new DayTerms(terms.rules(), terms.water(), terms.balance());
  }

  /** {@return whether every promise of a plan is kept often enough} */
  static boolean paysNothing(WeekRequest request, WeekPlan plan) {
    return IntStream.range(0, request.days().size())
        .filter(day -> request.days().get(day).terms().pricesPromises())
        .allMatch(day -> pays(request, plan, day) == 0);
  }

  private static long pays(WeekRequest request, WeekPlan plan, int day) {
    return new PromiseOdds(request.asking(day)).priceSixtieths(plan.days().get(day).stops());
  }
}
