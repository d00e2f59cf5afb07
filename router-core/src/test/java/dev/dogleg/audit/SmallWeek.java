package dev.dogleg.audit;

import dev.dogleg.itinerary.DayChoice;
import dev.dogleg.itinerary.DayPlan;
import dev.dogleg.itinerary.DayShift;
import dev.dogleg.itinerary.DayTerms;
import dev.dogleg.itinerary.NoRoom;
import dev.dogleg.itinerary.NoRoom.Why;
import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.itinerary.PlannedStop.Kind;
import dev.dogleg.itinerary.Prices;
import dev.dogleg.itinerary.Proof;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.itinerary.WeekDay;
import dev.dogleg.itinerary.WeekNoRoom;
import dev.dogleg.itinerary.WeekPlan;
import dev.dogleg.itinerary.WeekRequest;
import dev.dogleg.time.TimeWindow;
import java.util.List;
import java.util.Optional;

/**
 * A week of two days worked by hand. Day 0 is {@link SmallDay} with a and b. Day 1 has no break and
 * serves c: leave 5, drive 30, c 35 to 75, drive 30, home 105; 60 s of driving are 3600.
 *
 * <p>Left out are d, which costs 900, and e, counted, which is impossible alone on both days: 30 +
 * 60 + 30 = 120, the days end at 115. c costs 100 more on day 1, a 500 more there. So 2520 + 3600 +
 * 100 + 900 = 7120.
 */
final class SmallWeek {
  static final Visit C = Visit.booked("c", 3, 40);
  static final Visit D = Visit.booked("d", 2, 10).waiting(0);
  static final Visit E = Visit.booked("e", 3, 60);

  private SmallWeek() {}

  static WeekRequest request() {
    return request(DayTerms.NONE);
  }

  static WeekRequest request(DayTerms ofDayOne) {
    DayShift free = SmallDay.shift(new TimeWindow(0, 110), 5, Optional.empty());
    return new WeekRequest(
        List.of(
            new WeekDay(SmallDay.shift(), SmallDay.travel(), DayTerms.NONE),
            new WeekDay(free, SmallDay.travel(), ofDayOne)),
        List.of(
            booking(true, 0, choice(0, SmallDay.VISIT_A, 0), choice(1, SmallDay.VISIT_A, 500)),
            booking(true, 0, choice(0, SmallDay.VISIT_B, 0)),
            booking(true, 0, choice(1, C, 100)),
            booking(false, 900, choice(1, D, 0)),
            booking(true, 0, choice(0, E, 0), choice(1, E, 0))),
        Prices.STARTER,
        1,
        1000);
  }

  static WeekBooking booking(boolean counted, long price, DayChoice... choices) {
    return new WeekBooking(choices[0].visit().id(), counted, price, List.of(choices));
  }

  static DayChoice choice(int day, Visit visit, long extra) {
    return new DayChoice(day, visit, extra);
  }

  static DayPlan dayOne() {
    DayShift free = SmallDay.shift(new TimeWindow(0, 110), 5, Optional.empty());
    List<PlannedStop> stops =
        List.of(
            new PlannedStop(Kind.LEAVE, 0, "", 5, 5, 5, 0, 0, 0, 10),
            new PlannedStop(Kind.VISIT, 3, "c", 35, 35, 75, 30, 0, 0, 10),
            new PlannedStop(Kind.HOME, 0, "", 105, 105, 105, 30, 0, 0, 10));
    Proof proof = new Proof(Proof.Kind.PROVEN_BEST, 0, 3600, 1);
    return new DayPlan(free, stops, List.of(), 0, 3600, proof);
  }

  static WeekNoRoom withoutD() {
    return left("d", on(1, new NoRoom("d", Why.NOT_WORTH_IT, "", 0, List.of())));
  }

  static WeekNoRoom withoutE() {
    NoRoom alone = new NoRoom("e", Why.IMPOSSIBLE_ALONE, "day-end", 5, List.of());
    return left("e", on(0, alone), on(1, alone));
  }

  static WeekNoRoom.OnDay on(int day, NoRoom reason) {
    return new WeekNoRoom.OnDay(day, reason);
  }

  static WeekNoRoom left(String id, WeekNoRoom.OnDay... days) {
    return new WeekNoRoom(id, List.of(days), Optional.empty());
  }

  static WeekPlan plan() {
    return plan(List.of(SmallDay.plan(), dayOne()), List.of(withoutD(), withoutE()), 1, 7120);
  }

  static WeekPlan plan(List<DayPlan> days, List<WeekNoRoom> noRoom, int counted, long cost) {
    Proof proof = new Proof(Proof.Kind.PROVEN_BEST, counted, cost, 1);
    return new WeekPlan(days, noRoom, counted, cost, proof);
  }

  /** Findings as text: {@code day:code measured/allowed}, joined by commas. */
  static String text(List<WeekFinding> findings) {
    return String.join(
        ", ",
        findings.stream()
            .map(
                f ->
                    "%d:%s %d/%d"
                        .formatted(
                            f.day(),
                            f.finding().code(),
                            f.finding().measured(),
                            f.finding().allowed()))
            .toList());
  }
}
