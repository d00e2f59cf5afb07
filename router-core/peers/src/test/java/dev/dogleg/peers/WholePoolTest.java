package dev.dogleg.peers;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.google.ortools.Loader;
import dev.dogleg.itinerary.Proof;
import dev.dogleg.itinerary.WeekPlan;
import dev.dogleg.itinerary.WeekRequest;
import dev.dogleg.plan.week.WeekPlanner;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A few of the weeks of {@link PoolRun}: with and without break, with a waiting list and choices of
 * different price. In that of seed 13 the linear program says two left out; the truth is three.
 */
class WholePoolTest {
  @BeforeAll
  static void loadTheSolver() {
    Loader.loadNativeLibraries();
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {2, 6, 13})
  void theWeekCostsWhatAPoolOfAllSetsAndALibraryProve(long seed) {
    WeekRequest week = PoolWeeks.week(seed);
    SetMaster.Best best = WholePool.solve(week, PoolWeeks.Kind.of(seed).traffic());
    WeekPlan plan = WeekPlanner.plan(week);
    assertEquals(best.leftOutCounted(), plan.leftOutCounted(), "left out, seed " + seed);
    assertEquals(best.costSixtieths(), plan.costSixtieths(), "cost, seed " + seed);
    assertEquals(Proof.Kind.PROVEN_BEST, plan.proof().kind(), "seed " + seed);
  }
}
