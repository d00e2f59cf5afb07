package dev.dogleg.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.itinerary.DayPlan;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.DayRule;
import dev.dogleg.itinerary.DayTerms;
import dev.dogleg.itinerary.Finding;
import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.oracle.DayOracle;
import dev.dogleg.oracle.RandomTerms;
import dev.dogleg.oracle.RuleScenario;
import dev.dogleg.oracle.RuleScenarios;
import dev.dogleg.plan.DayPlanner;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Days on which one rule binds: the right plan is sound, the plan of a day without it is not. */
class RuleScenariosTest {
  static List<RuleScenario> all() {
    return RuleScenarios.all();
  }

  private static DayPlan plan(DayRequest day, List<PlannedStop> stops, long cost) {
    DayRequest served = RandomDay.onlyServed(day, stops);
    long leftOut = RandomDay.leftOutPrice(day, served);
    return RandomDay.plan(served, stops, cost - leftOut);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("all")
  void theRightPlanIsTheBestUnderTheRuleAndSound(RuleScenario scenario) {
    DayRequest day = scenario.request();
    DayOracle.Best best = DayOracle.best(day);
    DayRequest served = RandomDay.onlyServed(day, best.stops());
    List<PlannedStop> stops = SecondBySecond.figures(served, best.stops());
    DayPlan plan = plan(day, stops, best.costSixtieths());
    assertEquals(scenario.right(), RuleScenario.line(plan));
    assertEquals(scenario.rightCost(), best.costSixtieths());
    assertEquals(List.of(), DayAudit.check(served, plan));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("all")
  void thePlannerFindsTheRightDay(RuleScenario scenario) {
    DayPlan plan = DayPlanner.plan(scenario.request());
    assertEquals(scenario.rightCost(), plan.costSixtieths());
    assertEquals(scenario.right(), RuleScenario.line(plan));
    List<Finding> found = DayAudit.check(scenario.request(), plan);
    assertEquals("", SmallDay.text(found), found + " " + plan.noRoom());
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("all")
  void theBestPlanWithoutTheRuleBreaksItOrIsDearer(RuleScenario scenario) {
    DayRequest day = scenario.request();
    DayRequest free = RandomTerms.with(day, DayTerms.NONE);
    DayOracle.Best best = DayOracle.best(free);
    DayRequest served = RandomDay.onlyServed(free, best.stops());
    List<PlannedStop> stops = SecondBySecond.figures(served, best.stops());
    DayPlan wrong = plan(free, stops, best.costSixtieths());
    assertEquals(scenario.wrong(), RuleScenario.line(wrong));
    DayRequest bound = RandomTerms.with(served, day.terms());
    List<Finding> found = DayAudit.checkStops(bound, wrong.stops());
    assertEquals(scenario.findings(), SmallDay.text(found));
    boolean binds =
        !scenario.right().equals(scenario.wrong())
            || scenario.rightCost() != best.costSixtieths()
            || day.terms().water().isPresent();
    assertTrue(binds, "a rule that changes nothing");
    List<String> codes =
        DayAudit.check(bound, wrong).stream().map(Finding::code).distinct().toList();
    if (scenario.findings().isEmpty() && day.terms().water().isEmpty()) {
      assertEquals(List.of("cost"), codes, "the price is missing in the cost");
    }
  }

  @Test
  void everyShapeOfRuleHasAScenario() {
    Set<Class<?>> seen =
        all().stream()
            .flatMap(scenario -> scenario.request().terms().rules().stream())
            .map(Object::getClass)
            .collect(Collectors.toSet());
    assertEquals(Set.of(DayRule.class.getPermittedSubclasses()), seen);
  }

  @Test
  void theSentenceNamesTheRuleAndWhoBreaksIt() {
    RuleScenario cats =
        all().stream().filter(s -> s.name().startsWith("all cats")).findAny().orElseThrow();
    List<Finding> found =
        DayReTiming.retime(cats.request(), List.of("a", "b", "c"), java.util.Optional.empty())
            .breaches();
    assertEquals(
        "Rule \"cats first\": visit c is number 3 of the day and must come before visit b, number"
            + " 2.",
        found.get(0).text());
    assertFalse(found.size() > 1);
  }
}
