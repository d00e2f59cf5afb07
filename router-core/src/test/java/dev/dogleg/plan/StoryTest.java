package dev.dogleg.plan;

import static dev.dogleg.plan.LineTown.at;
import static dev.dogleg.plan.LineTown.door;
import static dev.dogleg.plan.LineTown.window;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.dogleg.itinerary.DayPlan;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.Prices;
import dev.dogleg.itinerary.Proof;
import dev.dogleg.itinerary.Visit;
import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** Days told as stories in a town along one road, simple to complex. */
class StoryTest {

  private static DayPlan day(LineTown town, String line) {
    return day(town.shift("08:00", "17:00"), line);
  }

  private static DayPlan day(DayRequest request, String line) {
    DayPlan plan = DayPlanner.plan(request);
    assertEquals(line, LineTown.line(plan));
    assertEquals(Proof.Kind.PROVEN_BEST, plan.proof().kind());
    return plan;
  }

  /** A: a plain day. */
  @Nested
  class PlainDay {
    @Test
    void a1ThreeDoorsInAnOrderOfLeastRoad() {
      DayPlan plan =
          day(
              new LineTown().with(door("a", 10, 60), door("b", 30, 60), door("c", 20, 60)),
              "home 08:00 > 08:10 a 09:10 > 09:30 b 10:30 > 10:40 c 11:40 > 12:00 home");
      // An hour of driving is 3600 * 60; sixty kilometres at 20 s are 60 * 20 * 60.
      assertEquals(216_000 + 72_000, plan.costSixtieths());
      // 17:00 less 12:00.
      plan.stops().forEach(stop -> assertEquals(5 * 3600, stop.spareSeconds()));
    }

    @Test
    void a2ADayWithoutVisitsStaysAtHome() {
      assertEquals(0, day(new LineTown(), "").costSixtieths());
    }

    @Test
    void a3TwoClientsAtOneDoorAreTwoStopsWithoutADrive() {
      day(
          new LineTown().with(door("a", 10, 30), door("b", 10, 30)),
          "home 08:00 > 08:10 a 08:40 > 08:40 b 09:10 > 09:20 home");
    }

    @Test
    void a4OvertimeIsPaidRatherThanAVisitDropped() {
      DayPlan plan =
          day(
              new LineTown()
                  .overtime(30)
                  .with(door("a", 20, 100), door("b", 25, 100))
                  .shift("08:00", "12:00"),
              "home 08:00 > 08:20 a 10:00 > 10:05 b 11:45 > 12:10 home");
      // 50 min of road: 50 * 60 * 60 + 50 * 20 * 60; ten minutes over: 10 * 60 * 120.
      assertEquals(180_000 + 60_000 + 72_000, plan.costSixtieths());
    }
  }

  /** B: windows and traffic. */
  @Nested
  class Windows {
    @Test
    void b1HomeIsLeftLaterRatherThanWaitingAtTheDoor() {
      day(
          new LineTown().with(door("a", 10, 60).arriving(List.of(window("10:00", "11:00")))),
          "home 09:50 > 10:00 a 11:00 > 11:10 home");
    }

    @Test
    void b2TheSecondWindowServesWhereTheFirstIsTooEarly() {
      day(
          new LineTown()
              .with(
                  door("a", 10, 60)
                      .arriving(List.of(window("09:00", "09:30"), window("13:00", "14:00"))),
                  door("b", 20, 60).arriving(List.of(window("09:00", "09:05")))),
          "home 08:45 > 09:05 b 10:05 > 10:15 a 14:00 > 14:10 home");
    }

    @Test
    void b3WaitingIsDoneAtTheNextDoor() {
      DayPlan plan =
          day(
              new LineTown()
                  .with(
                      door("a", 10, 60).arriving(List.of(window("08:00", "08:30"))),
                      door("b", 12, 60).arriving(List.of(window("10:00", "10:30")))),
              "home 08:20 > 08:30 a 09:30 > 09:32 b 11:00 > 11:12 home");
      // From 09:32 to 10:00.
      assertEquals(28 * 60, plan.stops().get(2).waitSeconds());
    }

    @Test
    void b4TrafficIsWaitedOutAtHome() {
      day(
          new LineTown()
              .traffic("08:00", "09:00", 2000)
              .with(door("a", 30, 60))
              .shift("07:40", "17:00"),
          "home 09:00 > 09:30 a 10:30 > 11:00 home");
    }
  }

  /** C: the break. */
  @Nested
  class Breaks {
    @Test
    void c1TheBreakIsTakenWhereTheDayEndsEarliest() {
      // After a it could not begin before 11:30; at b's door the drive is done by then.
      day(
          new LineTown()
              .withBreak(30, "11:30", "13:30")
              .with(door("a", 10, 120), door("b", 20, 120)),
          "home 09:10 > 09:20 a 11:20 > break 11:30-12:00 > 11:30 b 14:00 > 14:20 home");
    }

    @Test
    void c2NoneIsTakenWhereTheDayEndsBeforeItOpens() {
      day(
          new LineTown().withBreak(30, "12:30", "13:30").with(door("a", 10, 60), door("b", 20, 60)),
          "home 08:00 > 08:10 a 09:10 > 09:20 b 10:20 > 10:40 home");
    }

    @Test
    void c3AWaitIsUsedForTheBreak() {
      DayPlan plan =
          day(
              new LineTown()
                  .withBreak(30, "11:00", "13:30")
                  .with(
                      door("a", 10, 60).arriving(List.of(window("09:00", "09:30"))),
                      door("b", 20, 60).arriving(List.of(window("12:00", "12:10")))),
              "home 09:20 > 09:30 a 10:30 > break 11:00-11:30 > 11:40 b 13:00 > 13:20 home");
      // 30 min before the break and 20 min before b cost 50 * 60 * 20; 40 min of road 192,000.
      assertEquals(60_000 + 192_000, plan.costSixtieths());
    }
  }

  /** D: promises. */
  @Nested
  class Promises {
    @Test
    void d1ATimeToBeDoneByIsKept() {
      day(
          new LineTown().with(door("a", 10, 60), door("b", 20, 60).doneBy(at("09:20"))),
          "home 08:00 > 08:20 b 09:20 > 09:30 a 10:30 > 10:40 home");
    }

    @Test
    void d2WhereTheVanMayNotStandYetItLingersAtTheDoorBefore() {
      day(
          new LineTown()
              .with(
                  door("a", 10, 60).arriving(List.of(window("08:30", "08:40"))),
                  door("b", 20, 30).vanOnlyWithin(List.of(window("11:00", "12:00")))),
          "home 08:30 > 08:40 a 10:50 > 11:00 b 11:30 > 11:50 home");
    }

    @Test
    void d3TheFirstIsFirst() {
      day(
          new LineTown().with(door("a", 10, 60), door("b", 30, 60).first(true), door("c", 20, 60)),
          "home 08:00 > 08:30 b 09:30 > 09:40 c 10:40 > 10:50 a 11:50 > 12:00 home");
    }
  }

  /** E: no room, and why. */
  @Nested
  class NoRoomReasons {
    @Test
    void e1ImpossibleAloneByItsWindow() {
      // Leaves at 8:00, arrives 8:50, 20 minutes late.
      day(
          new LineTown().with(door("a", 50, 60).arriving(List.of(window("08:00", "08:30")))),
          " | a alone misses arrive-within by 1200 s");
    }

    @Test
    void e2ImpossibleTogetherNamesNoMoreThanItMust() {
      day(
          new LineTown()
              .with(
                  door("a", 10, 120),
                  door("b", 20, 120).arriving(List.of(window("09:00", "09:30"))),
                  door("c", 20, 60).arriving(List.of(window("09:00", "09:30"))),
                  door("d", 5, 20)),
          "home 08:40 > 09:00 b 11:00 > 11:10 a 13:10 > 13:15 d 13:35 > 13:40 home"
              + " | c impossible with b");
    }

    @Test
    void e3AWaitingListVisitIsServedWhereItsPriceExceedsItsCost() {
      Visit far = door("w", 50, 60);
      // There and back from a: 80 min and 80 km more, 80 * 3600 + 80 * 1200 = 384,000.
      day(
          new LineTown().with(door("a", 10, 60), far.waiting(383_999)),
          "home 08:00 > 08:10 a 09:10 > 09:20 home | w not worth it");
      day(
          new LineTown().with(door("a", 10, 60), far.waiting(384_001)),
          "home 08:00 > 08:10 a 09:10 > 09:50 w 10:50 > 11:40 home");
    }

    @Test
    void e4ABookedVisitStaysBeforeAnyPriceOfTheWaitingList() {
      day(
          new LineTown()
              .priced(Prices.STARTER)
              .with(
                  door("a", 10, 240).arriving(List.of(window("08:30", "09:30"))),
                  door("w", 50, 60).waiting(1_000_000))
              .shift("08:00", "13:00"),
          "home 08:20 > 08:30 a 12:30 > 12:40 home | w impossible with a");
    }
  }
}
