package dev.dogleg.plan.week;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.audit.WeekAudit;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.DayShift;
import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WeekDay;
import dev.dogleg.itinerary.WeekNoRoom;
import dev.dogleg.itinerary.WeekNoRoom.Change;
import dev.dogleg.itinerary.WeekNoRoom.ChangeKind;
import dev.dogleg.itinerary.WeekPlan;
import dev.dogleg.itinerary.WeekRequest;
import dev.dogleg.plan.DayPlanner;
import dev.dogleg.time.TimeWindow;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class WeekChangesTest {
  /** Each change makes room when the day is planned anew, and a later end is the least one. */
  @Test
  void aChangeMakesRoomAndAMinuteLessDoesNot() {
    int changes = 0;
    for (long seed = 1; seed <= 3; seed++) {
      WeekRequest week =
          CustomaryWeeks.week(seed, new CustomaryWeeks.Shape(16, 1, 1.25, true, 500_000_000L));
      WeekPlan plan = WeekPlanner.plan(week);
      assertEquals(List.of(), WeekAudit.check(week, plan), "seed " + seed);
      for (WeekNoRoom noRoom : plan.noRoom()) {
        if (noRoom.change().isPresent()) {
          changes++;
          check(week, plan, noRoom.bookingId(), noRoom.change().get(), "seed " + seed);
        }
      }
    }
    assertTrue(changes > 0, "no change was found at all");
  }

  private static void check(
      WeekRequest week, WeekPlan plan, String bookingId, Change change, String of) {
    String said = of + ", " + bookingId + ": " + change;
    int day = change.day();
    switch (change.kind()) {
      case LATER_END -> {
        assertTrue(fits(week, plan, day, later(week, day, change.seconds()), bookingId, ""), said);
        int less = change.seconds() - 60;
        assertTrue(
            less == 0 || !fits(week, plan, day, later(week, day, less), bookingId, ""), said);
      }
      case MOVE_OTHER -> {
        DayShift here = week.days().get(day).shift();
        DayShift there = week.days().get(change.toDay()).shift();
        assertTrue(fits(week, plan, day, here, bookingId, change.otherId()), said);
        assertTrue(fits(week, plan, change.toDay(), there, change.otherId(), ""), said);
      }
      case WIDER_WINDOW -> assertEquals(0, change.seconds() % 60, said);
    }
    assertTrue(change.seconds() > 0 || change.kind() == ChangeKind.MOVE_OTHER, said);
  }

  private static DayShift later(WeekRequest week, int day, int seconds) {
    DayShift shift = week.days().get(day).shift();
    return shift.during(
        new TimeWindow(shift.hours().fromSeconds(), shift.hours().toSeconds() + seconds));
  }

  private static boolean fits(
      WeekRequest week, WeekPlan plan, int day, DayShift shift, String more, String without) {
    List<String> ids = new ArrayList<>(List.of(more));
    plan.days().get(day).stops().stream()
        .filter(stop -> stop.kind() == PlannedStop.Kind.VISIT)
        .map(PlannedStop::visitId)
        .filter(id -> !id.equals(without))
        .forEach(ids::add);
    List<Visit> visits =
        week.bookings().stream()
            .filter(booking -> ids.contains(booking.id()))
            .flatMap(booking -> booking.choices().stream())
            .filter(choice -> choice.day() == day)
            .map(choice -> choice.visit())
            .toList();
    assertEquals(ids.size(), visits.size());
    WeekDay asked = week.days().get(day);
    DayRequest request =
        new DayRequest(
            shift,
            visits,
            asked.travel(),
            week.prices(),
            asked.terms(),
            1,
            DayRequest.USUAL_EFFORT);
    return DayPlanner.plan(request).leftOutBooked() == 0;
  }
}
