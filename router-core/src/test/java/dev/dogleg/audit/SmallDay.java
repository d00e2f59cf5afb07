package dev.dogleg.audit;

import dev.dogleg.itinerary.BreakRule;
import dev.dogleg.itinerary.DayPlan;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.DayShift;
import dev.dogleg.itinerary.Finding;
import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.itinerary.PlannedStop.Kind;
import dev.dogleg.itinerary.Prices;
import dev.dogleg.itinerary.Proof;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.time.TimeWindow;
import dev.dogleg.time.WorkDay;
import dev.dogleg.travel.BandedTravelTimes;
import dev.dogleg.travel.TrafficBands;
import dev.dogleg.travel.TravelMatrix;
import dev.dogleg.travel.TravelTimes;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A day of two visits worked by hand; one tick is a second.
 *
 * <pre>
 * home(0) -10-> a(1) -5-> b(2) -20-> home; metres 100, 50, 200; the other legs are 30 s, no metres.
 * leave home 5; a: 5 + 10 = 15, service 30 until 45; break 45 to 55; b: 55 + 5 = 60, service 20
 * until 80; home: 80 + 20 = 100.
 * Limits: shift 0..110 and 5 overtime; a arrives within 15..60; b done by 90; break of 10 starts
 * within 40..60.
 * Spare: home 115 - 100 = 15; b 90 - 80 = 10, less than 15; break and a and leaving: 10 by b.
 * Cost: 35 s of driving * 60 = 2100, metres 100 + 50 + 200 at 20 s a kilometre = 120 + 60 + 240.
 * </pre>
 */
final class SmallDay {
  static final int LEAVE = 0;
  static final int A = 1;
  static final int BREAK = 2;
  static final int B = 3;
  static final int HOME = 4;

  static final Visit VISIT_A = Visit.booked("a", 1, 30).arriving(List.of(new TimeWindow(15, 60)));
  static final Visit VISIT_B = Visit.booked("b", 2, 20).doneBy(90);
  static final BreakRule LUNCH = new BreakRule(10, new TimeWindow(40, 60));
  static final WorkDay DAY = new WorkDay(LocalDate.of(2026, 6, 1), ZoneOffset.UTC);

  private SmallDay() {}

  static TravelTimes travel() {
    int[][] seconds = {{0, 10, 30, 30}, {30, 0, 5, 30}, {20, 30, 0, 30}, {30, 30, 30, 0}};
    int[][] metres = {{0, 100, 0, 0}, {0, 0, 50, 0}, {200, 0, 0, 0}, {0, 0, 0, 0}};
    return times(seconds, metres);
  }

  static TravelTimes times(int[][] seconds, int[][] metres) {
    return new BandedTravelTimes(
        TravelMatrix.of(seconds, metres), TrafficBands.none(List.of("road")));
  }

  static DayShift shift(TimeWindow hours, int overtime, Optional<BreakRule> rule) {
    return new DayShift("g", "v", DAY, 0, 0, hours, overtime, rule);
  }

  static DayShift shift() {
    return shift(new TimeWindow(0, 110), 5, Optional.of(LUNCH));
  }

  static DayRequest request(DayShift shift, TravelTimes travel, Visit... visits) {
    return new DayRequest(shift, List.of(visits), travel, Prices.STARTER, 1, 1000);
  }

  static DayRequest request(Visit... visits) {
    return request(shift(), travel(), visits);
  }

  static DayRequest request() {
    return request(VISIT_A, VISIT_B);
  }

  static List<PlannedStop> stops() {
    return List.of(
        new PlannedStop(Kind.LEAVE, 0, "", 5, 5, 5, 0, 0, 0, 10),
        new PlannedStop(Kind.VISIT, 1, "a", 15, 15, 45, 10, 100, 0, 10),
        new PlannedStop(Kind.BREAK, 1, "a", 45, 45, 55, 0, 0, 0, 10),
        new PlannedStop(Kind.VISIT, 2, "b", 60, 60, 80, 5, 50, 0, 10),
        new PlannedStop(Kind.HOME, 0, "", 100, 100, 100, 20, 200, 0, 15));
  }

  static DayPlan plan() {
    return plan(shift(), stops());
  }

  static DayPlan plan(DayShift shift, List<PlannedStop> stops) {
    Proof proof = new Proof(Proof.Kind.PROVEN_BEST, 0, 2520, 10);
    return new DayPlan(shift, stops, List.of(), 0, 2520, proof);
  }

  /** The plan with one event replaced. */
  static DayPlan with(int index, PlannedStop stop) {
    List<PlannedStop> stops = new ArrayList<>(stops());
    stops.set(index, stop);
    return plan(shift(), stops);
  }

  /** Findings as text: {@code code@stop measured/allowed}, joined by commas. */
  static String text(List<Finding> findings) {
    return String.join(
        ", ",
        findings.stream()
            .map(f -> f.code() + "@" + f.stop() + " " + f.measured() + "/" + f.allowed())
            .toList());
  }
}
