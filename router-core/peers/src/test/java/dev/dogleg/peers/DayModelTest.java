package dev.dogleg.peers;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.google.ortools.Loader;
import dev.dogleg.itinerary.DayPlan;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.Proof;
import dev.dogleg.plan.DayPlanner;
import dev.dogleg.plan.SeededDays;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Fifty seeded days without traffic against an independent constraint model (OR-Tools 9.14 CP-SAT).
 */
class DayModelTest {

  @BeforeAll
  static void loadTheSolver() {
    Loader.loadNativeLibraries();
  }

  @ParameterizedTest(name = "seeds from {0}")
  @ValueSource(ints = {1000, 1010, 1020, 1030, 1040})
  void tenDaysCostWhatTheConstraintModelProves(int firstSeed) {
    for (int seed = firstSeed; seed < firstSeed + 10; seed++) {
      DayRequest request = SeededDays.steady(seed, 2 + seed % 6);
      DayPlan plan = DayPlanner.plan(request);
      ConstraintDay model = new ConstraintDay(request);
      model.solve();
      String name = "seed " + seed + " visits " + request.visits().size();
      assertEquals(model.leftOutBooked(), plan.leftOutBooked(), name);
      assertEquals(model.cost(), plan.costSixtieths(), name);
      assertEquals(Proof.Kind.PROVEN_BEST, plan.proof().kind(), name);
    }
  }
}
