package dev.dogleg.plan.week;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.itinerary.Proof;
import dev.dogleg.itinerary.WeekPlan;
import dev.dogleg.itinerary.WeekRequest;
import dev.dogleg.oracle.RandomWeeks;
import dev.dogleg.oracle.WeekOracle;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class WeekPlannerTest {
  static LongStream seeds() {
    return LongStream.rangeClosed(1, 300);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void smallWeeksEqualFullEnumeration(long seed) {
    WeekRequest week = RandomWeeks.week(seed, 2 + (int) (seed % 6), 2, seed % 3 > 0);
    WeekPlan plan = WeekPlanner.plan(week);
    WeekOracle.Best expected = WeekOracle.best(week);
    assertEquals(expected.leftOutCounted(), plan.leftOutCounted(), "left out, seed " + seed);
    assertEquals(expected.costSixtieths(), plan.costSixtieths(), "cost, seed " + seed);
    assertEquals(Proof.Kind.PROVEN_BEST, plan.proof().kind(), "seed " + seed);
    assertEquals(expected.leftOutCounted(), plan.proof().leftOutBound(), "seed " + seed);
    assertEquals(expected.costSixtieths(), plan.proof().costBound(), "seed " + seed);
  }

  /** The way of weeks with too many sets for a complete pool, on weeks small enough to try all. */
  @ParameterizedTest(name = "seed {0}")
  @MethodSource("fewSeeds")
  void withoutACompletePoolTheSameIsProven(long seed) {
    WeekRequest week = RandomWeeks.week(seed, 2 + (int) (seed % 6), 2, seed % 3 > 0);
    WeekPlan plan = new WeekSolver(week, WeekProgress.NONE, () -> false, 0).solve().plan();
    WeekOracle.Best expected = WeekOracle.best(week);
    assertTrue(plan.proof().leftOutBound() <= expected.leftOutCounted(), "seed " + seed);
    if (plan.proof().leftOutBound() == expected.leftOutCounted()) {
      assertTrue(plan.proof().costBound() <= expected.costSixtieths(), "seed " + seed);
    }
    assertEquals(Proof.Kind.PROVEN_BEST, plan.proof().kind(), "seed " + seed);
    assertEquals(expected.leftOutCounted(), plan.leftOutCounted(), "left out, seed " + seed);
    assertEquals(expected.costSixtieths(), plan.costSixtieths(), "cost, seed " + seed);
  }

  static LongStream fewSeeds() {
    return LongStream.rangeClosed(301, 500);
  }
}
