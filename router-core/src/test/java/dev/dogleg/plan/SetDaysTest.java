package dev.dogleg.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.itinerary.DayPlan;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.Proof;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.oracle.RandomTerms;
import dev.dogleg.schedule.DayModel;
import dev.dogleg.schedule.OrderCost;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Every set of a day's visits: its bound, its best day, and the day planned with them alone. */
class SetDaysTest {
  private static final int DRAWN_FROM = 12;

  @Test
  void aSetCostsWhatItsOwnDayCostsAndNoLessThanItsBound() {
    int possible = 0;
    for (int seed = 0; seed < 40; seed++) {
      DayRequest request = SeededDays.day(seed, 5, seed % 2 == 0 ? 60 : 1, true);
      DayModel day = DayModel.of(request);
      SetBounds bounds = new SetBounds(day, 5, 1000);
      Map<Long, Long> bound = new HashMap<>();
      for (int k = 0; k < bounds.size(); k++) {
        bound.put(bounds.set(k), bounds.bound(k));
      }
      SetDays days = new SetDays(day);
      for (long set = 1; set < 32; set++) {
        String name = "seed " + seed + " set " + set;
        Optional<SetDays.Best> best = days.best(set, DayRequest.USUAL_EFFORT);
        DayPlan plan = DayPlanner.plan(booked(request, day, set));
        assertEquals(plan.leftOutBooked() == 0, best.isPresent(), name);
        if (best.isPresent()) {
          possible++;
          assertEquals(plan.costSixtieths(), best.get().costSixtieths(), name);
          assertTrue(best.get().proven(), name);
          assertTrue(bound.containsKey(set) && bound.get(set) <= plan.costSixtieths(), name);
        }
      }
    }
    assertTrue(possible > 100, "sets that have a day: " + possible);
  }

  /** Sets drawn from days of up to 70 visits, with rules, water and balance. */
  @Test
  void drawnSetsWithTermsCostWhatTheDayPlannerSays() {
    int possible = 0;
    int impossible = 0;
    for (int seed = 0; seed < 60; seed++) {
      DayRequest plain = SeededDays.day(seed, DRAWN_FROM, 60, seed % 2 == 0);
      DayRequest few = seed % 3 == 0 ? plain : RandomTerms.on(seed, plain);
      DayRequest request = seed % 5 == 0 ? wide(few, 70) : few;
      DayModel day = DayModel.of(request);
      SetDays days = new SetDays(day);
      SplittableRandom random = new SplittableRandom(seed);
      for (int k = 0; k < 8; k++) {
        int[] set =
            random.ints(2 + k, day.size() - DRAWN_FROM, day.size()).distinct().sorted().toArray();
        String name = "seed " + seed + " set " + Arrays.toString(set);
        DayPlan plan = DayPlanner.plan(booked(request, day, set));
        assertEquals(Proof.Kind.PROVEN_BEST, plan.proof().kind(), name);
        boolean none = plan.leftOutBooked() > 0;
        long cost = none ? SetDays.NEVER : plan.costSixtieths();
        SetDays.Bounds bounds = days.bounds(set, DayRequest.USUAL_EFFORT);
        assertEquals(new SetDays.Bounds(cost, cost), bounds, name);
        long near = none ? 100_000 : cost;
        for (long guess : new long[] {0, near / 2, near - near / 300, near, near + near / 100}) {
          assertEquals(bounds, days.bounds(set, DayRequest.USUAL_EFFORT, guess), name + guess);
        }
        Optional<SetDays.Best> best = days.best(set, DayRequest.USUAL_EFFORT);
        assertEquals(none, best.isEmpty(), name);
        assertEquals(Optional.of(!none), days.fits(set, DayRequest.USUAL_EFFORT), name);
        if (best.isPresent()) {
          int[] order = best.get().order();
          assertEquals(cost, new OrderCost(day).of(order, OrderCost.IMPOSSIBLE), name);
        }
        possible += none ? 0 : 1;
        impossible += none ? 1 : 0;
      }
    }
    assertTrue(possible > 100, "sets that have a day: " + possible);
    assertTrue(impossible > 100, "sets that have none: " + impossible);
  }

  /** The same day with more visits, which come first by id. */
  private static DayRequest wide(DayRequest request, int visits) {
    List<Visit> many = new ArrayList<>(request.visits());
    for (int k = request.visits().size(); k < visits; k++) {
      many.add(Visit.booked("a stranger %03d".formatted(k), 0, 60));
    }
    return with(request, many);
  }

  private static DayRequest with(DayRequest request, List<Visit> visits) {
    return new DayRequest(
        request.shift(),
        visits,
        request.travel(),
        request.prices(),
        request.terms(),
        1,
        request.effort());
  }

  private static DayRequest booked(DayRequest request, DayModel day, long set) {
    return booked(request, day, IntStream.range(0, 64).filter(v -> (set >>> v & 1) != 0).toArray());
  }

  private static DayRequest booked(DayRequest request, DayModel day, int[] set) {
    List<Visit> visits = new ArrayList<>();
    for (int v : set) {
      Visit visit = day.visit(v);
      visits.add(
          new Visit(
              visit.id(),
              visit.place(),
              visit.serviceSeconds(),
              true,
              0,
              visit.arriveWithin(),
              visit.doneBySeconds(),
              visit.vanWithin(),
              visit.first()));
    }
    return with(request, visits);
  }
}
