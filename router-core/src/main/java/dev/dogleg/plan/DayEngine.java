package dev.dogleg.plan;

import dev.dogleg.schedule.DayModel;
import dev.dogleg.schedule.OrderCost;
import java.util.function.Consumer;

/**
 * The exact engine of one day: a first plan, a bound, then the search between them.
 *
 * <p>Also what a week will ask about sets of visits. One thread.
 */
final class DayEngine {
  private static final int BEAM = 100;
  private static final int SHARE = 50;
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
