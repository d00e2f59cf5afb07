package dev.dogleg.plan.week;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.audit.WeekAudit;
import dev.dogleg.itinerary.DayChoice;
import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.itinerary.WeekPlan;
import dev.dogleg.itinerary.WeekRequest;
import dev.dogleg.oracle.RandomWeeks;
import dev.dogleg.oracle.WeekOracle;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Weeks with a newcomer from what is kept of the week without, against weeks from scratch. */
class WarmWeekTest {
  /** Small weeks with every term there is, against an oracle that tries every way. */
  @Test
  void smallWeeksWithANewcomerAreThoseOfTheOracle() {
    int best = 0;
    int none = 0;
    int open = 0;
    for (int seed = 1; seed <= 70; seed++) {
      WeekRequest all = counted(RandomWeeks.week(seed, 3 + seed % 4, 2, seed % 2 == 0));
      Optional<WeekPlan> told = ask(all);
      WeekOracle.Best oracle = WeekOracle.best(all);
      open += told.isEmpty() ? 1 : 0;
      if (told.isPresent()) {
        WeekPlan plan = told.get();
        assertEquals(oracle.leftOutCounted() == 0, plan.leftOutCounted() == 0, "seed " + seed);
        if (plan.leftOutCounted() == 0) {
          assertEquals(oracle.costSixtieths(), plan.costSixtieths(), "seed " + seed);
          best++;
        } else {
          assertTrue(plan.proof().leftOutBound() > 0, "seed " + seed);
          none++;
        }
        assertEquals(List.of(), WeekAudit.check(all, plan), "seed " + seed);
      }
    }
    System.out.println("small weeks: " + best + " best, " + none + " none, " + open + " open");
    assertTrue(best > 10 && none > 1, best + " best, " + none + " none, " + open + " open");
  }

  /**
   * Weeks of several vans alike, so that kinds of van-days fall apart where a newcomer may come.
   */
  @Test
  void weeksOfTwoVansAreThoseFromScratch() {
    int best = 0;
    for (int seed = 1; seed <= 4; seed++) {
      WeekRequest all =
          counted(
              CustomaryWeeks.week(seed, new CustomaryWeeks.Shape(17, 2, 0.45, true, 100_000_000L)));
      if (seed % 2 == 0) {
        WeekBooking last = all.bookings().get(16);
        List<WeekBooking> bookings = new ArrayList<>(all.bookings().subList(0, 16));
        bookings.add(new WeekBooking(last.id(), true, 0, last.choices().subList(0, 1)));
        all = new WeekRequest(all.days(), bookings, all.prices(), all.seed(), all.effort());
      }
      Optional<WeekPlan> told = ask(all);
      WeekPlan scratch = WeekPlanner.plan(all);
      if (told.isPresent() && told.get().leftOutCounted() == 0) {
        assertEquals(scratch.costSixtieths(), told.get().costSixtieths(), "seed " + seed);
        assertEquals(0, scratch.leftOutCounted(), "seed " + seed);
        best++;
      }
    }
    assertTrue(best > 1, best + " best");
  }

  /** Keeps the week without its last booking, and asks for the whole; empty too if it is full. */
  private static Optional<WeekPlan> ask(WeekRequest all) {
    List<WeekBooking> without = all.bookings().subList(0, all.bookings().size() - 1);
    WeekRequest before =
        new WeekRequest(all.days(), without, all.prices(), all.seed(), all.effort());
    WeekPlan plan = WeekPlanner.plan(before);
    if (plan.leftOutCounted() > 0) {
      return Optional.empty();
    }
    Map<String, Integer> known = new TreeMap<>();
    for (int day = 0; day < plan.days().size(); day++) {
      for (PlannedStop stop : plan.days().get(day).stops()) {
        if (stop.kind() == PlannedStop.Kind.VISIT) {
          known.put(stop.visitId(), day);
        }
      }
    }
    String newcomer = all.bookings().get(all.bookings().size() - 1).id();
    return WarmWeek.of(before, () -> false)
        .flatMap(warm -> warm.with(all, newcomer, known, () -> false));
  }

  private static WeekRequest counted(WeekRequest week) {
    List<WeekBooking> bookings = new ArrayList<>();
    for (WeekBooking booking : week.bookings()) {
      List<DayChoice> choices = new ArrayList<>();
      for (DayChoice choice : booking.choices()) {
        choices.add(
            new DayChoice(choice.day(), choice.visit().mustServe(), choice.extraSixtieths()));
      }
      bookings.add(new WeekBooking(booking.id(), true, 0, choices));
    }
    return new WeekRequest(week.days(), bookings, week.prices(), week.seed(), 100_000_000L);
  }
}
