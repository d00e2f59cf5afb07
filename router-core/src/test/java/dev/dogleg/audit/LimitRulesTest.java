package dev.dogleg.audit;

import static dev.dogleg.audit.SmallDay.LUNCH;
import static dev.dogleg.audit.SmallDay.VISIT_A;
import static dev.dogleg.audit.SmallDay.VISIT_B;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.dogleg.itinerary.BreakRule;
import dev.dogleg.itinerary.DayPlan;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.DayShift;
import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.itinerary.PlannedStop.Kind;
import dev.dogleg.itinerary.Proof;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.time.TimeWindow;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The plan of {@link SmallDay} stays; one limit of the request is moved by three seconds. */
class LimitRulesTest {
  private static final List<TimeWindow> UNTIL_12 = windows(0, 12);

  private static List<TimeWindow> windows(int... limits) {
    List<TimeWindow> windows = new ArrayList<>();
    for (int i = 0; i < limits.length; i += 2) {
      windows.add(new TimeWindow(limits[i], limits[i + 1]));
    }
    return windows;
  }

  private static void expect(String findings, Visit... visits) {
    assertEquals(
        findings, SmallDay.text(DayAudit.check(SmallDay.request(visits), SmallDay.plan())));
  }

  private static void expect(String findings, DayShift shift, long cost) {
    DayRequest request = SmallDay.request(shift, SmallDay.travel(), VISIT_A, VISIT_B);
    Proof proof = new Proof(Proof.Kind.PROVEN_BEST, 0, cost, 10);
    DayPlan plan = new DayPlan(shift, SmallDay.stops(), List.of(), 0, cost, proof);
    assertEquals(findings, SmallDay.text(DayAudit.check(request, plan)));
  }

  @Test
  void arrivalAfterTheLastWindow() {
    // 5 + 10 = 15, closes at 12, so 3 late.
    expect("arrives-late@1 15/12", VISIT_A.arriving(UNTIL_12), VISIT_B);
  }

  @Test
  void anEarlyVanWaitsForTheWindow() {
    // At the door at 15, opens at 18: the service may not start at 15.
    expect("starts-early@1 15/18", VISIT_A.arriving(windows(18, 60)), VISIT_B);
  }

  @Test
  void anArrivalBetweenTwoWindowsBelongsToTheLater() {
    expect("starts-early@1 15/18", VISIT_A.arriving(windows(0, 12, 18, 60)), VISIT_B);
  }

  @Test
  void bothEndsOfAWindowBelongToIt() {
    expect("", VISIT_A.arriving(windows(15, 25)), VISIT_B);
    expect("spare-seconds@0 10/0, spare-seconds@1 10/0", VISIT_A.arriving(windows(0, 15)), VISIT_B);
  }

  @Test
  void serviceDoneTooLate() {
    // 60 + 20 = 80, must be done by 77, so 3 late.
    expect("done-late@3 80/77", VISIT_A, VISIT_B.doneBy(77));
  }

  @Test
  void theStayIncludesTheBreakAtTheDoor() {
    // The break at the door ends at 55, the van must be gone by 52.
    expect("van-stays-long@1 55/52", VISIT_A.vanOnlyWithin(windows(0, 52)), VISIT_B);
    expect(
        "spare-seconds@0 10/0, spare-seconds@1 10/0, spare-seconds@2 10/0",
        VISIT_A.vanOnlyWithin(windows(0, 55)),
        VISIT_B);
  }

  @Test
  void theVanMayNotWaitAtADoorBeforeItsSpan() {
    expect("van-early@1 15/18", VISIT_A.vanOnlyWithin(windows(18, 100)), VISIT_B);
    expect("van-early@1 15/18", VISIT_A.vanOnlyWithin(windows(0, 12, 18, 100)), VISIT_B);
  }

  @Test
  void theVanMayNotComeAfterItsLastSpan() {
    expect("van-late@1 15/12", VISIT_A.vanOnlyWithin(UNTIL_12), VISIT_B);
  }

  @Test
  void aVisitThatMustBeFirstAndIsSecond() {
    expect("not-first@3 2/1", VISIT_A, VISIT_B.first(true));
    expect("", VISIT_A.first(true), VISIT_B);
  }

  @Test
  void leavingBeforeTheShift() {
    expect("leaves-early@0 5/8", shift(8, 110, 5, LUNCH), 2520);
  }

  @Test
  void comingHomeAfterTheLatestEnd() {
    // 92 + 5 = 97, home at 100, so 3 late; 8 s of overtime at 120 sixtieths each are 960.
    expect("ends-late@4 100/97", shift(0, 92, 5, LUNCH), 3480);
    // 95 + 5 = 100: on the second. 5 s of overtime cost 600; the spare at home is 0.
    String noSpare =
        "spare-seconds@0 10/0, spare-seconds@1 10/0, spare-seconds@2 10/0, "
            + "spare-seconds@3 10/0, spare-seconds@4 15/0";
    expect(noSpare, shift(0, 95, 5, LUNCH), 3120);
  }

  @Test
  void aBreakOutsideItsWindow() {
    // The break starts at 45. Only its start is bound.
    expect("break-late@2 45/42", shift(0, 110, 5, lunch(40, 42)), 2520);
    expect("break-early@2 45/48", shift(0, 110, 5, lunch(48, 60)), 2520);
    expect("", shift(0, 110, 5, lunch(45, 55)), 2520);
  }

  @Test
  void aBreakIsNeededWhereTheDayEndsAfterItOpens() {
    // Without the break: a 15 to 45, b 50 to 70, home at 90. Spare: b 90 - 70 = 20, home 115 - 90.
    List<PlannedStop> stops =
        List.of(
            new PlannedStop(Kind.LEAVE, 0, "", 5, 5, 5, 0, 0, 0, 20),
            new PlannedStop(Kind.VISIT, 1, "a", 15, 15, 45, 10, 100, 0, 20),
            new PlannedStop(Kind.VISIT, 2, "b", 50, 50, 70, 5, 50, 0, 20),
            new PlannedStop(Kind.HOME, 0, "", 90, 90, 90, 20, 200, 0, 25));
    assertEquals("break-missing@-1 0/1", withRule(stops, Optional.of(lunch(89, 95))));
    assertEquals("", withRule(stops, Optional.of(lunch(90, 95))), "ends when it opens: not needed");
    assertEquals("", withRule(stops, Optional.empty()));
  }

  private static String withRule(List<PlannedStop> stops, Optional<BreakRule> rule) {
    DayShift shift = SmallDay.shift(new TimeWindow(0, 110), 5, rule);
    DayRequest request = SmallDay.request(shift, SmallDay.travel(), VISIT_A, VISIT_B);
    return SmallDay.text(DayAudit.check(request, SmallDay.plan(shift, stops)));
  }

  private static BreakRule lunch(int from, int to) {
    return new BreakRule(10, new TimeWindow(from, to));
  }

  private static DayShift shift(int from, int to, int overtime, BreakRule rule) {
    return SmallDay.shift(new TimeWindow(from, to), overtime, Optional.of(rule));
  }
}
