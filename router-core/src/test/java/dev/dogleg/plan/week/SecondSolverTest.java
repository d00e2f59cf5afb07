package dev.dogleg.plan.week;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.dogleg.itinerary.DayChoice;
import dev.dogleg.itinerary.Prices;
import dev.dogleg.itinerary.Proof;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.itinerary.WeekPlan;
import dev.dogleg.itinerary.WeekRequest;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SecondSolverTest {
  static LongStream seeds() {
    return LongStream.rangeClosed(1, 24);
  }

  /**
   * Weeks of 11 or 12 bookings and five days, some on the waiting list, more than there is room.
   */
  static WeekRequest week(long seed) {
    CustomaryWeeks.Shape shape =
        new CustomaryWeeks.Shape(11 + (int) (seed % 2), 1, 1.15, false, 1_000_000_000L);
    WeekRequest week = CustomaryWeeks.week(seed, shape);
    List<WeekBooking> bookings = new ArrayList<>();
    for (WeekBooking booking : week.bookings()) {
      boolean counted = bookings.size() % 4 != 3;
      List<DayChoice> choices =
          booking.choices().stream()
              .map(choice -> new DayChoice(choice.day(), plain(choice.visit(), counted), 0))
              .toList();
      bookings.add(new WeekBooking(booking.id(), counted, counted ? 0 : 90_000, choices));
    }
    return new WeekRequest(week.days(), bookings, Prices.DRIVE_ONLY, seed, week.effort());
  }

  private static Visit plain(Visit visit, boolean counted) {
    Visit anyTime = visit.arriving(Visit.ANY_TIME);
    return counted ? anyTime : anyTime.waiting(0);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void aSolverThatSharesNothingAgreesToTheUnit(long seed) {
    WeekRequest week = week(seed);
    SubsetSolver.Best expected = SubsetSolver.best(week);
    WeekPlan plan = WeekPlanner.plan(week);
    assertEquals(Proof.Kind.PROVEN_BEST, plan.proof().kind(), "seed " + seed);
    assertEquals(expected.leftOut(), plan.leftOutCounted(), "left out, seed " + seed);
    assertEquals(expected.cost(), plan.costSixtieths(), "cost, seed " + seed);
  }

  @Test
  void theOrderOfTheRowsDoesNotMatter() {
    WeekRequest week = week(3);
    List<WeekBooking> turned = new ArrayList<>(week.bookings());
    Collections.reverse(turned);
    WeekPlan plan = WeekPlanner.plan(week);
    WeekPlan other =
        WeekPlanner.plan(
            new WeekRequest(week.days(), turned, week.prices(), week.seed(), week.effort()));
    assertEquals(plan, other);
  }
}
