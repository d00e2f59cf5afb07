package dev.dogleg.audit;

import static dev.dogleg.audit.SmallDay.VISIT_A;
import static dev.dogleg.audit.SmallDay.VISIT_B;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.DayShift;
import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.time.TimeWindow;
import dev.dogleg.travel.TravelTimes;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class DayReTimingTest {
  private static final Optional<BreakSpot> AFTER_A = Optional.of(new BreakSpot("a", true));
  private static final Optional<BreakSpot> NO_BREAK = Optional.empty();

  private static String day(ReTimedDay day) {
    return String.join(
        " | ",
        day.stops().stream()
            .map(
                s ->
                    (s.kind() + " " + s.visitId()).strip()
                        + " %d-%d-%d w%d s%d"
                            .formatted(
                                s.arriveSeconds(),
                                s.startSeconds(),
                                s.leaveSeconds(),
                                s.waitSeconds(),
                                s.spareSeconds()))
            .toList());
  }

  private static ReTimedDay time(DayRequest request, Optional<BreakSpot> spot, String... order) {
    return DayReTiming.retime(request, List.of(order), spot);
  }

  @Test
  void aSoundOrderGetsItsEarliestTimes() {
    ReTimedDay day = time(SmallDay.request(), AFTER_A, "a", "b");
    // Leaves at 0, at the door at 10, opens at 15.
    assertEquals(
        "LEAVE 0-0-0 w0 s15 | VISIT a 10-15-45 w5 s15 | BREAK a 45-45-55 w0 s10"
            + " | VISIT b 60-60-80 w0 s10 | HOME 100-100-100 w0 s15",
        day(day));
    assertEquals("", SmallDay.text(day.breaches()));
    assertEquals("", SmallDay.text(DayAudit.checkRowFigures(SmallDay.request(), day.stops())));
  }

  @Test
  void aBadOrderIsTimedAndEveryBreachIsSaid() {
    ReTimedDay day = time(SmallDay.request(), NO_BREAK, "b", "a");
    // b 30 to 50; a: 50 + 30 = 80, closes at 60, so 20 late; home 80 + 30 + 30 = 140, latest 115,
    // so 25 late; no break although the day goes on after 40.
    assertEquals(
        "LEAVE 0-0-0 w0 s0 | VISIT b 30-30-50 w0 s0 | VISIT a 80-80-110 w0 s0"
            + " | HOME 140-140-140 w0 s0",
        day(day));
    assertEquals(
        "arrives-late@2 80/60, ends-late@3 140/115, break-missing@-1 0/1",
        SmallDay.text(day.breaches()));
    assertEquals(
        "The van is at the door at 00:01:20, which is too late: allowed until 00:01:00 (20 s off).",
        day.breaches().get(0).text());
  }

  @Test
  void aBreakBeforeAServiceWaitsForItsWindow() {
    ReTimedDay day = time(SmallDay.request(), Optional.of(new BreakSpot("b", false)), "a", "b");
    assertEquals(
        "LEAVE 0-0-0 w0 s15 | VISIT a 10-15-45 w5 s15 | BREAK b 50-50-60 w0 s10"
            + " | VISIT b 50-60-80 w0 s10 | HOME 100-100-100 w0 s15",
        day(day));
    assertEquals("", SmallDay.text(day.breaches()));
  }

  @Test
  void unknownAndRepeatedVisitsArePassedOver() {
    ReTimedDay day = time(SmallDay.request(), AFTER_A, "z", "a", "b", "a");
    assertEquals(5, day.stops().size());
    assertEquals("unknown-visit@-1 1/0, visit-twice@-1 2/1", SmallDay.text(day.breaches()));
  }

  @Test
  void aBreakThatCannotBeTakenIsSaid() {
    ReTimedDay nowhere = time(SmallDay.request(), Optional.of(new BreakSpot("z", true)), "a", "b");
    assertEquals("break-door@-1 0/1, break-missing@-1 0/1", SmallDay.text(nowhere.breaches()));
    DayShift shift = SmallDay.shift(new TimeWindow(0, 110), 5, Optional.empty());
    DayRequest none = SmallDay.request(shift, SmallDay.travel(), VISIT_A, VISIT_B);
    assertEquals(
        "break-not-needed@-1 1/0", SmallDay.text(time(none, AFTER_A, "a", "b").breaches()));
  }

  @Test
  void breaksAtTheEdgesAreTimedAndSaid() {
    ReTimedDay last = time(SmallDay.request(), Optional.of(new BreakSpot("b", true)), "a", "b");
    // b 50 to 70, break 70 (latest 60, so 10 late) to 80, home 100.
    assertEquals("break-after-last@3 1/0, break-late@3 70/60", SmallDay.text(last.breaches()));
    ReTimedDay first = time(SmallDay.request(), Optional.of(new BreakSpot("a", false)), "a", "b");
    // At a's door at 10, break 40 to 50, a to 80, b 85 to 105 (done by 90), home 125.
    assertEquals(
        "break-before-first@1 1/0, done-late@3 105/90, ends-late@4 125/115",
        SmallDay.text(first.breaches()));
  }

  @Test
  void whereNoRoadLeadsTheVisitIsPassedOver() {
    int[][] seconds = {{0, 10, 30}, {30, 0, -1}, {20, 30, 0}};
    TravelTimes travel = SmallDay.times(seconds, new int[3][3]);
    DayRequest request = SmallDay.request(SmallDay.shift(), travel, VISIT_A, VISIT_B);
    ReTimedDay day = time(request, NO_BREAK, "a", "b");
    assertEquals("LEAVE 0-0-0 w0 s45 | VISIT a 10-15-45 w5 s45 | HOME 75-75-75 w0 s40", day(day));
    assertEquals("no-road@-1 0/1", SmallDay.text(day.breaches()));
  }

  @Test
  void whereNoRoadLeadsHomeNoEndIsMadeUp() {
    int[][] seconds = {{0, 10, 30}, {-1, 0, 5}, {20, 30, 0}};
    TravelTimes travel = SmallDay.times(seconds, new int[3][3]);
    DayRequest request = SmallDay.request(SmallDay.shift(), travel, VISIT_A, VISIT_B);
    ReTimedDay day = time(request, NO_BREAK, "a");
    assertEquals("LEAVE 0-0-0 w0 s0 | VISIT a 10-15-45 w5 s0", day(day));
    assertEquals("no-road@1 0/1", SmallDay.text(day.breaches()));
  }

  @Test
  void theVanLingersWhereTheNextDoorMayNotBeReachedYet() {
    // b may hold the van from 58 only: a is left at 53 instead of 45, 53 + 5 = 58.
    DayShift shift = SmallDay.shift(new TimeWindow(0, 110), 5, Optional.empty());
    List<TimeWindow> from58 = List.of(new TimeWindow(58, 100));
    DayRequest request =
        SmallDay.request(shift, SmallDay.travel(), VISIT_A, VISIT_B.vanOnlyWithin(from58));
    ReTimedDay day = time(request, NO_BREAK, "a", "b");
    assertEquals(
        "LEAVE 0-0-0 w0 s25 | VISIT a 10-15-53 w13 s25 | VISIT b 58-58-78 w0 s12"
            + " | HOME 98-98-98 w0 s17",
        day(day));
    assertEquals("", SmallDay.text(day.breaches()));
    // Where a's own span ends at 50 lingering would break that, so the van drives on at once.
    List<TimeWindow> until50 = List.of(new TimeWindow(0, 50));
    DayRequest tight =
        SmallDay.request(
            shift,
            SmallDay.travel(),
            VISIT_A.vanOnlyWithin(until50),
            VISIT_B.vanOnlyWithin(from58));
    assertEquals("van-early@2 50/58", SmallDay.text(time(tight, NO_BREAK, "a", "b").breaches()));
  }

  @Test
  void anEmptyOrderStaysAtHome() {
    ReTimedDay day = time(SmallDay.request(), AFTER_A);
    assertEquals(List.<PlannedStop>of(), day.stops());
    assertEquals("break-door@-1 0/1", SmallDay.text(day.breaches()));
  }
}
