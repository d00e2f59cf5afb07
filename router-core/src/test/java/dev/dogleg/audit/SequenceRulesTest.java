package dev.dogleg.audit;

import static dev.dogleg.audit.SmallDay.VISIT_A;
import static dev.dogleg.audit.SmallDay.VISIT_B;
import static dev.dogleg.audit.SmallDay.stops;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.DayShift;
import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.itinerary.PlannedStop.Kind;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.time.TimeWindow;
import dev.dogleg.travel.TravelTimes;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** One edit of the events of {@link SmallDay}; one finding. */
class SequenceRulesTest {
  private static final DayShift NO_BREAK =
      SmallDay.shift(new TimeWindow(0, 110), 5, Optional.empty());

  private static void expect(String findings, List<PlannedStop> stops) {
    assertEquals(findings, SmallDay.text(DayAudit.checkStops(SmallDay.request(), stops)));
  }

  private static void expectWithoutBreakRule(String findings, List<PlannedStop> stops) {
    DayRequest request = SmallDay.request(NO_BREAK, SmallDay.travel(), VISIT_A, VISIT_B);
    assertEquals(findings, SmallDay.text(DayAudit.checkStops(request, stops)));
  }

  private static List<PlannedStop> without(int index) {
    List<PlannedStop> edited = new ArrayList<>(stops());
    edited.remove(index);
    return edited;
  }

  private static List<PlannedStop> renamed(int index, Kind kind, String id) {
    List<PlannedStop> edited = new ArrayList<>(stops());
    edited.set(index, StopEdit.named(stops().get(index), kind, id));
    return edited;
  }

  private static PlannedStop row(
      Kind kind, int place, String id, int arrive, int start, int leave) {
    return new PlannedStop(kind, place, id, arrive, start, leave, 0, 0, 0, 0);
  }

  @Test
  void theDayBeginsByLeavingAndEndsAtHome() {
    expect("leave-missing@0 0/1", without(SmallDay.LEAVE));
    expect("home-missing@3 0/1", without(SmallDay.HOME));
  }

  @Test
  void noSecondLeavingAndNoHomeOnTheWay() {
    List<PlannedStop> twice = new ArrayList<>(stops());
    twice.add(0, stops().get(0));
    expect("stray-event@1 1/0", twice);
    expect("stray-visit@4 1/0", renamed(SmallDay.HOME, Kind.HOME, "a"));
  }

  @Test
  void aDayWithoutVisitsIsNotDriven() {
    expect("no-visit@-1 2/0", List.of(stops().get(0), row(Kind.HOME, 0, "", 5, 5, 5)));
    expect("", List.of());
  }

  @Test
  void visitsAreKnownAndMadeOnce() {
    expect("unknown-visit@3 1/0", renamed(SmallDay.B, Kind.VISIT, "z"));
    // a again at its own door: 45 + 0 = 45, 30 of service until 75, home 75 + 30 = 105.
    List<PlannedStop> twice = new ArrayList<>(stops().subList(0, 2));
    twice.add(row(Kind.VISIT, 1, "a", 45, 45, 75));
    twice.add(row(Kind.HOME, 0, "", 105, 105, 105));
    expectWithoutBreakRule("visit-twice@2 2/1", twice);
  }

  @Test
  void everyEventIsAtItsPlace() {
    for (int k = 0; k < stops().size(); k++) {
      int right = stops().get(k).place();
      expect("wrong-place@" + k + " 3/" + right, StopEdit.PLACE.in(stops(), k, 3));
    }
    int noPlace = 99;
    expect("wrong-place@3 99/2", StopEdit.PLACE.in(stops(), SmallDay.B, noPlace));
  }

  @Test
  void theBreakIsTakenAtTheDoorItNames() {
    expect("break-door@2 0/1", renamed(SmallDay.BREAK, Kind.BREAK, "z"));
  }

  @Test
  void noBreakAtTheEdgesOfTheDay() {
    // Break at a's door before a: at the door 15, too early for the window 40..60, so 40 to 50;
    // a 50 to 80, b 85 to 105, home 125. With b free and a longer shift only the position is wrong.
    DayShift longShift = SmallDay.shift(new TimeWindow(0, 200), 5, Optional.of(SmallDay.LUNCH));
    DayRequest request =
        SmallDay.request(longShift, SmallDay.travel(), VISIT_A, VISIT_B.doneBy(200));
    List<PlannedStop> before =
        List.of(
            row(Kind.LEAVE, 0, "", 5, 5, 5),
            row(Kind.BREAK, 1, "a", 15, 40, 50),
            row(Kind.VISIT, 1, "a", 15, 50, 80),
            row(Kind.VISIT, 2, "b", 85, 85, 105),
            row(Kind.HOME, 0, "", 125, 125, 125));
    assertEquals("break-before-first@1 1/0", SmallDay.text(DayAudit.checkStops(request, before)));
    // b 50 to 60 only as a stop of 10, break 60 to 70, home 90.
    DayRequest shortB =
        SmallDay.request(longShift, SmallDay.travel(), VISIT_A, Visit.booked("b", 2, 10));
    List<PlannedStop> after =
        List.of(
            row(Kind.LEAVE, 0, "", 5, 5, 5),
            row(Kind.VISIT, 1, "a", 15, 15, 45),
            row(Kind.VISIT, 2, "b", 50, 50, 60),
            row(Kind.BREAK, 2, "b", 60, 60, 70),
            row(Kind.HOME, 0, "", 90, 90, 90));
    assertEquals("break-after-last@3 1/0", SmallDay.text(DayAudit.checkStops(shortB, after)));
  }

  @Test
  void aBreakBeforeTheServiceIsSound() {
    // b: at the door at 50, break 50 to 60, service 60 to 80, home 100.
    List<PlannedStop> stops =
        List.of(
            row(Kind.LEAVE, 0, "", 5, 5, 5),
            row(Kind.VISIT, 1, "a", 15, 15, 45),
            row(Kind.BREAK, 2, "b", 50, 50, 60),
            row(Kind.VISIT, 2, "b", 50, 60, 80),
            row(Kind.HOME, 0, "", 100, 100, 100));
    expect("", stops);
    expect("arrival@3 52/50", StopEdit.ARRIVE.in(stops, 3, 52));
    expect("starts-too-soon@3 57/60", StopEdit.START.in(stops, 3, 57));
  }

  @Test
  void oneBreakOnlyAndNoneThatIsNotNeeded() {
    List<PlannedStop> twice = new ArrayList<>(stops().subList(0, 3));
    twice.add(row(Kind.BREAK, 1, "z", 55, 55, 65)); // 55 + 10 = 65; b 70 to 90; home 110
    twice.add(row(Kind.VISIT, 2, "b", 70, 70, 90));
    twice.add(row(Kind.HOME, 0, "", 110, 110, 110));
    expect("break-twice@3 2/1", twice);
    expectWithoutBreakRule("break-not-needed@2 1/0", stops());
    List<PlannedStop> oneVisit = new ArrayList<>(stops().subList(0, 3));
    oneVisit.add(row(Kind.HOME, 0, "", 85, 85, 85)); // 55 + 30 = 85
    expect("break-not-needed@2 1/0", oneVisit);
  }

  @Test
  void arrivalIsLeavingPlusDrive() {
    // 55 + 5 = 60, not 58.
    expect("arrival@3 58/60", StopEdit.ARRIVE.in(stops(), SmallDay.B, 58));
    // The service ends at 15 + 30 = 45; there the break's row begins.
    expect("arrival@2 43/45", StopEdit.ARRIVE.in(stops(), SmallDay.BREAK, 43));
  }

  @Test
  void timesOfOneEventStandInOrder() {
    expect("start-not-arrival@3 57/60", StopEdit.START.in(stops(), SmallDay.B, 57));
    expect("leave-not-start@4 103/100", StopEdit.LEAVE.in(stops(), SmallDay.HOME, 103));
    expect("starts-too-soon@2 45/46", StopEdit.LEAVE.in(stops(), SmallDay.A, 46));
    expect("time-range@0 -5/0, start-not-arrival@0 5/-5", StopEdit.ARRIVE.in(stops(), 0, -5));
  }

  @Test
  void serviceAndBreakHaveTheirLength() {
    // b left at 77 after 17 of 20 seconds; home 77 + 20 = 97.
    List<PlannedStop> stops = StopEdit.LEAVE.in(stops(), SmallDay.B, 77);
    stops.set(SmallDay.HOME, row(Kind.HOME, 0, "", 97, 97, 97));
    expect("service-short@3 17/20", stops);
    // The break left at 52 after 7 of 10 seconds; b 57 to 77, home 97.
    List<PlannedStop> hasty = StopEdit.LEAVE.in(stops(), SmallDay.BREAK, 52);
    hasty.set(SmallDay.B, row(Kind.VISIT, 2, "b", 57, 57, 77));
    hasty.set(SmallDay.HOME, row(Kind.HOME, 0, "", 97, 97, 97));
    expect("break-short@2 7/10", hasty);
  }

  @Test
  void aLegWithoutARoadIsNoNumber() {
    int[][] seconds = {{0, 10, 30}, {30, 0, -1}, {20, 30, 0}};
    TravelTimes travel = SmallDay.times(seconds, new int[3][3]);
    DayRequest request = SmallDay.request(SmallDay.shift(), travel, VISIT_A, VISIT_B);
    assertEquals("no-road@3 0/1", SmallDay.text(DayAudit.checkStops(request, stops())));
  }
}
