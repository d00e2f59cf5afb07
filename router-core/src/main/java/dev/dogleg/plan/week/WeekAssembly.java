package dev.dogleg.plan.week;

import dev.dogleg.itinerary.DayPlan;
import dev.dogleg.itinerary.Proof;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.itinerary.WeekDay;
import dev.dogleg.itinerary.WeekNoRoom;
import dev.dogleg.itinerary.WeekPlan;
import dev.dogleg.plan.DayPlanner;
import dev.dogleg.plan.PromiseDays;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalLong;

/**
 * States a chosen week as a plan: each van-day planned by the exact day engine, what is left out
 * with its reasons. Of van-days that are alike the first gets the set with the smallest id.
 */
final class WeekAssembly {
  private static final long DAY_EFFORT = 100_000_000;

  private WeekAssembly() {}

  static WeekPlan plan(WeekModel model, WeekChoice choice, Proof proof, WeekReasons reasons) {
    int[][] locals = byVanDay(model, choice);
    List<DayPlan> days = new ArrayList<>();
    boolean[] served = new boolean[model.size()];
    long cost = 0;
    for (VanKind kind : model.kinds()) {
      for (int vanDay : kind.vanDays()) {
        for (int local : locals[vanDay]) {
          served[kind.booking(local)] = true;
          cost += kind.extraSixtieths(local);
        }
      }
    }
    boolean weighed = model.kinds().stream().anyMatch(VanKind::pricesPromises);
    long odds = 0;
    for (int vanDay = 0; vanDay < locals.length; vanDay++) {
      VanKind kind = model.kindOf(vanDay);
      if (kind.pricesPromises() && locals[vanDay].length > 0) {
        PromiseDays.Best best = kind.promises().best(locals[vanDay], DAY_EFFORT).orElseThrow();
        days.add(priced(model.request().days().get(vanDay), best));
        odds += best.oddsSixtieths();
      } else {
        days.add(day(model, vanDay, locals[vanDay]));
      }
      cost += days.get(vanDay).costSixtieths();
    }
    cost += odds;
    List<WeekNoRoom> noRoom = new ArrayList<>();
    int left = 0;
    for (int i = 0; i < served.length; i++) {
      if (!served[i]) {
        WeekBooking booking = model.booking(i);
        left += booking.counted() ? 1 : 0;
        cost += booking.leftOutSixtieths();
        noRoom.add(reasons.of(i, locals));
      }
    }
    OptionalLong price = weighed ? OptionalLong.of(odds) : OptionalLong.empty();
    return new WeekPlan(days, noRoom, left, cost, price, proof);
  }

  /** {@return for each van-day the local numbers of what it serves} */
  static int[][] byVanDay(WeekModel model, WeekChoice choice) {
    int[][] locals = new int[model.request().days().size()][0];
    for (VanKind kind : model.kinds()) {
      List<int[]> sets = new ArrayList<>();
      for (WeekChoice.ChosenSet set : choice.sets()) {
        if (set.kind() == kind) {
          sets.add(set.asArray());
        }
      }
      sets.sort(Comparator.comparingInt(set -> set[0]));
      for (int k = 0; k < sets.size(); k++) {
        locals[kind.vanDays().get(k)] = sets.get(k);
      }
    }
    return locals;
  }

  /** A day whose odds were weighed: by its cost alone another order may be cheaper. */
  private static DayPlan priced(WeekDay day, PromiseDays.Best best) {
    Proof open = new Proof(Proof.Kind.WORK_LIMIT, 0, best.cheapestSixtieths(), 0);
    return new DayPlan(day.shift(), best.stops(), List.of(), 0, best.costSixtieths(), open);
  }

  private static DayPlan day(WeekModel model, int vanDay, int[] locals) {
    WeekDay day = model.request().days().get(vanDay);
    VanKind kind = model.kindOf(vanDay);
    List<Visit> visits = Arrays.stream(locals).mapToObj(kind::visit).toList();
    DayPlan plan = DayPlanner.plan(model.request(day, visits, DAY_EFFORT));
    if (plan.leftOutBooked() > 0) {
      throw new IllegalStateException("a chosen set has no day: " + visits);
    }
    return plan;
  }
}
