package dev.dogleg.audit;

import static dev.dogleg.audit.SmallDay.VISIT_A;
import static dev.dogleg.audit.SmallDay.VISIT_B;
import static dev.dogleg.audit.SmallDay.stops;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.itinerary.DayPlan;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.DayShift;
import dev.dogleg.itinerary.Finding;
import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.itinerary.PlannedStop.Kind;
import dev.dogleg.itinerary.Prices;
import dev.dogleg.itinerary.Proof;
import dev.dogleg.time.TimeWindow;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** One figure of {@link SmallDay}'s plan is changed; one finding. */
class FigureRulesTest {
  private static void expect(String findings, DayPlan plan) {
    assertEquals(findings, SmallDay.text(DayAudit.check(SmallDay.request(), plan)));
  }

  private static void expectEdited(String findings, StopEdit edit, int index, int value) {
    expect(findings, SmallDay.plan(SmallDay.shift(), edit.in(stops(), index, value)));
  }

  private static DayPlan figures(long cost, Proof proof) {
    return new DayPlan(SmallDay.shift(), stops(), List.of(), 0, cost, proof);
  }

  @Test
  void everyDriveAndLengthIsTheRoadsOwn() {
    expectEdited("drive-seconds@3 6/5", StopEdit.DRIVE, SmallDay.B, 6);
    expectEdited("drive-seconds@0 1/0", StopEdit.DRIVE, SmallDay.LEAVE, 1);
    expectEdited("drive-seconds@2 5/0", StopEdit.DRIVE, SmallDay.BREAK, 5);
    expectEdited("drive-metres@4 199/200", StopEdit.METRES, SmallDay.HOME, 199);
  }

  @Test
  void waitingIsWhatIsLeft() {
    for (int k = 0; k < stops().size(); k++) {
      expectEdited("wait-seconds@" + k + " 2/0", StopEdit.WAIT, k, 2);
    }
  }

  @Test
  void spareIsTheLargestDelayThatBreaksNothing() {
    for (int k = 0; k < stops().size(); k++) {
      int right = stops().get(k).spareSeconds();
      expectEdited("spare-seconds@" + k + " 11/" + right, StopEdit.SPARE, k, 11);
    }
  }

  @Test
  void everyWaitingSecondStandsInOneRowAndIsPriced() {
    // Leaves at 1 and is at a's door at 11; 4 s until 15. The break starts 2 s late, 47 to 57; b is
    // reached at 62, served from 63 (1 s late) to 83, left at 86 (3 s late), home 106.
    // Waiting 4 + 2 + 1 + 3 = 10 s at 20 sixtieths = 200; cost 2520 + 200.
    // Spare: home 115 - 106 = 9; b may start at 70, so 70 - 62 = 8; break 55, b at 70: 55 + 10 + 5,
    // so 55 - 45 = 10; a may come at 25, 25 - 11 = 14; leaving 14.
    List<PlannedStop> waiting =
        List.of(
            new PlannedStop(Kind.LEAVE, 0, "", 1, 1, 1, 0, 0, 0, 14),
            new PlannedStop(Kind.VISIT, 1, "a", 11, 15, 45, 10, 100, 4, 14),
            new PlannedStop(Kind.BREAK, 1, "a", 45, 47, 57, 0, 0, 2, 10),
            new PlannedStop(Kind.VISIT, 2, "b", 62, 63, 86, 5, 50, 4, 8),
            new PlannedStop(Kind.HOME, 0, "", 106, 106, 106, 20, 200, 0, 9));
    Proof proof = new Proof(Proof.Kind.WORK_LIMIT, 0, 2520, 10);
    DayPlan plan = new DayPlan(SmallDay.shift(), waiting, List.of(), 0, 2720, proof);
    expect("", plan);
  }

  @Test
  void spareMayLingerUntilTheNextDoorMayBeReached() {
    // b may hold the van from 61 and must be done by 81: at its door at 61 exactly. The break ends
    // at 55 and the van lingers 1 s: break, a and leaving may be 1 s later, b not at all.
    List<TimeWindow> from61 = List.of(new TimeWindow(61, 110));
    DayRequest request = SmallDay.request(VISIT_A, VISIT_B.doneBy(81).vanOnlyWithin(from61));
    List<PlannedStop> lingering =
        List.of(
            new PlannedStop(Kind.LEAVE, 0, "", 5, 5, 5, 0, 0, 0, 0),
            new PlannedStop(Kind.VISIT, 1, "a", 15, 15, 45, 10, 100, 0, 1),
            new PlannedStop(Kind.BREAK, 1, "a", 45, 45, 56, 0, 0, 1, 0),
            new PlannedStop(Kind.VISIT, 2, "b", 61, 61, 81, 5, 50, 0, 0),
            new PlannedStop(Kind.HOME, 0, "", 101, 101, 101, 20, 200, 0, 14));
    assertEquals("", SmallDay.text(DayAudit.checkStops(request, lingering)));
    assertEquals(
        "spare-seconds@0 0/1, spare-seconds@2 0/1",
        SmallDay.text(DayAudit.checkRowFigures(request, lingering)));
  }

  @Test
  void costHasEveryTerm() {
    // Shift 2..90: end 100. Overtime 10 s * 120 = 1200; end (100 - 2) * 3 = 294; metres at 21 s a
    // kilometre: 100 * 1.26 = 126, 50 * 1.26 = 63, 200 * 1.26 = 252; driving 35 * 60 = 2100.
    assertCost(1200 + 294 + 126 + 63 + 252 + 2100, new Prices(21, 20, 120, 3));
    // Halves up, leg by leg: 50 m at 1 s a kilometre are 3.00, 100 m 6.00, 200 m 12.00.
    assertCost(2100 + 3 + 6 + 12, new Prices(1, 0, 0, 0));
  }

  @Test
  void halvesOfALegAreRoundedUp() {
    // 25 m at 1 s a kilometre are 1.5 sixtieths, so 2 on each of two legs: 4, not 3.
    int[][] metres = {{0, 25}, {25, 0}};
    DayShift shift = SmallDay.shift(new TimeWindow(0, 100), 0, Optional.empty());
    DayRequest request =
        new DayRequest(
            shift,
            List.of(VISIT_A),
            SmallDay.times(new int[][] {{0, 10}, {10, 0}}, metres),
            new Prices(1, 0, 0, 0),
            1,
            1);
    List<PlannedStop> stops =
        List.of(
            new PlannedStop(Kind.LEAVE, 0, "", 5, 5, 5, 0, 0, 0, 45),
            new PlannedStop(Kind.VISIT, 1, "a", 15, 15, 45, 10, 25, 0, 45),
            new PlannedStop(Kind.HOME, 0, "", 55, 55, 55, 10, 25, 0, 45));
    Proof proof = new Proof(Proof.Kind.PROVEN_BEST, 0, 1204, 1);
    DayPlan plan = new DayPlan(shift, stops, List.of(), 0, 1204, proof);
    assertEquals("", SmallDay.text(DayAudit.check(request, plan)));
  }

  private static void assertCost(long cost, Prices prices) {
    DayShift shift = SmallDay.shift(new TimeWindow(2, 90), 25, Optional.of(SmallDay.LUNCH));
    DayRequest request =
        new DayRequest(shift, List.of(VISIT_A, VISIT_B), SmallDay.travel(), prices, 1, 1);
    Proof proof = new Proof(Proof.Kind.PROVEN_BEST, 0, cost, 10);
    DayPlan plan = new DayPlan(shift, stops(), List.of(), 0, cost, proof);
    assertEquals("", SmallDay.text(DayAudit.check(request, plan)));
  }

  @Test
  void costsBeyondAnIntAreSummedRight() {
    // 2,000,000,000 m at 3600 s a kilometre: 4.32e11 sixtieths.
    int far = 2_000_000_000;
    DayShift shift = SmallDay.shift(new TimeWindow(0, 100), 0, Optional.empty());
    DayRequest request =
        new DayRequest(
            shift,
            List.of(VISIT_A, VISIT_B.doneBy(172_800).waiting(1L << 38)),
            SmallDay.times(
                new int[][] {{0, 10, 10}, {10, 0, 9}, {9, 9, 0}},
                new int[][] {{0, far, 0}, {0, 0, 0}, {0, 0, 0}}),
            new Prices(3600, 0, 0, 0),
            1,
            1);
    List<PlannedStop> stops =
        List.of(
            new PlannedStop(Kind.LEAVE, 0, "", 5, 5, 5, 0, 0, 0, 45),
            new PlannedStop(Kind.VISIT, 1, "a", 15, 15, 45, 10, far, 0, 45),
            new PlannedStop(Kind.HOME, 0, "", 55, 55, 55, 10, 0, 0, 45));
    List<Finding> found =
        DayAudit.checkFigures(
            request,
            new DayPlan(shift, stops, List.of(), 0, 7, new Proof(Proof.Kind.WORK_LIMIT, 0, 7, 1)));
    long right = 20 * 60 + 432_000_000_000L + 274_877_906_944L;
    assertEquals("cost@-1 7/" + right + ", no-room-missing@-1 0/1", SmallDay.text(found));
    assertTrue(found.get(0).text().contains("drive 1200 + length 432000000000 + waiting 0"));
  }

  @Test
  void theCostIsTheSumAndTheProofDoesNotContradictIt() {
    Proof.Kind best = Proof.Kind.PROVEN_BEST;
    Proof.Kind limit = Proof.Kind.WORK_LIMIT;
    expect("cost@-1 2521/2520", figures(2521, new Proof(best, 0, 2521, 1)));
    expect("proof-cost@-1 2519/2520", figures(2520, new Proof(best, 0, 2519, 1)));
    expect("proof-cost@-1 2521/2520", figures(2520, new Proof(limit, 0, 2521, 1)));
    expect("", figures(2520, new Proof(limit, 0, 2519, 1)));
    expect("proof-left-out@-1 1/0", figures(2520, new Proof(limit, 1, 2519, 1)));
  }

  @Test
  void aPlanForAnotherShiftIsNotThisOne() {
    DayShift other = SmallDay.shift(new TimeWindow(0, 111), 5, Optional.of(SmallDay.LUNCH));
    expect("other-shift@-1 1/0", SmallDay.plan(other, stops()));
  }
}
