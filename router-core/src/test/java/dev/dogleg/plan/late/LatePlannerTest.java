package dev.dogleg.plan.late;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.audit.DayAudit;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.DayShift;
import dev.dogleg.itinerary.Prices;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WaterUse;
import dev.dogleg.plan.late.LateChoice.Kind;
import dev.dogleg.time.TimeWindow;
import dev.dogleg.time.WorkDay;
import dev.dogleg.travel.BandedTravelTimes;
import dev.dogleg.travel.TrafficBands;
import dev.dogleg.travel.TravelMatrix;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The choices: which are offered, which is recommended, and that each is sound. */
class LatePlannerTest {
  private static final int HOUR = 3_600;

  /** Doors a, b, c at minutes 10, 20, 30 of a road, home at 0; each takes an hour. */
  private static RestOfDay road(
      int now, List<String> done, List<Promise> promises, Set<String> movable) {
    int[][] seconds = new int[4][4];
    int[][] metres = new int[4][4];
    for (int i = 0; i < 4; i++) {
      for (int j = 0; j < 4; j++) {
        seconds[i][j] = 600 * Math.abs(i - j);
        metres[i][j] = 5_000 * Math.abs(i - j);
      }
    }
    DayShift shift =
        new DayShift(
            "g",
            "v",
            new WorkDay(LocalDate.of(2026, 3, 3), ZoneId.of("Etc/UTC")),
            0,
            0,
            new TimeWindow(8 * HOUR, 13 * HOUR),
            HOUR,
            Optional.empty());
    DayRequest day =
        new DayRequest(
            shift,
            List.of(
                Visit.booked("a", 1, HOUR), Visit.booked("b", 2, HOUR), Visit.booked("c", 3, HOUR)),
            new BandedTravelTimes(
                TravelMatrix.of(seconds, metres),
                new TrafficBands(
                    List.of("road"), List.of(new TrafficBands.Band("", 0, List.of(1000))))),
            Prices.STARTER,
            1,
            DayRequest.USUAL_EFFORT);
    return new RestOfDay(
        day,
        promises,
        List.of("a", "b", "c"),
        done,
        OptionalInt.empty(),
        Set.of(),
        done.size(),
        now,
        false,
        WaterUse.NONE,
        0,
        movable);
  }

  private static Promise told(String id, int from, int to) {
    return new Promise(id, Promise.Kind.TOLD, List.of(new TimeWindow(from, to)));
  }

  @Test
  void whatIsKeptNeedsNoOtherOrder() {
    // 9:00 at a; b is 10 minutes on, told until 9:15.
    LateAnswer answer =
        LatePlanner.plan(
            road(9 * HOUR, List.of("a"), List.of(told("b", 9 * HOUR, 9 * HOUR + 900)), Set.of()));
    assertEquals(1, answer.choices().size());
    LateChoice keep = answer.choices().get(0);
    assertEquals(List.of("a", "b", "c"), keep.order());
    assertEquals(Lateness.NONE, keep.lateness());
    assertEquals(List.of(0), keep.promises().stream().map(PromiseKept::lateSeconds).toList());
    assertTrue(keep.recommended() && keep.proven());
  }

  @Test
  void anotherOrderThatKeepsATimeMoreIsRecommended() {
    // At a at 10:00: b then c is at c at 10:10 + 1:00 + 0:10 = 11:20; straight on it is 10:20.
    LateAnswer answer =
        LatePlanner.plan(
            road(10 * HOUR, List.of("a"), List.of(told("c", 10 * HOUR, 11 * HOUR)), Set.of()));
    assertEquals(List.of(Kind.REORDER, Kind.KEEP), kinds(answer));
    assertEquals(List.of("a", "c", "b"), answer.choices().get(0).order());
    assertEquals(new Lateness(0, 1, 1_200, 0, 0, 0), answer.choices().get(1).lateness());
  }

  @Test
  void theVisitThatRepairsMostIsNamedForAnotherDay() {
    // Both told until 10:15 from a at 10:00: one of them is late whatever is done.
    List<Promise> promises =
        List.of(told("b", 10 * HOUR, 10 * HOUR + 900), told("c", 10 * HOUR, 10 * HOUR + 900));
    LateAnswer answer = LatePlanner.plan(road(10 * HOUR, List.of("a"), promises, Set.of("b", "c")));
    assertEquals(List.of(Kind.KEEP, Kind.MOVE), kinds(answer));
    LateChoice move = answer.choices().get(1);
    // Without c nobody is late; without b, c is still five minutes late.
    assertEquals(Optional.of("c"), move.moved());
    assertEquals(Lateness.NONE, move.lateness());
    // Keeping breaks one told time; moving breaks none and asks one: not fewer, so not recommended.
    assertEquals(1, answer.choices().get(0).lateness().toldBroken());
    assertEquals(
        List.of(Kind.KEEP),
        kinds(LatePlanner.plan(road(10 * HOUR, List.of("a"), promises, Set.of()))));
  }

  @Test
  void theShiftsEndIsNoReasonToDropABookedDogAndIsSaid() {
    // b from 12:10 to 13:10, c from 13:20 to 14:20, home 14:50: 50 minutes after 13:00 + 1 hour.
    LateAnswer answer = LatePlanner.plan(road(12 * HOUR, List.of("a"), List.of(), Set.of("b")));
    LateChoice keep = answer.choices().get(0);
    assertEquals(0, keep.lateness().leftOut());
    assertEquals(3_000, keep.beyondOvertimeSeconds());
    LateChoice move = answer.choices().get(answer.choices().size() - 1);
    assertEquals(Optional.of("b"), move.moved());
    assertEquals(0, move.beyondOvertimeSeconds());
  }

  @Test
  void whatMayNotSlideIsLeftOutWithItsReason() {
    RestOfDay road = road(12 * HOUR, List.of("a"), List.of(), Set.of());
    List<Visit> visits = new ArrayList<>(road.day().visits());
    visits.set(2, visits.get(2).doneBy(12 * HOUR + 1_800));
    DayRequest pill =
        new DayRequest(
            road.day().shift(), visits, road.day().travel(), road.day().prices(), 1, 1_000_000);
    RestOfDay rest =
        new RestOfDay(
            pill,
            List.of(),
            road.order(),
            road.done(),
            OptionalInt.empty(),
            Set.of(),
            1,
            road.nowSeconds(),
            false,
            WaterUse.NONE,
            0,
            Set.of());
    LateChoice keep = LatePlanner.plan(rest).choices().get(0);
    assertEquals(1, keep.lateness().leftOut());
    assertEquals("c", keep.leftOut().get(0).visitId());
    assertEquals("done-by", keep.leftOut().get(0).rule());
    // At c at 12:20, an hour of service: 13:20, 50 minutes after 12:30.
    assertEquals(3_000, keep.leftOut().get(0).shortBySeconds());
  }

  @Test
  void atMostThreeSoundChoicesWithTheRecommendedFirst() {
    int[] offered = new int[4];
    for (int seed = 1; seed <= 60; seed++) {
      RestOfDay rest = RandomRests.of(seed, 3 + seed % 4, 2, true);
      LateAnswer answer = choices(rest, LateSearch.WIDEST);
      if (answer == null) {
        continue;
      }
      String name = "seed " + seed;
      assertTrue(answer.choices().size() <= 3, name);
      offered[answer.choices().size()]++;
      for (int c = 0; c < answer.choices().size(); c++) {
        LateChoice choice = answer.choices().get(c);
        assertEquals(c == 0, choice.recommended(), name);
        assertTrue(choice.proven(), name);
        assertEquals(List.of(), DayAudit.check(choice.request(), choice.plan()), name);
        if (choice.kind() == Kind.KEEP) {
          List<String> order = new ArrayList<>(choice.order());
          order.removeAll(rest.done());
          List<String> planned = new ArrayList<>(rest.order());
          planned.retainAll(order);
          assertEquals(planned, order, name);
        }
      }
    }
    assertTrue(offered[1] > 0 && offered[2] > 0 && offered[3] > 0);
  }

  @Test
  void whereTheSearchIsTooNarrowNothingIsSaidToBeProvenAndAllIsSound() {
    int narrowed = 0;
    for (int seed = 1; seed <= 30; seed++) {
      RestOfDay rest = RandomRests.of(seed, 6, 1, true);
      LateAnswer narrow = choices(rest, 2);
      LateAnswer whole = choices(rest, LateSearch.WIDEST);
      if (narrow == null || whole == null) {
        continue;
      }
      for (LateChoice choice : narrow.choices()) {
        assertEquals(List.of(), DayAudit.check(choice.request(), choice.plan()), "seed " + seed);
        narrowed += choice.proven() ? 0 : 1;
      }
      assertFalse(best(narrow).compareTo(best(whole)) < 0, "seed " + seed);
    }
    assertTrue(narrowed > 0);
  }

  @Test
  void whereThePlannersEffortIsSpentTheOrderThatTheSearchKnowsStands() {
    int unproven = 0;
    for (int seed = 1; seed <= 30; seed++) {
      RestOfDay rest = RandomRests.of(seed, 6, 1, true);
      DayRequest day = rest.day();
      DayRequest hasty =
          new DayRequest(
              day.shift(), day.visits(), day.travel(), day.prices(), day.terms(), day.seed(), 1);
      LateAnswer answer = choices(with(rest, hasty), LateSearch.WIDEST);
      for (LateChoice choice : answer == null ? List.<LateChoice>of() : answer.choices()) {
        assertEquals(List.of(), DayAudit.check(choice.request(), choice.plan()), "seed " + seed);
        unproven += choice.proven() ? 0 : 1;
      }
    }
    assertTrue(unproven > 0);
  }

  private static Lateness best(LateAnswer answer) {
    return answer.choices().stream()
        .filter(choice -> choice.kind() != Kind.MOVE)
        .map(LateChoice::lateness)
        .min(Lateness::compareTo)
        .orElseThrow();
  }

  /** Null where no road leads from where the van is to the end place. */
  private static LateAnswer choices(RestOfDay rest, int widest) {
    try {
      return LatePlanner.plan(rest, widest);
    } catch (IllegalArgumentException noRoad) {
      assertEquals("no road leads to the end place", noRoad.getMessage());
      return null;
    }
  }

  private static RestOfDay with(RestOfDay rest, DayRequest day) {
    return new RestOfDay(
        day,
        rest.promises(),
        rest.order(),
        rest.done(),
        rest.readySeconds(),
        rest.cancelled(),
        rest.place(),
        rest.nowSeconds(),
        rest.breakTaken(),
        rest.waterUsed(),
        rest.waterStops(),
        rest.movable());
  }

  private static List<Kind> kinds(LateAnswer answer) {
    return answer.choices().stream().map(LateChoice::kind).toList();
  }
}
