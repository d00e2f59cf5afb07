package dev.dogleg.audit;

import static dev.dogleg.audit.SmallWeek.dayOne;
import static dev.dogleg.audit.SmallWeek.left;
import static dev.dogleg.audit.SmallWeek.on;
import static dev.dogleg.audit.SmallWeek.withoutD;
import static dev.dogleg.audit.SmallWeek.withoutE;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.dogleg.itinerary.DayChoice;
import dev.dogleg.itinerary.DayPlan;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.NoRoom;
import dev.dogleg.itinerary.NoRoom.Why;
import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.itinerary.PlannedStop.Kind;
import dev.dogleg.itinerary.Proof;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.itinerary.WeekNoRoom;
import dev.dogleg.itinerary.WeekNoRoom.Change;
import dev.dogleg.itinerary.WeekNoRoom.ChangeKind;
import dev.dogleg.itinerary.WeekPlan;
import dev.dogleg.itinerary.WeekRequest;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** One edit of {@link SmallWeek}'s plan; one finding. */
class WeekAuditTest {
  private static void expect(String findings, WeekPlan plan) {
    assertEquals(findings, SmallWeek.text(WeekAudit.check(SmallWeek.request(), plan)));
  }

  private static WeekPlan days(DayPlan first, DayPlan second) {
    return SmallWeek.plan(List.of(first, second), List.of(withoutD(), withoutE()), 1, 7120);
  }

  private static void expectLeft(String findings, WeekNoRoom... noRoom) {
    List<DayPlan> days = List.of(SmallDay.plan(), dayOne());
    expect(findings, SmallWeek.plan(days, List.of(noRoom), 1, 7120));
  }

  private static NoRoom why(String id, Why why, String rule, int shortBy, String... with) {
    return new NoRoom(id, why, rule, shortBy, List.of(with));
  }

  @Test
  void theWeekWorkedByHandIsSound() {
    expect("", SmallWeek.plan());
  }

  @Test
  void everyDayIsAuditedAsADay() {
    DayPlan late = SmallDay.with(SmallDay.B, StopEdit.LEAVE.set(SmallDay.stops().get(3), 79));
    expect("0:service-short 19/20, 0:wait-seconds 0/-1, 0:arrival 100/99", days(late, dayOne()));
    DayPlan dear = new DayPlan(dayOne().shift(), dayOne().stops(), List.of(), 0, 3601, proof(3601));
    expect("1:cost 3601/3600, -1:cost 7120/7121", days(SmallDay.plan(), dear));
  }

  private static Proof proof(long cost) {
    return new Proof(Proof.Kind.PROVEN_BEST, 0, cost, 1);
  }

  @Test
  void daysAreThoseAskedFor() {
    WeekPlan one = SmallWeek.plan(List.of(SmallDay.plan()), List.of(), 1, 7120);
    expect("-1:days-count 1/2", one);
  }

  @Test
  void aDayLeavesNobodyOutOfItsOwn() {
    NoRoom stray = why("d", Why.NOT_FOUND, "", 0);
    DayPlan day =
        new DayPlan(dayOne().shift(), dayOne().stops(), List.of(stray), 0, 3600, proof(3600));
    expect("1:no-room-unknown 1/0", days(SmallDay.plan(), day));
  }

  @Test
  void aBookingIsServedOnOneOfItsChoices() {
    // b may be served on day 0 only; put in c's place on day 1 it is no visit of that day, and c is
    // served nowhere.
    List<PlannedStop> stops = new ArrayList<>(dayOne().stops());
    stops.set(1, StopEdit.named(stops.get(1), Kind.VISIT, "b"));
    DayPlan strange = new DayPlan(dayOne().shift(), stops, List.of(), 0, 3600, proof(3600));
    List<WeekFinding> found = WeekAudit.check(SmallWeek.request(), days(SmallDay.plan(), strange));
    List<String> codes = found.stream().map(f -> f.day() + ":" + f.finding().code()).toList();
    assertEquals(
        List.of(
            "1:not-a-choice",
            "1:unknown-visit",
            "-1:booking-twice",
            "-1:left-out-count",
            "-1:no-room-missing",
            "-1:cost"),
        codes);
  }

  /** 201 visits, the first of a sound day over and over, none of them timed. */
  @Test
  void aDayHasNoMoreVisitsThanOneMayAskFor() {
    List<WeekBooking> bookings = new ArrayList<>();
    List<PlannedStop> stops = new ArrayList<>(List.of(dayOne().stops().get(0)));
    for (int k = 0; k <= DayRequest.MOST_VISITS; k++) {
      String id = "v%03d".formatted(k);
      DayChoice choice = new DayChoice(0, Visit.booked(id, 1, 10), 0);
      bookings.add(new WeekBooking(id, true, 0, List.of(choice)));
      stops.add(StopEdit.named(dayOne().stops().get(1), Kind.VISIT, id));
    }
    WeekRequest small = SmallWeek.request();
    WeekRequest request =
        new WeekRequest(small.days(), bookings, small.prices(), small.seed(), small.effort());
    DayPlan crowded = new DayPlan(dayOne().shift(), stops, List.of(), 0, 0, proof(0));
    DayPlan empty = new DayPlan(dayOne().shift(), List.of(), List.of(), 0, 0, proof(0));
    WeekPlan plan = new WeekPlan(List.of(crowded, empty), List.of(), 0, 0, proof(0));
    List<WeekFinding> found = WeekAudit.check(request, plan);
    assertEquals("too-many-visits", found.get(0).finding().code(), found.toString());
    assertEquals(201, found.get(0).finding().measured());
  }

  @Test
  void everyBookingLeftOutIsNamedOnce() {
    expectLeft("-1:no-room-missing 0/1", withoutD());
    expectLeft("-1:no-room-twice 2/1", withoutD(), withoutE(), withoutE());
    expectLeft("-1:no-room-order 1/0", withoutE(), withoutD());
    NoRoom nothing = why("z", Why.NOT_FOUND, "", 0);
    expectLeft("-1:no-room-unknown 1/0", withoutD(), withoutE(), left("z", on(0, nothing)));
    NoRoom made = why("c", Why.NOT_FOUND, "", 0);
    expectLeft("-1:no-room-served 1/0", left("c", on(1, made)), withoutD(), withoutE());
  }

  @Test
  void everyChoiceHasItsReasonAndItIsTrue() {
    NoRoom alone = why("e", Why.IMPOSSIBLE_ALONE, "day-end", 5);
    expectLeft("-1:reason-days 1/2", withoutD(), left("e", on(0, alone)));
    NoRoom shorter = why("e", Why.IMPOSSIBLE_ALONE, "day-end", 4);
    expectLeft("1:reason-short-by-untrue 4/5", withoutD(), left("e", on(0, alone), on(1, shorter)));
    NoRoom other = why("d", Why.IMPOSSIBLE_ALONE, "day-end", 5);
    expectLeft("0:reason-other-visit 1/0", withoutD(), left("e", on(0, other), on(1, alone)));
    // d beside c: 30 + 40 + 30 + 10 + 20 = 130: truly no room, the day ends at 115.
    NoRoom conflict = why("d", Why.IMPOSSIBLE_TOGETHER, "", 0, "c");
    expectLeft("", left("d", on(1, conflict)), withoutE());
  }

  @Test
  void countCostAndProofAreThoseOfTheWeek() {
    List<DayPlan> days = List.of(SmallDay.plan(), dayOne());
    List<WeekNoRoom> noRoom = List.of(withoutD(), withoutE());
    expect("-1:left-out-count 0/1", SmallWeek.plan(days, noRoom, 0, 7120));
    expect("-1:cost 7020/7120", SmallWeek.plan(days, noRoom, 1, 7020));
    Proof below = new Proof(Proof.Kind.PROVEN_BEST, 1, 7119, 1);
    expect("-1:proof-cost 7119/7120", new WeekPlan(days, noRoom, 1, 7120, below));
    Proof above = new Proof(Proof.Kind.WORK_LIMIT, 2, 0, 1);
    expect("-1:proof-left-out 2/1", new WeekPlan(days, noRoom, 1, 7120, above));
    Proof open = new Proof(Proof.Kind.WORK_LIMIT, 0, 9999, 1);
    expect("", new WeekPlan(days, noRoom, 1, 7120, open));
  }

  @Test
  void aProofForgetsNoDayWithRoom() {
    // Without c the second day stands empty, and c has room there.
    DayPlan empty = new DayPlan(dayOne().shift(), List.of(), List.of(), 0, 0, proof(0));
    WeekNoRoom withoutC = left("c", on(1, why("c", Why.NOT_FOUND, "", 0)));
    List<DayPlan> days = List.of(SmallDay.plan(), empty);
    List<WeekNoRoom> noRoom = List.of(withoutC, withoutD(), withoutE());
    expect("1:proof-refuted 2/1", SmallWeek.plan(days, noRoom, 2, 2520 + 900));
  }

  @Test
  void theChangeThatMakesRoomMakesRoom() {
    // e alone needs 120; with c beside 160, so an end later by 5 s is not enough, by 45 s it is.
    expectLeft("", withoutD(), changed(new Change(ChangeKind.LATER_END, 1, 45, "", -1)));
    expectLeft(
        "1:change-untrue 1/0",
        withoutD(),
        changed(new Change(ChangeKind.LATER_END, 1, 44, "", -1)));
    expectLeft(
        "1:change-untrue 1/0",
        withoutD(),
        changed(new Change(ChangeKind.WIDER_WINDOW, 1, 900, "", -1)));
    // a goes to day 1: there is no room beside c.
    expectLeft(
        "0:change-untrue 1/0",
        withoutD(),
        changed(new Change(ChangeKind.MOVE_OTHER, 0, 0, "a", 1)));
    expectLeft(
        "-1:change-form 1/0", withoutD(), changed(new Change(ChangeKind.LATER_END, 1, 0, "", -1)));
    expectLeft(
        "-1:change-form 1/0", withoutD(), changed(new Change(ChangeKind.MOVE_OTHER, 0, 0, "b", 1)));
    expectLeft(
        "-1:change-form 1/0", withoutD(), changed(new Change(ChangeKind.LATER_END, 2, 9, "", -1)));
  }

  private static WeekNoRoom changed(Change change) {
    return new WeekNoRoom("e", withoutE().days(), Optional.of(change));
  }
}
