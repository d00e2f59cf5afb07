package dev.dogleg.oracle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.arrival.PromiseOdds;
import dev.dogleg.audit.WeekAudit;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.DaySpread;
import dev.dogleg.itinerary.OddsTerms;
import dev.dogleg.itinerary.Proof;
import dev.dogleg.itinerary.ServiceSpread;
import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.itinerary.WeekDay;
import dev.dogleg.itinerary.WeekPlan;
import dev.dogleg.itinerary.WeekRequest;
import dev.dogleg.plan.week.WeekPlanner;
import dev.dogleg.schedule.DayTiming;
import dev.dogleg.schedule.TimedOrder;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Weeks whose promises have a price against every order of every set of every day. */
class PromisedWeeksTest {
  private static final int SEEDS = 80;

  @Test
  void thePlanIsTheBestOfAllWithOddsInItsCost() {
    int dearer = 0;
    int other = 0;
    for (int seed = 1; seed <= SEEDS; seed++) {
      WeekRequest plain = RandomWeeks.week(seed, 2 + seed % 4, 1 + seed % 2, seed % 3 == 0);
      WeekRequest week = promised(plain, seed);
      WeekPlan plan = WeekPlanner.plan(week);
      WeekOracle.Best best = WeekOracle.best(week, PromisedWeeksTest::costsBySet);
      assertEquals(best.leftOutCounted(), plan.leftOutCounted(), "left out, seed " + seed);
      assertEquals(best.costSixtieths(), plan.costSixtieths(), "cost, seed " + seed);
      assertEquals(Proof.Kind.PROVEN_BEST, plan.proof().kind(), "seed " + seed);
      assertEquals(List.of(), WeekAudit.check(week, plan), "seed " + seed);
      dearer += plan.oddsSixtieths().orElse(0) > 0 ? 1 : 0;
      WeekPlan without = WeekPlanner.plan(plain);
      other += without.days().equals(plan.days()) ? 0 : 1;
    }
    assertTrue(dearer > SEEDS / 8, "odds had a price in " + dearer);
    assertTrue(other > 0, "odds never changed a plan");
  }

  private static WeekRequest promised(WeekRequest week, int seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Map<String, ServiceSpread> services = new HashMap<>();
    for (WeekBooking booking : week.bookings()) {
      int most = 1 + random.nextInt(60);
      services.put(booking.id(), new ServiceSpread(0, most, random.nextDouble()));
    }
    OddsTerms odds =
        new OddsTerms(
            services,
            new DaySpread(0.1, 0.1, 0.3),
            week.bookings().stream()
                .map(WeekBooking::id)
                .filter(id -> random.nextInt(5) > 0)
                .collect(Collectors.toSet()),
            990 + random.nextInt(10),
            60L * random.nextInt(600));
    return new WeekRequest(
        week.days().stream()
            .map(day -> new WeekDay(day.shift(), day.travel(), day.terms().with(odds)))
            .toList(),
        week.bookings().stream().map(booking -> dearer(booking, random)).toList(),
        week.prices(),
        week.seed(),
        WeekPlanner.USUAL_EFFORT);
  }

  /** Leaving a promise out costs too. */
  private static WeekBooking dearer(WeekBooking booking, SplittableRandom random) {
    return booking.counted()
        ? new WeekBooking(booking.id(), true, random.nextInt(2_000), booking.choices())
        : booking;
  }

  /** Every order of every set, timed and priced one by one. */
  private static long[] costsBySet(DayRequest day) {
    PromiseOdds odds = new PromiseOdds(day);
    long[] costs = new long[1 << day.visits().size()];
    Arrays.fill(costs, DayOracle.NEVER);
    costs[0] = 0;
    orders(day, odds, new ArrayList<>(), 0, costs);
    return costs;
  }

  private static void orders(
      DayRequest day, PromiseOdds odds, List<Integer> order, int set, long[] costs) {
    if (set != 0) {
      TimedOrder timed = DayTiming.time(day, order);
      if (timed.possible()) {
        long sum = timed.costSixtieths() + odds.priceSixtieths(timed.stops());
        costs[set] = Math.min(costs[set], sum);
      }
    }
    for (int next = 0; next < day.visits().size(); next++) {
      if ((set >> next & 1) == 0) {
        order.add(next);
        orders(day, odds, order, set | 1 << next, costs);
        order.remove(order.size() - 1);
      }
    }
  }
}
