package dev.dogleg.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.itinerary.DayPlan;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.Proof;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** 500 seeded days against trying everything. */
class BruteForceTest {

  @ParameterizedTest(name = "seeds from {0}")
  @ValueSource(ints = {0, 100, 200, 300, 400})
  void aHundredDaysCostWhatTryingEverythingFinds(int firstSeed) {
    for (int seed = firstSeed; seed < firstSeed + 100; seed++) {
      int n = seed % 100 < 96 ? 1 + seed % 5 : seed % 2 == 0 ? 6 : 7;
      int kind = seed / 5 % 3;
      int tick = kind == 0 ? 60 : 1;
      DayRequest request = SeededDays.day(seed, n, tick, kind != 0);
      long[] best = BruteForce.best(request, tick);
      DayPlan plan = DayPlanner.plan(request);
      String name = "seed " + seed + " visits " + n + " tick " + tick;
      assertEquals(best[0], plan.leftOutBooked(), name);
      assertEquals(best[1], plan.costSixtieths(), name);
      assertEquals(Proof.Kind.PROVEN_BEST, plan.proof().kind(), name);
      assertEquals(best[1], plan.proof().costBound(), name);
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
  void whereTrafficChangesBetweenMinutesNoDayByMinutesIsBetter(int seed) {
    DayRequest request = SeededDays.day(seed, 3, 60, true);
    long[] best = BruteForce.best(request, 60);
    DayPlan plan = DayPlanner.plan(request);
    assertTrue(
        plan.leftOutBooked() < best[0]
            || (plan.leftOutBooked() == best[0] && plan.costSixtieths() <= best[1]),
        "seed " + seed);
  }
}
