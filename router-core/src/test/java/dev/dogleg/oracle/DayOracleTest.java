package dev.dogleg.oracle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.itinerary.DayPlan;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.DayRule;
import dev.dogleg.itinerary.DayTerms;
import dev.dogleg.itinerary.PlannedStop.Kind;
import dev.dogleg.plan.DayPlanner;
import dev.dogleg.plan.SeededDays;
import java.util.List;
import org.junit.jupiter.api.Test;

class DayOracleTest {
  @Test
  void withoutTermsItFindsWhatTheProvenPlannerFinds() {
    for (int seed = 1; seed <= 60; seed++) {
      DayRequest request = SeededDays.day(seed, 1 + seed % 5, 1, seed % 2 == 0);
      DayOracle.Best best = DayOracle.best(request);
      DayPlan plan = DayPlanner.plan(request);
      assertEquals(plan.leftOutBooked(), best.leftOutBooked(), "seed " + seed);
      assertEquals(plan.costSixtieths(), best.costSixtieths(), "seed " + seed);
    }
  }

  @Test
  void everyShapeOfRuleChangesSomeDay() {
    for (int shape = 0; shape < RandomTerms.SHAPES; shape++) {
      int changed = 0;
      for (int seed = 1; seed <= 60; seed++) {
        DayRequest free = SeededDays.day(seed, 3, 1, true);
        DayRequest bound = RandomTerms.onlyRule(seed, free, shape);
        DayOracle.Best without = DayOracle.best(free);
        DayOracle.Best with = DayOracle.best(bound);
        boolean same =
            without.leftOutBooked() == with.leftOutBooked()
                && without.costSixtieths() == with.costSixtieths();
        changed += same ? 0 : 1;
        DayRule rule = bound.terms().rules().get(0);
        // A longer service may spare waiting, a shorter one time; any other rule only forbids or
        // costs.
        if (!(rule instanceof DayRule.PlaceMinutes || rule instanceof DayRule.Changeover)) {
          boolean worse =
              with.leftOutBooked() > without.leftOutBooked()
                  || with.costSixtieths() > without.costSixtieths();
          assertTrue(same || worse, "seed " + seed + " shape " + shape);
        }
      }
      int days = changed;
      int number = shape;
      assertTrue(changed >= 3, () -> "shape " + number + " changed " + days + " days");
    }
  }

  @Test
  void waterIsFetchedWhereTheTanksNeedIt() {
    int fetched = 0;
    int twice = 0;
    int leftOut = 0;
    for (int seed = 1; seed <= 120; seed++) {
      DayRequest free = SeededDays.day(seed, 4, 1, true);
      DayOracle.Best best = DayOracle.best(RandomTerms.onlyWater(seed, free));
      long stops = best.stops().stream().filter(s -> s.kind() == Kind.WATER).count();
      fetched += stops > 0 ? 1 : 0;
      twice += stops > 1 ? 1 : 0;
      leftOut += best.leftOutBooked() > DayOracle.best(free).leftOutBooked() ? 1 : 0;
    }
    String seen = fetched + " with water, " + twice + " with more, " + leftOut + " leave out";
    assertTrue(fetched >= 3 && twice >= 1 && leftOut >= 3, seen);
  }

  @Test
  void noTermsAreNoTerms() {
    DayRequest day = SeededDays.day(4, 3, 1, true);
    assertEquals(
        DayOracle.best(day), DayOracle.best(RandomTerms.with(day, DayTerms.of(List.of()))));
  }
}
