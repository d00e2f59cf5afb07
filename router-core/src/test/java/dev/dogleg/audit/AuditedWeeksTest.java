package dev.dogleg.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.dogleg.itinerary.WeekPlan;
import dev.dogleg.itinerary.WeekRequest;
import dev.dogleg.oracle.RandomWeeks;
import dev.dogleg.oracle.WeekOracle;
import dev.dogleg.plan.week.WeekPlanner;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The week planner and the audit read the week's page alike; small weeks cost what they must. */
class AuditedWeeksTest {
  @Test
  void noPlanOfASmallWeekHasAFindingAndNoneIsBetter() {
    assertEquals(List.of(), wrong(false));
  }

  @Test
  void noPlanOfASmallWeekWithRulesWaterAndBalanceHasAFindingAndNoneIsBetter() {
    assertEquals(List.of(), wrong(true));
  }

  private static List<String> wrong(boolean terms) {
    List<String> wrong = new ArrayList<>();
    for (int seed = 1; seed <= 30; seed++) {
      WeekRequest week = RandomWeeks.week(seed, 1 + seed % 5, 2, terms);
      String name = "seed " + seed + ": ";
      WeekPlan plan = WeekPlanner.plan(week);
      WeekOracle.Best best = WeekOracle.best(week);
      WeekAudit.check(week, plan).forEach(f -> wrong.add(name + f));
      if (best.leftOutCounted() != plan.leftOutCounted()
          || best.costSixtieths() != plan.costSixtieths()) {
        wrong.add("seed " + seed + ": best is " + best + ", planned " + plan);
      }
    }
    return wrong;
  }
}
