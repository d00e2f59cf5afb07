package dev.dogleg.plan.week;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.audit.WeekAudit;
import dev.dogleg.itinerary.DayRule;
import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.itinerary.WeekPlan;
import dev.dogleg.itinerary.WeekRequest;
import dev.dogleg.travel.TravelTimes;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/** The ledger's weeks are what they say; drives of a grid stand for roads. */
class RoadWeeksTest {
  private static final long SEED = 3;

  private static RoadWeeks.Shape shape(int bookings, boolean terms) {
    return new RoadWeeks.Shape(bookings, 1, 1.15, terms, terms, 1_000_000_000L);
  }

  private static WeekRequest week(long seed, RoadWeeks.Shape shape) {
    TravelTimes grid =
        CustomaryWeeks.week(seed, new CustomaryWeeks.Shape(shape.bookings() + 1, 1, 1.15, true, 1))
            .days()
            .get(0)
            .travel();
    assertEquals(shape.places(), grid.size());
    return RoadWeeks.week(seed, shape, grid);
  }

  private static int service(WeekBooking booking) {
    return booking.choices().get(0).visit().serviceSeconds();
  }

  @Test
  void whatIsAskedIsThatPartOfTheShiftsLessBreaks() {
    WeekRequest week = week(SEED, shape(30, false));
    int asked = week.bookings().stream().mapToInt(booking -> service(booking) + 12 * 60).sum();
    assertEquals(1.15 * 5 * (9 * 3600 - 1800), asked, 60);
  }

  @Test
  void rulesAndWaterChangeNothingElse() {
    WeekRequest bare = week(SEED, shape(30, false));
    WeekRequest full = week(SEED, shape(30, true));
    assertTrue(bare.days().stream().allMatch(day -> day.terms().none()));
    for (int b = 0; b < 30; b++) {
      int more = service(full.bookings().get(b)) - service(bare.bookings().get(b));
      assertTrue(more == 0 || more == 15 * 60, "contagious: 15 minutes more, was " + more);
      assertEquals(
          bare.bookings().get(b).choices().size(), full.bookings().get(b).choices().size());
    }
  }

  @Test
  void aSeedIsAWeekAndAnotherIsAnother() {
    assertEquals(week(SEED, shape(30, true)).bookings(), week(SEED, shape(30, true)).bookings());
    assertNotEquals(
        week(SEED, shape(30, true)).bookings(), week(SEED + 1, shape(30, true)).bookings());
  }

  @Test
  void everyStarterRuleThatIsTranslatedOccurs() {
    TreeSet<String> names = new TreeSet<>();
    LongStream.range(0, 20)
        .forEach(
            seed ->
                week(seed, shape(30, true))
                    .days()
                    .forEach(
                        day ->
                            day.terms().rules().stream().map(DayRule::name).forEach(names::add)));
    assertEquals(
        List.of(
            "cats before dogs",
            "cleaning after cats",
            "cleaning after dogs",
            "contagious last",
            "heavy coats not back to back",
            "neighbours together",
            "not first",
            "not last",
            "one giant a day",
            "two large a day"),
        List.copyOf(names));
  }

  @Test
  void aPlanOfSuchAWeekPassesTheAudit() {
    WeekRequest week = week(SEED, shape(14, true));
    WeekPlan plan = WeekPlanner.plan(week);
    assertEquals(List.of(), WeekAudit.check(week, plan));
    assertEquals(plan.leftOutCounted(), plan.proof().leftOutBound());
  }
}
