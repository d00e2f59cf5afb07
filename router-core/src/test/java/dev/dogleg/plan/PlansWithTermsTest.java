package dev.dogleg.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.audit.DayAudit;
import dev.dogleg.itinerary.DayPlan;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.Finding;
import dev.dogleg.itinerary.Proof;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.oracle.DayOracle;
import dev.dogleg.oracle.RandomTerms;
import dev.dogleg.schedule.DayModel;
import dev.dogleg.time.TimeWindow;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Small days with rules, water and balance against living every order and every second. */
class PlansWithTermsTest {
  private static final int SEEDS = Integer.getInteger("dogleg.terms.seeds", 100);

  private static DayRequest day(int seed) {
    int n = seed % 50 == 0 ? 6 : 2 + seed % 4;
    return RandomTerms.on(seed, SeededDays.day(seed, n, 1, seed % 2 == 0));
  }

  @ParameterizedTest(name = "seeds from {0}")
  @ValueSource(ints = {1, 1001})
  void daysCostWhatTryingEverythingFindsAndPassTheAudit(int firstSeed) {
    for (int seed = firstSeed; seed < firstSeed + SEEDS; seed++) {
      DayRequest request = day(seed);
      DayOracle.Best best = DayOracle.best(request);
      DayPlan plan = DayPlanner.plan(request);
      String name = "seed " + seed;
      assertEquals(best.leftOutBooked(), plan.leftOutBooked(), name);
      assertEquals(best.costSixtieths(), plan.costSixtieths(), name);
      assertEquals(Proof.Kind.PROVEN_BEST, plan.proof().kind(), name);
      assertEquals(best.costSixtieths(), plan.proof().costBound(), name);
      List<Finding> found = DayAudit.check(request, plan);
      assertEquals(List.of(), found, name);
    }
  }

  @ParameterizedTest(name = "seeds from {0}")
  @ValueSource(ints = {1})
  void everySetCostsWhatTheOracleFindsAndNoBoundIsAboveIt(int firstSeed) {
    for (int seed = firstSeed; seed < firstSeed + SEEDS; seed++) {
      DayRequest request = day(seed);
      DayModel day = DayModel.of(request);
      int n = day.size();
      SetBounds bounds = new SetBounds(day, n, 1 << n);
      Map<Long, Long> bound = new HashMap<>();
      for (int k = 0; k < bounds.size(); k++) {
        bound.put(bounds.set(k), bounds.bound(k));
      }
      SetDays days = new SetDays(day);
      long[] oracle = DayOracle.costsBySet(request);
      for (int set = 1; set < oracle.length; set++) {
        String name = "seed " + seed + " set " + set;
        long bits = 0;
        for (int visit = 0; visit < n; visit++) {
          bits |= (long) (set >> day.requestIndex(visit) & 1) << visit;
        }
        Optional<SetDays.Best> best = days.best(bits, DayRequest.USUAL_EFFORT);
        long cost = best.map(SetDays.Best::costSixtieths).orElse(DayOracle.NEVER);
        assertEquals(oracle[set], cost, name);
        assertTrue(best.isEmpty() || best.get().proven(), name);
        assertTrue(best.isEmpty() || bound.get(bits) <= cost, name);
      }
    }
  }

  /** Strangers who have no room come first by id, so that other engines must find the same day. */
  @ParameterizedTest(name = "{0} visits")
  @ValueSource(ints = {17, 70})
  void daysOfManyVisitsKeepTheSameRules(int visits) {
    for (int seed = 4001; seed < 4001 + SEEDS / 5; seed++) {
      DayRequest request = day(seed);
      List<Visit> many = new ArrayList<>(request.visits());
      for (int k = request.visits().size(); k < visits; k++) {
        many.add(
            Visit.booked("no room %03d".formatted(k), 0, 60)
                .waiting(0)
                .arriving(List.of(new TimeWindow(0, 1))));
      }
      DayRequest wide =
          new DayRequest(
              request.shift(),
              many,
              request.travel(),
              request.prices(),
              request.terms(),
              request.seed(),
              request.effort());
      DayOracle.Best best = DayOracle.best(request);
      DayPlan plan = DayPlanner.plan(wide);
      String name = "seed " + seed;
      assertEquals(best.leftOutBooked(), plan.leftOutBooked(), name);
      assertEquals(best.costSixtieths(), plan.costSixtieths(), name);
      assertEquals(Proof.Kind.PROVEN_BEST, plan.proof().kind(), name);
    }
  }
}
