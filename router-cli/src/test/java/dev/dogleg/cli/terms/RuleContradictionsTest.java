package dev.dogleg.cli.terms;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.dogleg.fault.Severity;
import dev.dogleg.model.DayLimits;
import dev.dogleg.model.RuleShape;
import dev.dogleg.time.TimeWindow;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Rules that can never all hold are named before planning. */
class RuleContradictionsTest {

  private static Week fixed(String... tags) {
    Week week = new Week(2);
    for (String tag : tags) {
      week.stop("s" + week.stops.size(), Set.of(tag), 0);
    }
    return week;
  }

  @Test
  void firstAndNotFirst() {
    Week week = fixed("cat");
    week.apply(
        Week.rule(RuleShape.FIRST, "cat").get(), Week.rule(RuleShape.NOT_FIRST, "cat").get());
    assertEquals(List.of("rules-contradict not first"), week.said());
    assertEquals(Severity.LOOK, week.faults.all().get(0).severity());
  }

  @Test
  void whatShouldRatherHoldContradictsNothing() {
    Week week = fixed("cat");
    week.apply(
        Week.rule(RuleShape.FIRST, "cat").rather(5).get(),
        Week.rule(RuleShape.NOT_FIRST, "cat").get());
    assertEquals(List.of(), week.said());
  }

  @Test
  void aStopWithAnotherDayLeftIsNoContradiction() {
    Week week = new Week(2);
    week.stop("a", Set.of("cat"), 0, 1);
    week.apply(
        Week.rule(RuleShape.FIRST, "cat").on("mon").get(),
        Week.rule(RuleShape.NOT_FIRST, "cat").on("mon").get());
    assertEquals(List.of(), week.said());
  }

  @Test
  void twoFirstsOnOneDay() {
    Week week = fixed("cat", "cat");
    week.apply(Week.rule(RuleShape.FIRST, "cat").get());
    assertEquals(List.of("rules-contradict first"), week.said());
  }

  @Test
  void askedToBeFirstAndNeverFirst() {
    Week week = new Week(1);
    DayLimits first =
        new DayLimits(
            List.of(TimeWindow.ALWAYS), TimeWindow.DAY_END, List.of(TimeWindow.ALWAYS), true);
    week.stop("a", List.of(Set.of("dog")), first, false, 0);
    week.apply(Week.rule(RuleShape.NOT_FIRST, "dog").get());
    assertEquals(List.of("rules-contradict not first"), week.said());
  }

  @Test
  void eachBeforeTheOther() {
    Week week = fixed("cat", "dog");
    week.apply(
        Week.rule(RuleShape.BEFORE, "cat").b("dog").named("one"),
        Week.rule(RuleShape.BEFORE, "dog").b("cat").named("two"));
    assertEquals(List.of("rules-contradict two"), week.said());
    Week firstAndAfter = fixed("cat", "dog");
    firstAndAfter.apply(
        Week.rule(RuleShape.FIRST, "dog").get(), Week.rule(RuleShape.BEFORE, "cat").b("dog").get());
    assertEquals(List.of("rules-contradict first"), firstAndAfter.said());
  }

  @Test
  void moreThanAtMost() {
    Week week = fixed("giant", "giant");
    week.apply(Week.rule(RuleShape.AT_MOST, "giant").number(1).get());
    assertEquals(List.of("rules-contradict at most"), week.said());
  }

  @Test
  void togetherWithoutACommonDay() {
    Week week = new Week(2);
    week.stop("a", Set.of("lane-5"), 0);
    week.stop("b", Set.of("lane-5"), 1);
    week.apply(Week.rule(RuleShape.TOGETHER, "lane-*").get());
    assertEquals(List.of("rules-contradict together"), week.said());
  }

  @Test
  void togetherAndApart() {
    Week week = new Week(2);
    week.stop("a", Set.of("lane-5"), 0, 1);
    week.stop("b", Set.of("lane-5"), 0, 1);
    week.apply(
        Week.rule(RuleShape.TOGETHER, "lane-*").get(),
        Week.rule(RuleShape.NOT_TOGETHER, "lane-5").get());
    assertEquals(List.of("rules-contradict not together"), week.said());
  }

  @Test
  void apartButFixedOnOneDay() {
    Week week = fixed("lane-5", "lane-5");
    week.apply(Week.rule(RuleShape.NOT_TOGETHER, "lane-5").get());
    assertEquals(List.of("rules-contradict not together"), week.said());
  }

  @Test
  void aPersonWhoNeverWorks() {
    Week week = fixed("trusted-only");
    week.apply(Week.rule(RuleShape.ONLY_WITH, "trusted-only").b("trusted").get());
    assertEquals(List.of("rule-leaves-no-day only with"), week.said());
  }
}
