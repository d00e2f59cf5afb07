package dev.dogleg.plan;

import dev.dogleg.schedule.DayModel;
import dev.dogleg.schedule.OrderCost;

/**
 * The exact engine of one day: a first plan, a bound, then the search between them.
 *
 * <p>Also what a week will ask about sets of visits. One thread.
 */
final class DayEngine {
  private static final int BEAM = 100;
  private static final long BEAM_STEPS = 3_000_000;
  private static final long TABLE_STEPS = 6_000_000;

  private final DayModel day;

  DayEngine(DayModel day) {
    this.day = day;
  }

  DayAnswer solve(WorkMeter meter) {
    DayValue value = new DayValue(day);
    FirstPlan first = new FirstPlan(day.size(), value, new OrderCost(day), meter);
    LeastLegs legs = new LeastLegs(day);
    if (day.size() > NgBound.MOST) {
      first.improve();
      return search(new NearestBound(day, value, legs), value, first, meter);
    }
    return day.size() > SubsetBound.MOST
        ? many(value, first, legs, meter)
        : few(value, first, legs, meter);
  }

  private DayAnswer few(DayValue value, FirstPlan first, LeastLegs legs, WorkMeter meter) {
    SubsetBound all = new SubsetBound(day, value, legs, false, meter);
    first.offer(all.order());
    first.improve();
    CompletionBound bound =
        first.value() < DayValue.BOOKED ? all : new SubsetBound(day, value, legs, true, meter);
    return search(bound, value, first, meter);
  }

  /** Days of many visits: first as if every booked visit had room. */
  private DayAnswer many(DayValue value, FirstPlan first, LeastLegs legs, WorkMeter meter) {
    first.improve();
    CompletionBound bound = new NgBound(day, legs, value, first.value(), meter, TABLE_STEPS);
    long below = Math.min(first.value(), DayValue.BOOKED);
    if (bound.ofDay() < below) {
      DaySearch beam = new DaySearch(day, value, bound, below, BEAM, meter.part(BEAM_STEPS));
      beam.run();
      if (beam.found()) {
        first.offer(beam.order());
      }
    }
    DayAnswer all = search(bound, value, first, meter);
    boolean someoneLeftOut = all.value() >= DayValue.BOOKED;
    boolean noneWithAll = all.lowerBound() >= DayValue.BOOKED;
    return someoneLeftOut && noneWithAll
        ? search(new NearestBound(day, value, legs), value, first, meter)
        : all;
  }

  private DayAnswer search(
      CompletionBound bound, DayValue value, FirstPlan first, WorkMeter meter) {
    if (bound.ofDay() >= first.value()) {
      return new DayAnswer(first.order(), first.value(), first.value());
    }
    DaySearch search = new DaySearch(day, value, bound, first.value(), 0, meter);
    search.run();
    int[] order = search.found() ? search.order() : first.order();
    long lower = search.complete() ? search.best() : Math.max(bound.ofDay(), search.lowerBound());
    return new DayAnswer(order, search.best(), lower);
  }
}
