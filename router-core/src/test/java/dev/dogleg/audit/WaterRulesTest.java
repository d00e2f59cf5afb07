package dev.dogleg.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.dogleg.itinerary.BreakRule;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.DayRule;
import dev.dogleg.itinerary.DayShift;
import dev.dogleg.itinerary.DayTerms;
import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.itinerary.PlannedStop.Kind;
import dev.dogleg.itinerary.WaterPlace;
import dev.dogleg.itinerary.WaterTerms;
import dev.dogleg.itinerary.WaterUse;
import dev.dogleg.time.TimeWindow;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * {@link SmallDay} with tanks: a uses 6 fresh, b 5; the tanks hold 10; water is at place 3 (30 s
 * from anywhere) and takes 4 s.
 *
 * <p>Leave 0, a 10 to 45, water 75 to 79, b 109 to 129, home 149; the shift ends at 200.
 */
class WaterRulesTest {
  private static final Optional<BreakSpot> NO_BREAK = Optional.empty();

  private static DayRequest day(WaterTerms water, List<DayRule> rules, Optional<BreakRule> rest) {
    DayShift shift = SmallDay.shift(new TimeWindow(0, 200), 0, rest);
    DayRequest free =
        SmallDay.request(shift, SmallDay.travel(), SmallDay.VISIT_A, SmallDay.VISIT_B.doneBy(200));
    return new DayRequest(
        shift,
        free.visits(),
        free.travel(),
        free.prices(),
        new DayTerms(rules, Optional.of(water), Optional.empty()),
        1,
        1);
  }

  private static WaterTerms water(int most) {
    Map<String, WaterUse> uses = Map.of("a", new WaterUse(6, 1), "b", new WaterUse(5, 1));
    return new WaterTerms(new WaterUse(10, 10), uses, List.of(new WaterPlace(3, 4)), most);
  }

  private static DayRequest day() {
    return day(water(1), List.of(), Optional.empty());
  }

  private static ReTimedDay time(DayRequest day, WaterSpot... water) {
    return DayReTiming.retime(day, List.of("a", "b"), NO_BREAK, List.of(water));
  }

  private static String breaches(DayRequest day, WaterSpot... water) {
    return SmallDay.text(time(day, water).breaches());
  }

  private static WaterSpot after(String id) {
    return new WaterSpot(id, 3);
  }

  @Test
  void aWaterStopStaysWhereThePersonPutItAndHasItsFigures() {
    ReTimedDay timed = time(day(), after("a"));
    assertEquals("", SmallDay.text(timed.breaches()));
    // Nothing binds after a but the end: 200 - 149 = 51.
    PlannedStop stop = timed.stops().get(2);
    assertEquals(
        new PlannedStop(Kind.WATER, 3, "", 75, 75, 79, 30, 0, 0, 51), stop, timed.toString());
    assertEquals(149, timed.stops().get(4).arriveSeconds());
    assertEquals("", SmallDay.text(DayAudit.checkRowFigures(day(), timed.stops())));
  }

  @Test
  void tanksThatDoNotLastAreSaid() {
    assertEquals("tank-fresh@2 11/10", breaches(day()));
    Map<String, WaterUse> grey = Map.of("a", new WaterUse(1, 7), "b", new WaterUse(1, 8));
    WaterTerms full = new WaterTerms(new WaterUse(10, 14), grey, List.of(), 0);
    assertEquals("tank-grey@2 15/14", breaches(day(full, List.of(), Optional.empty())));
    WaterTerms justEnough = new WaterTerms(new WaterUse(10, 15), grey, List.of(), 0);
    assertEquals("", breaches(day(justEnough, List.of(), Optional.empty())));
  }

  @Test
  void waterStandsBetweenTwoVisitsOnceAndNotTooOften() {
    // By the water a is reached at 64.
    assertEquals(
        "water-before-first@1 1/0, arrives-late@2 64/60, tank-fresh@3 11/10",
        breaches(day(), after("")));
    assertEquals("tank-fresh@2 11/10, water-after-last@3 1/0", breaches(day(), after("b")));
    DayRequest two = day(water(2), List.of(), Optional.empty());
    assertEquals("water-twice@3 2/1", breaches(two, after("a"), after("a")));
    DayRequest none = day(water(0), List.of(), Optional.empty());
    assertEquals("water-too-often@2 1/0", breaches(none, after("a")));
  }

  @Test
  void waterThatCannotBeHadIsSaidAndNotTimed() {
    DayRequest dry = SmallDay.request();
    Optional<BreakSpot> lunch = Optional.of(new BreakSpot("a", true));
    ReTimedDay timed =
        DayReTiming.retime(dry, List.of("a", "b"), lunch, List.of(new WaterSpot("a", 3)));
    assertEquals("water-not-planned@-1 1/0", SmallDay.text(timed.breaches()));
    assertEquals("tank-fresh@2 11/10, water-place@-1 1/0", breaches(day(), new WaterSpot("a", 2)));
    assertEquals("tank-fresh@2 11/10, water-door@-1 0/1", breaches(day(), after("z")));
  }

  @Test
  void aWaterRowOfAPlanHasItsPlaceAndItsSeconds() {
    List<PlannedStop> sound = time(day(), after("a")).stops();
    assertEquals("water-short@2 3/4, arrival@3 109/108", edited(StopEdit.LEAVE, sound, 78));
    // Place 2 is b's door: 45 + 5 = 50, and from there no drive.
    assertEquals(
        "water-place@2 1/0, arrival@2 75/50, arrival@3 109/79", edited(StopEdit.PLACE, sound, 2));
    List<PlannedStop> named = new ArrayList<>(sound);
    named.set(2, StopEdit.named(sound.get(2), Kind.WATER, "a"));
    assertEquals("stray-visit@2 1/0", SmallDay.text(DayAudit.checkStops(day(), named)));
    assertEquals("wait-seconds@2 1/0", SmallDay.text(figures(StopEdit.WAIT.in(sound, 2, 1))));
    assertEquals("spare-seconds@2 50/51", SmallDay.text(figures(StopEdit.SPARE.in(sound, 2, 50))));
  }

  private static List<dev.dogleg.itinerary.Finding> figures(List<PlannedStop> stops) {
    return DayAudit.checkRowFigures(day(), stops);
  }

  private static String edited(StopEdit field, List<PlannedStop> stops, int value) {
    return SmallDay.text(DayAudit.checkStops(day(), field.in(stops, 2, value)));
  }

  @Test
  void noBreakIsTakenAtAWaterPlaceAndWaterIsNoVisitBetween() {
    // b directly after a needs 7 s of cleaning, water and break between or not: 20 + 7.
    DayRule cleaning =
        new DayRule.Changeover("cleaning", java.util.Set.of("a"), java.util.Set.of("b"), 7);
    BreakRule rest = new BreakRule(10, new TimeWindow(40, 120));
    DayRequest day = day(water(1), List.of(cleaning), Optional.of(rest));
    BreakSpot beforeB = new BreakSpot("b", false);
    ReTimedDay timed =
        DayReTiming.retime(
            day, List.of("a", "b"), Optional.of(beforeB), List.of(new WaterSpot("a", 3)));
    assertEquals("", SmallDay.text(timed.breaches()));
    // b's door at 109, break until 119, b until 146.
    assertEquals(146, timed.stops().get(4).leaveSeconds());
    List<PlannedStop> atWater = new ArrayList<>(timed.stops());
    PlannedStop pause = atWater.remove(3);
    atWater.add(2, pause);
    List<String> codes =
        DayAudit.checkStops(day, atWater).stream().map(f -> f.code()).distinct().toList();
    assertEquals(true, codes.contains("break-door"), codes.toString());
  }
}
