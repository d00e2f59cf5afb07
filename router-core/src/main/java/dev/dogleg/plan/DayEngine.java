package dev.dogleg.plan;

import dev.dogleg.schedule.DayModel;
import dev.dogleg.schedule.OrderCost;

/**
 * The exact engine of one day: a first plan, a bound, then the search between them.
 *
 * <p>Also what a week will ask about sets of visits. One thread.
 */
final class DayEngine {
  private final DayModel day;

  DayEngine(DayModel day) {
    this.day = day;
  }

  DayAnswer solve(WorkMeter meter) {
    DayValue value = new DayValue(day);
    FirstPlan first = new FirstPlan(day.size(), value, new OrderCost(day), meter);
    LeastLegs legs = new LeastLegs(day);
    CompletionBound bound = bound(first, value, legs, meter);
    if (bound.ofDay() >= first.value()) {
      return new DayAnswer(first.order(), first.value(), first.value());
    }
    DaySearch search = new DaySearch(day, value, bound, first.value(), meter);
    search.run();
    int[] order = search.found() ? search.order() : first.order();
    long lower = search.complete() ? search.best() : Math.max(bound.ofDay(), search.lowerBound());
    return new DayAnswer(order, search.best(), lower);
  }

  /** A bound for the day; on the way the first plan gets made. */
  private CompletionBound bound(
      FirstPlan first, DayValue value, LeastLegs legs, WorkMeter meter) {
    if (day.size() > SubsetBound.MOST) {
      first.improve();
      return new NearestBound(day, value, legs);
    }
    SubsetBound all = new SubsetBound(day, value, legs, false, meter);
    first.offer(all.order());
    first.improve();
    return first.value() < DayValue.BOOKED ? all : new SubsetBound(day, value, legs, true, meter);
  }
}
