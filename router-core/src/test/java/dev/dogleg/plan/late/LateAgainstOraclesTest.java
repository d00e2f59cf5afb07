package dev.dogleg.plan.late;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.audit.DayAudit;
import dev.dogleg.itinerary.BreakRule;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.DayShift;
import dev.dogleg.itinerary.DayTerms;
import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.oracle.DayOracle;
import dev.dogleg.oracle.LateOracle;
import dev.dogleg.plan.late.Promise.Kind;
import dev.dogleg.plan.late.RestSolver.Solved;
import dev.dogleg.schedule.DayTiming;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The least lateness, and the least cost with it, against trying everything. */
class LateAgainstOraclesTest {
  /** Of the slow oracle fewer by default; the last whole run stands in docs/LATE.md. */
  private static final int SECONDS_SEEDS = Integer.getInteger("dogleg.late.seeds", 60);

  private static final int ORDERS_SEEDS = 100;

  /** Seconds after the shift's end in which every tiny day surely ends. */
  private static final int HORIZON = 1_500;

  /** Told broken, told seconds, wishes broken, wish seconds, break seconds, cost: one number. */
  private static final int[] BITS = {3, 13, 3, 13, 11, 18};

  private static Set<String> ids(RestRequest rest) {
    return rest.left().stream().map(Visit::id).collect(Collectors.toCollection(TreeSet::new));
  }

  private static int breakUntil(RestOfDay rest) {
    return rest.day()
        .shift()
        .breakRule()
        .map(BreakRule::startWithin)
        .map(w -> w.toSeconds())
        .orElse(Integer.MAX_VALUE);
  }

  private static DayRequest ending(DayRequest open) {
    DayShift shift = open.shift();
    return new DayRequest(
        new DayShift(
            shift.groomerId(),
            shift.vanId(),
            shift.day(),
            shift.startPlace(),
            shift.endPlace(),
            shift.hours(),
            HORIZON,
            shift.breakRule()),
        open.visits(),
        open.travel(),
        open.prices(),
        open.terms(),
        open.seed(),
        open.effort());
  }

  private static DayOracle.Lateness priced(RestRequest rest, DayRequest open) {
    return new DayOracle.Lateness() {
      @Override
      public long ofArrival(String visitId, int second) {
        Promise promise = rest.promise(visitId).orElse(null);
        int late =
            promise == null ? 0 : Math.max(0, counts(open, visitId, second) - promise.endSeconds());
        if (late == 0) {
          return 0;
        }
        int column = promise.kind() == Kind.TOLD ? 0 : 2;
        return one(column) + late * one(column + 1);
      }

      @Override
      public long ofBreak(int second) {
        return Math.max(0, second - breakUntil(rest.rest())) * one(4);
      }
    };
  }

  /** The second that counts: the arrival, or the opening of what may not slide. */
  private static int counts(DayRequest open, String visitId, int second) {
    return open.visits().stream()
        .filter(visit -> visit.id().equals(visitId))
        .flatMap(visit -> visit.arriveWithin().stream())
        .filter(window -> second <= window.toSeconds())
        .mapToInt(window -> Math.max(second, window.fromSeconds()))
        .findFirst()
        .orElse(second);
  }

  /** The unit of a figure inside the one number. */
  private static long one(int column) {
    int shift = 0;
    for (int c = column + 1; c < BITS.length; c++) {
      shift += BITS[c];
    }
    return 1L << shift;
  }

  private static long figure(long number, int column) {
    return number / one(column) % (1L << BITS[column]);
  }

  private static void sound(RestRequest rest, Solved solved, String name) {
    assertEquals(List.of(), DayAudit.check(solved.request(), solved.plan()), name);
    int told = 0;
    int toldLate = 0;
    int wishes = 0;
    int wishLate = 0;
    int breakLate = 0;
    for (PlannedStop stop : solved.plan().stops()) {
      Promise promise = rest.promise(stop.visitId()).orElse(null);
      if (stop.kind() == PlannedStop.Kind.BREAK) {
        breakLate = Math.max(0, stop.startSeconds() - breakUntil(rest.rest()));
      } else if (stop.kind() == PlannedStop.Kind.VISIT && promise != null) {
        int counts = counts(solved.request(), stop.visitId(), stop.arriveSeconds());
        int late = Math.max(0, counts - promise.endSeconds());
        boolean isTold = promise.kind() == Kind.TOLD;
        told += isTold && late > 0 ? 1 : 0;
        toldLate += isTold ? late : 0;
        wishes += !isTold && late > 0 ? 1 : 0;
        wishLate += isTold ? 0 : late;
      }
    }
    Lateness seen =
        new Lateness(solved.leftOut().size(), told, toldLate, wishes, wishLate, breakLate);
    assertEquals(seen, solved.lateness(), name);
    assertTrue(solved.proven(), name);
  }

  @ParameterizedTest(name = "keep the order: {0}")
  @ValueSource(booleans = {false, true})
  void latenessAndCostAreWhatLivingEverySecondFinds(boolean keepOrder) {
    int compared = 0;
    for (int seed = 1; seed <= SECONDS_SEEDS; seed++) {
      int n = seed % 20 == 0 ? 5 : 2 + seed % 3;
      RestRequest rest = new RestRequest(RandomRests.of(seed, n, Math.max(2, n - 3), true));
      String name = "seed " + seed;
      DayRequest open = rest.request(ids(rest), rest.open(), keepOrder);
      DayOracle.Best best = DayOracle.best(ending(open), priced(rest, open));
      Optional<Solved> found =
          new RestSolver(rest, LateSearch.WIDEST).solve(ids(rest), keepOrder, Optional.empty());
      boolean anchorMade =
          best.stops().stream()
              .anyMatch(s -> rest.anchorId().filter(s.visitId()::equals).isPresent());
      if (rest.anchorId().isPresent() && !anchorMade && best.leftOutBooked() < countBooked(open)) {
        continue; // This oracle may leave out what is done already, instead of another one.
      }
      boolean nowhere = rest.anchorId().isPresent() && !anchorMade;
      compared++;
      assertEquals(nowhere, found.isEmpty(), name);
      if (nowhere) {
        continue;
      }
      Solved solved = found.get();
      int gone =
          (int)
              rest.left().stream()
                  .filter(visit -> visit.booked() && !asked(open, visit.id()))
                  .count();
      long number = best.costSixtieths();
      Lateness least =
          new Lateness(
              best.leftOutBooked() + gone,
              (int) figure(number, 0),
              (int) figure(number, 1),
              (int) figure(number, 2),
              (int) figure(number, 3),
              (int) figure(number, 4));
      assertEquals(least, solved.lateness(), name);
      assertEquals(figure(number, 5), inRequest(open, rest, solved), name);
      sound(rest, solved, name);
    }
    assertTrue(compared > SECONDS_SEEDS * 8 / 10, "compared: " + compared);
  }

  /** Cost with all that is asked for where promises are open, as the oracle was asked. */
  private static long inRequest(DayRequest open, RestRequest rest, Solved solved) {
    long never =
        rest.left().stream()
            .filter(visit -> !asked(open, visit.id()))
            .mapToLong(Visit::leftOutSixtieths)
            .sum();
    return solved.costSixtieths() - never;
  }

  private static int countBooked(DayRequest request) {
    return (int) request.visits().stream().filter(Visit::booked).count();
  }

  private static boolean asked(DayRequest request, String id) {
    return request.visits().stream().anyMatch(visit -> visit.id().equals(id));
  }

  @ParameterizedTest(name = "{0} visits")
  @ValueSource(ints = {6, 7, 8})
  void latenessIsThatOfTheBestOfAllOrders(int visits) {
    for (int seed = 1; seed <= ORDERS_SEEDS; seed++) {
      RestOfDay drawn = RandomRests.of(1000L * visits + seed, visits, visits - 5, true);
      RestRequest rest = new RestRequest(withoutWater(drawn));
      String name = visits + " visits, seed " + seed;
      DayRequest open = rest.request(ids(rest), rest.open(), false);
      Map<String, int[]> promises = new HashMap<>();
      open.visits()
          .forEach(
              visit ->
                  rest.promise(visit.id())
                      .ifPresent(
                          one ->
                              promises.put(
                                  visit.id(),
                                  new int[] {one.endSeconds(), one.kind() == Kind.TOLD ? 0 : 1})));
      if (open.visits().size() > 7) {
        continue;
      }
      LateOracle.Least least =
          LateOracle.least(open, promises, breakUntil(rest.rest()), rest.anchorId().orElse(null));
      Optional<Solved> found =
          new RestSolver(rest, LateSearch.WIDEST).solve(ids(rest), false, Optional.empty());
      assertEquals(least.lateness().isEmpty(), found.isEmpty(), name);
      if (found.isEmpty()) {
        continue;
      }
      Solved solved = found.get();
      long gone =
          rest.left().stream().filter(visit -> visit.booked() && !asked(open, visit.id())).count();
      Lateness seen = solved.lateness();
      assertEquals(
          least.lateness(),
          List.of(
              seen.leftOut() - gone,
              (long) seen.toldBroken(),
              (long) seen.toldLateSeconds(),
              (long) seen.wishesBroken(),
              (long) seen.wishLateSeconds(),
              (long) seen.breakLateSeconds()),
          name);
      sound(rest, solved, name);
      notDearer(least.orders(), solved, name);
    }
  }

  /** No order that is as little late at the same doors is cheaper. */
  private static void notDearer(List<List<String>> orders, Solved solved, String name) {
    List<String> known = solved.request().visits().stream().map(Visit::id).toList();
    for (List<String> order : orders.subList(0, Math.min(40, orders.size()))) {
      if (known.containsAll(order) && !order.isEmpty()) {
        var timed = DayTiming.time(solved.request(), order.stream().map(known::indexOf).toList());
        long leftOut =
            solved.request().visits().stream()
                .filter(visit -> !order.contains(visit.id()))
                .mapToLong(Visit::leftOutSixtieths)
                .sum();
        boolean all =
            solved.request().visits().stream()
                .allMatch(visit -> !visit.booked() || order.contains(visit.id()));
        assertTrue(
            !timed.possible()
                || !all
                || timed.costSixtieths() + leftOut >= solved.plan().costSixtieths(),
            name + " " + order);
      }
    }
  }

  private static RestOfDay withoutWater(RestOfDay rest) {
    DayRequest day = rest.day();
    DayRequest dry =
        new DayRequest(
            day.shift(),
            day.visits(),
            day.travel(),
            day.prices(),
            DayTerms.of(day.terms().rules()),
            day.seed(),
            day.effort());
    return new RestOfDay(
        dry,
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
}
