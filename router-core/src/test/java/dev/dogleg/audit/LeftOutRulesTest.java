package dev.dogleg.audit;

import static dev.dogleg.audit.SmallDay.VISIT_A;
import static dev.dogleg.audit.SmallDay.VISIT_B;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.dogleg.itinerary.BreakRule;
import dev.dogleg.itinerary.DayPlan;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.DayShift;
import dev.dogleg.itinerary.NoRoom;
import dev.dogleg.itinerary.NoRoom.Why;
import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.itinerary.PlannedStop.Kind;
import dev.dogleg.itinerary.Proof;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.time.TimeWindow;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * {@link SmallDay} with a third visit c that is left out: place 3, 30 s from everywhere, 40 of
 * service. Alone: 30 + 40 + 30 = 100, the day holds 115. With a: 10 + 30 + 30 + 40 + 30 = 140; with
 * b: 30 + 20 + 30 + 40 + 30 = 150 (b last: 30 + 40 + 30 + 20 + 20 = 140). So either of them blocks
 * it.
 */
class LeftOutRulesTest {
  private static final Visit C = Visit.booked("c", 3, 40);

  private static String check(Visit c, int count, long cost, NoRoom... noRoom) {
    DayRequest request = SmallDay.request(VISIT_A, VISIT_B, c);
    Proof proof = new Proof(Proof.Kind.PROVEN_BEST, count, cost, 10);
    DayPlan plan =
        new DayPlan(SmallDay.shift(), SmallDay.stops(), List.of(noRoom), count, cost, proof);
    return SmallDay.text(DayAudit.check(request, plan));
  }

  private static String booked(Visit c, NoRoom... noRoom) {
    return check(c, 1, 2520, noRoom);
  }

  private static NoRoom why(Why why, String rule, int shortBy, String... with) {
    return new NoRoom("c", why, rule, shortBy, List.of(with));
  }

  private static NoRoom alone(String rule, int shortBy) {
    return why(Why.IMPOSSIBLE_ALONE, rule, shortBy);
  }

  @Test
  void everyVisitIsMadeOrNamedOnce() {
    NoRoom with = why(Why.IMPOSSIBLE_TOGETHER, "", 0, "a");
    assertEquals("", booked(C, with));
    assertEquals("no-room-missing@-1 0/1", booked(C));
    assertEquals("no-room-twice@-1 2/1", booked(C, with, with));
    NoRoom stranger = new NoRoom("z", Why.NOT_FOUND, "", 0, List.of());
    assertEquals("no-room-unknown@-1 1/0", booked(C, with, stranger));
    NoRoom made = new NoRoom("a", Why.NOT_FOUND, "", 0, List.of());
    assertEquals("no-room-served@-1 1/0", booked(C, made, with));
    Visit late = Visit.booked("d", 3, 40);
    DayRequest request = SmallDay.request(VISIT_A, VISIT_B, C, late);
    NoRoom second = new NoRoom("d", Why.NOT_FOUND, "", 0, List.of());
    Proof proof = new Proof(Proof.Kind.WORK_LIMIT, 0, 0, 10);
    DayPlan plan =
        new DayPlan(SmallDay.shift(), SmallDay.stops(), List.of(second, with), 2, 2520, proof);
    assertEquals("no-room-order@-1 1/0", SmallDay.text(DayAudit.check(request, plan)));
  }

  @Test
  void bookedOnesAreCountedAndWaitingOnesPriced() {
    NoRoom with = why(Why.IMPOSSIBLE_TOGETHER, "", 0, "a");
    assertEquals("left-out-count@-1 0/1", check(C, 0, 2520, with));
    NoRoom dear = why(Why.NOT_WORTH_IT, "", 0);
    assertEquals("", check(C.waiting(600), 0, 3120, dear));
    assertEquals("cost@-1 2520/3120", check(C.waiting(600), 0, 2520, dear));
  }

  @Test
  void aDayWithoutVisitsCostsWhatItLeavesOut() {
    DayRequest request = SmallDay.request(C.waiting(600));
    Proof proof = new Proof(Proof.Kind.PROVEN_BEST, 0, 600, 10);
    NoRoom dear = why(Why.NOT_WORTH_IT, "", 0);
    DayPlan plan = new DayPlan(SmallDay.shift(), List.of(), List.of(dear), 0, 600, proof);
    assertEquals("", SmallDay.text(DayAudit.check(request, plan)));
    DayPlan cheap = new DayPlan(SmallDay.shift(), List.of(), List.of(dear), 0, 0, proof);
    assertEquals(
        "cost@-1 0/600, proof-cost@-1 600/0", SmallDay.text(DayAudit.check(request, cheap)));
  }

  @Test
  void aBookedVisitIsNeverNotWorthIt() {
    assertEquals("reason-booked@-1 1/0", booked(C, why(Why.NOT_WORTH_IT, "", 0)));
  }

  @Test
  void theReasonHasItsForm() {
    assertEquals("reason-rule@-1 1/0", booked(C, alone("", 0)));
    assertEquals("reason-rule@-1 1/0", booked(C, alone("weather", 0)));
    assertEquals("reason-rule@-1 1/0", booked(C, why(Why.NOT_FOUND, "day-end", 5)));
    assertEquals("reason-short-by@-1 5/0", booked(C, why(Why.NOT_FOUND, "", 5)));
    assertEquals("reason-short-by@-1 -1/0", booked(C, alone("day-end", -1)));
    String conflict = "reason-conflict@-1 ";
    assertEquals(conflict + "0/1", booked(C, why(Why.IMPOSSIBLE_TOGETHER, "", 0)));
    assertEquals(conflict + "1/1", booked(C, why(Why.IMPOSSIBLE_TOGETHER, "", 0, "z")));
    assertEquals(conflict + "1/1", booked(C, why(Why.IMPOSSIBLE_TOGETHER, "", 0, "c")));
    assertEquals(conflict + "2/1", booked(C, why(Why.IMPOSSIBLE_TOGETHER, "", 0, "b", "a")));
    assertEquals(conflict + "1/0", booked(C, why(Why.NOT_FOUND, "", 0, "a")));
  }

  @Test
  void impossibleAloneIsTrue() {
    assertEquals("reason-untrue@-1 1/0", booked(C, alone("day-end", 5)), "there is room alone");
    Visit longer = Visit.booked("c", 3, 60); // 30 + 60 + 30 = 120, the day ends at 115: 5 short
    assertEquals("", booked(longer, alone("day-end", 5)));
    assertEquals("reason-short-by-untrue@-1 3/5", booked(longer, alone("day-end", 3)));
    assertEquals("reason-rule-untrue@-1 1/0", booked(longer, alone("done-by", 5)));
    assertEquals("reason-rule-untrue@-1 1/0", booked(longer, alone("no-road", 0)));
    assertEquals("reason-untrue@-1 1/0", booked(longer, why(Why.NOT_FOUND, "", 0)));
  }

  @Test
  void everyRuleThatBlocksIsMeasured() {
    List<TimeWindow> until20 = List.of(new TimeWindow(0, 20)); // there at 30 at the earliest: 10
    assertEquals("", booked(C.arriving(until20), alone("arrive-within", 10)));
    assertEquals("", booked(C.doneBy(60), alone("done-by", 10))); // 30 + 40 = 70: 10
    List<TimeWindow> until60 = List.of(new TimeWindow(0, 60));
    assertEquals("", booked(C.vanOnlyWithin(until60), alone("van-within", 10)));
    assertEquals(
        "reason-short-by-untrue@-1 9/10", booked(C.vanOnlyWithin(until60), alone("van-within", 9)));
  }

  @Test
  void theLeastMoveOfEitherEndOfAnyWindowCounts() {
    // c arrives until 50 but the van may stand there from 58 only: 8 short by either rule, although
    // moving the van's end or the first arrival window's end would never do.
    List<TimeWindow> twoWindows = List.of(new TimeWindow(0, 9), new TimeWindow(40, 50));
    List<TimeWindow> from58 = List.of(new TimeWindow(58, 110));
    Visit apart = Visit.booked("c", 3, 20).arriving(twoWindows).vanOnlyWithin(from58);
    assertEquals("", booked(apart, alone("arrive-within", 8)));
    assertEquals("", booked(apart, alone("van-within", 8)));
    assertEquals("reason-short-by-untrue@-1 7/8", booked(apart, alone("van-within", 7)));
    assertEquals("reason-rule-untrue@-1 1/0", booked(apart, alone("done-by", 8)));
  }

  @Test
  void aMissingRoadIsNamed() {
    int[][] seconds = {{0, 10, 30, 30}, {30, 0, 5, 30}, {20, 30, 0, 30}, {-1, 30, 30, 0}};
    int[][] metres = {{0, 100, 0, 0}, {0, 0, 50, 0}, {200, 0, 0, 0}, {0, 0, 0, 0}};
    DayRequest request =
        SmallDay.request(SmallDay.shift(), SmallDay.times(seconds, metres), VISIT_A, VISIT_B, C);
    Proof proof = new Proof(Proof.Kind.PROVEN_BEST, 1, 2520, 10);
    DayPlan plan =
        new DayPlan(
            SmallDay.shift(), SmallDay.stops(), List.of(alone("no-road", 0)), 1, 2520, proof);
    assertEquals("", SmallDay.text(DayAudit.check(request, plan)));
  }

  @Test
  void aConflictIsTrueAndSmallest() {
    assertEquals("", booked(C, why(Why.IMPOSSIBLE_TOGETHER, "", 0, "b")));
    assertEquals(
        "conflict-not-smallest@-1 1/0", booked(C, why(Why.IMPOSSIBLE_TOGETHER, "", 0, "a", "b")));
    // c without service: a, break, c: 10 + 30 + 10 + 30 + 0 + 30 = 110, the day holds 115; but a
    // opens at 15, so 115.
    Visit quick = Visit.booked("c", 3, 0);
    assertEquals("reason-untrue@-1 1/0", booked(quick, why(Why.IMPOSSIBLE_TOGETHER, "", 0, "a")));
    // With a and b: 15 + 30 + 5 + 20 + 30 + 30 = 130 without any break, c between: longer. True.
    assertEquals("", booked(quick, why(Why.IMPOSSIBLE_TOGETHER, "", 0, "a", "b")));
  }

  @Test
  void aBreakThatMayNotComeFirstIsAConflict() {
    // The break must start by 12. Behind a (10 + 30) or c (30 + 40) it starts too late, before the
    // first visit it may not stand: together impossible. Alone no break is needed.
    BreakRule early = new BreakRule(10, new TimeWindow(0, 12));
    DayShift shift = SmallDay.shift(new TimeWindow(0, 400), 0, Optional.of(early));
    Visit a = Visit.booked("a", 1, 30);
    DayRequest request = SmallDay.request(shift, SmallDay.travel(), a, C);
    List<PlannedStop> stops =
        List.of(
            new PlannedStop(Kind.LEAVE, 0, "", 5, 5, 5, 0, 0, 0, 325),
            new PlannedStop(Kind.VISIT, 1, "a", 15, 15, 45, 10, 100, 0, 325),
            new PlannedStop(Kind.HOME, 0, "", 75, 75, 75, 30, 0, 0, 325));
    long cost = 40 * 60 + 120; // 10 + 30 s of driving, 100 m
    Proof proof = new Proof(Proof.Kind.PROVEN_BEST, 1, cost, 10);
    NoRoom with = why(Why.IMPOSSIBLE_TOGETHER, "break", 28, "a");
    DayPlan plan = new DayPlan(shift, stops, List.of(with), 1, cost, proof);
    assertEquals("", SmallDay.text(DayAudit.check(request, plan)));
  }
}
