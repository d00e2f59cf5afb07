package dev.dogleg.plan;

import dev.dogleg.schedule.DayModel;
import dev.dogleg.schedule.OrderCost;
import java.util.function.Consumer;

/**
 * The exact engine of one day: a first plan, a bound, then the search between them.
 *
 * <p>One thread; what a week asks about sets of visits is answered by {@link SetEngine}.
 */
final class DayEngine {
  private static final int BEAM = 100;
  private static final int NARROW = 2;
  private static final int SHARE = 50;
  private static final long TABLE_STEPS = 6_000_000;

  private final DayModel day;

  DayEngine(DayModel day) {
    this.day = day;
  }

  DayAnswer solve(WorkMeter meter) {
    return solve(new DayValue(day), meter);
  }

  private DayAnswer solve(DayValue value, WorkMeter meter) {
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
    SubsetBound all = new SubsetBound(day, value, legs, 0, meter);
    first.offer(all.order());
    if (first.value() >= DayValue.BOOKED) {
      first.improve();
    }
    return first.value() < DayValue.BOOKED
        ? below(all, value, first, first.value(), meter)
        : some(value, first, legs, meter);
  }

  /**
   * Days on which not every booked visit has room: as few left out as can be, then one more, until
   * there is a day; over sets of no more visits than fit.
   */
  private DayAnswer some(DayValue value, FirstPlan first, LeastLegs legs, WorkMeter meter) {
    int booked = DayValue.booked(value.allLeftOut());
    int least = Math.max(0, booked - new CountBound(day, legs).mostServed());
    for (int leftOut = least; ; leftOut++) {
      long limit = Math.min(first.value(), DayValue.BOOKED * (leftOut + 1L));
      SubsetBound states = new SubsetBound(day, value, legs, leftOut, meter);
      DayAnswer answer = below(states, value, first, limit, meter);
      if (answer.lowerBound() < limit || limit == first.value()) {
        return answer;
      }
    }
  }

  private DayAnswer below(
      SubsetBound states, DayValue value, FirstPlan first, long limit, WorkMeter meter) {
    TankNeed tanks = new TankNeed(day, value, limit);
    CompletionBound bound = new SetFloors(day, states, limit, tanks, meter);
    if (bound.ofDay() >= limit) {
      return new DayAnswer(first.order(), first.value(), limit);
    }
    return between(bound, value, first, limit, meter);
  }

  /** A narrow search for a good day, then the whole one for a better. */
  private DayAnswer between(
      CompletionBound bound, DayValue value, FirstPlan first, long limit, WorkMeter meter) {
    DaySearch beam = new DaySearch(day, value, bound, limit, NARROW, meter);
    beam.run();
    if (beam.found()) {
      first.offer(beam.order());
    }
    return search(bound, value, first, Math.min(limit, first.value()), meter);
  }

  /**
   * Days of many visits, first as if every booked visit had room: a quick bound, a beam for a
   * better first plan, a search of limited effort; only where that is not enough a sharper bound.
   */
  private DayAnswer many(DayValue value, FirstPlan first, LeastLegs legs, WorkMeter meter) {
    first.improve();
    NgBound bound = new NgBound(day, legs, value, first.value(), meter, TABLE_STEPS);
    part(meter, part -> beam(bound, value, first, part));
    if (EarliestEnd.fits(day) && first.value() < DayValue.BOOKED) {
      return new EarliestEnd(day, value, meter)
          .improve(first.order(), first.value(), TABLE_STEPS, BEAM);
    }
    DayAnswer[] all = new DayAnswer[1];
    part(meter, part -> all[0] = search(bound, value, first, part));
    if (all[0].lowerBound() < all[0].value() && all[0].lowerBound() < DayValue.BOOKED) {
      bound.sharpen(first.value());
      part(meter, part -> beam(bound, value, first, part));
      all[0] = search(bound, value, first, meter);
    }
    boolean someoneLeftOut = all[0].value() >= DayValue.BOOKED;
    boolean noneWithAll = all[0].lowerBound() >= DayValue.BOOKED;
    return someoneLeftOut && noneWithAll
        ? search(new NearestBound(day, value, legs), value, first, meter)
        : all[0];
  }

  private static void part(WorkMeter meter, Consumer<WorkMeter> work) {
    WorkMeter part = meter.share(SHARE);
    work.accept(part);
    meter.count(part.steps());
  }

  private void beam(CompletionBound bound, DayValue value, FirstPlan first, WorkMeter meter) {
    long below = Math.min(first.value(), DayValue.BOOKED);
    if (bound.ofDay() < below) {
      DaySearch beam = new DaySearch(day, value, bound, below, BEAM, meter);
      beam.run();
      if (beam.found()) {
        first.offer(beam.order());
      }
    }
  }

  private DayAnswer search(
      CompletionBound bound, DayValue value, FirstPlan first, WorkMeter meter) {
    boolean onlyAll = bound instanceof NgBound;
    long limit = onlyAll ? Math.min(first.value(), DayValue.BOOKED) : first.value();
    return search(bound, value, first, limit, meter);
  }

  private DayAnswer search(
      CompletionBound bound, DayValue value, FirstPlan first, long limit, WorkMeter meter) {
    boolean onlyAll = bound instanceof NgBound;
    long floor = onlyAll ? Math.min(bound.ofDay(), DayValue.BOOKED) : bound.ofDay();
    if (floor >= limit) {
      return new DayAnswer(first.order(), first.value(), Math.min(floor, first.value()));
    }
    DaySearch search = new DaySearch(day, value, bound, limit, 0, meter);
    search.run();
    long lower = search.complete() ? search.best() : Math.max(floor, search.lowerBound());
    return search.found()
        ? new DayAnswer(search.order(), search.best(), lower)
        : new DayAnswer(first.order(), first.value(), lower);
  }
}
