package dev.dogleg.cli.terms;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.itinerary.DayRule;
import dev.dogleg.itinerary.DayRule.ClockKind;
import dev.dogleg.itinerary.DayRule.DayPlace;
import dev.dogleg.model.DayLimits;
import dev.dogleg.model.RuleShape;
import dev.dogleg.model.TagRule;
import dev.dogleg.time.TimeWindow;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Each shape of a rules file, in the planner's terms. */
class RuleTermsTest {
  private static final OptionalLong MUST = OptionalLong.empty();

  /** 15 minutes of driving are 15 x 60 x 60 sixtieths. */
  private static final OptionalLong RATHER = OptionalLong.of(54_000);

  @Test
  void aClockThatMustHoldNarrowsTheStop() {
    Week week = new Week(1);
    DraftStop pug = week.stop("pug", Set.of("flat-faced"), 0);
    week.apply(
        Week.rule(RuleShape.ARRIVE, "flat-faced").hours("9-11; 14-15").get(),
        Week.rule(RuleShape.DONE_BY, "flat-faced").hours("before 15:30").get(),
        Week.rule(RuleShape.VAN, "flat-faced").hours("8-16").get());
    DayLimits limits = pug.on(0).orElseThrow().limits();
    assertEquals(
        List.of(new TimeWindow(32_400, 39_600), new TimeWindow(50_400, 54_000)),
        limits.arriveWithin());
    assertEquals(55_800, limits.doneBySeconds());
    assertEquals(List.of(new TimeWindow(28_800, 57_600)), limits.vanWithin());
    assertEquals(List.of(), week.said());
  }

  @Test
  void aClockThatLeavesNothingTakesTheDay() {
    Week week = new Week(1);
    week.day(Set.of("hot"), Set.of());
    DayLimits late =
        new DayLimits(
            List.of(new TimeWindow(50_400, 54_000)),
            TimeWindow.DAY_END,
            List.of(TimeWindow.ALWAYS),
            false);
    DraftStop pug = week.stop("pug", List.of(Set.of("flat-faced")), late, false, 0, 1);
    DraftStop only = week.stop("only", List.of(Set.of("flat-faced")), late, false, 1);
    DraftStop told = week.stop("told", List.of(Set.of("flat-faced")), late, true, 1);
    week.apply(Week.rule(RuleShape.ARRIVE, "flat-faced").on("hot").hours("before 11").get());
    assertEquals(1, pug.choices().size(), "the cool Monday is left");
    assertEquals(0, only.choices().size());
    assertEquals(late, told.on(1).orElseThrow().limits(), "a told time is never narrowed");
    assertEquals(List.of("told-against-rule arrive", "rule-leaves-no-day arrive"), week.said());
  }

  @Test
  void aClockThatShouldRatherHoldIsARuleOfTheDay() {
    Week week = new Week(1);
    week.stop("pug", Set.of("flat-faced"), 0);
    List<DayRule> rules =
        week.apply(
                Week.rule(RuleShape.ARRIVE, "flat-faced").hours("9-11").rather(15).get(),
                Week.rule(RuleShape.DONE_BY, "flat-faced").hours("before 15:00").rather(15).get(),
                Week.rule(RuleShape.VAN, "flat-faced").hours("8-16").rather(15).get())
            .get(0);
    Set<String> who = Set.of("pug");
    assertEquals(
        List.of(
            new DayRule.Clock(
                "arrive", RATHER, who, ClockKind.ARRIVE, List.of(new TimeWindow(32_400, 39_600))),
            new DayRule.Clock(
                "done by", RATHER, who, ClockKind.DONE_BY, List.of(new TimeWindow(0, 54_000))),
            new DayRule.Clock(
                "van", RATHER, who, ClockKind.VAN, List.of(new TimeWindow(28_800, 57_600)))),
        rules);
  }

  @Test
  void placesInTheDay() {
    Week week = new Week(1);
    week.stop("a", Set.of("cat"), 0);
    week.stop("b", Set.of("dog"), 0);
    List<DayRule> rules =
        week.apply(
                Week.rule(RuleShape.FIRST, "cat").get(),
                Week.rule(RuleShape.LAST, "dog").rather(15).get(),
                Week.rule(RuleShape.NOT_FIRST, "dog").get(),
                Week.rule(RuleShape.NOT_LAST, "cat").get(),
                Week.rule(RuleShape.FIRST, "ferret").get())
            .get(0);
    assertEquals(
        List.of(
            new DayRule.PlaceInDay("first", MUST, Set.of("a"), DayPlace.FIRST, 0),
            new DayRule.PlaceInDay("last", RATHER, Set.of("b"), DayPlace.LAST, 0),
            new DayRule.PlaceInDay("not first", MUST, Set.of("b"), DayPlace.NOT_FIRST, 0),
            new DayRule.PlaceInDay("not last", MUST, Set.of("a"), DayPlace.NOT_LAST, 0)),
        rules,
        "a rule that can bind nobody is no rule of the day");
  }

  @Test
  void orderAndNeighbours() {
    Week week = new Week(1);
    week.stop("a", Set.of("cat"), 0);
    week.stop("b", Set.of("dog"), 0);
    week.stop("both", List.of(Set.of("cat"), Set.of("dog")), DayLimits.NONE, false, 0);
    List<DayRule> rules =
        week.apply(
                Week.rule(RuleShape.BEFORE, "cat").b("dog").rather(15).get(),
                Week.rule(RuleShape.NOT_AFTER, "dog").b("dog").get(),
                Week.rule(RuleShape.CHANGEOVER, "dog").b("cat").minutes("+10").get())
            .get(0);
    assertEquals(
        List.of(
            new DayRule.AllBefore("before", RATHER, Set.of("a", "both"), Set.of("b", "both")),
            new DayRule.NotRightAfter("not after", MUST, Set.of("b", "both"), Set.of("b", "both")),
            new DayRule.Changeover("changeover", Set.of("b", "both"), Set.of("a", "both"), 600)),
        rules);
  }

  @Test
  void atMostCountsPetsAndTheirPoints() {
    Week week = new Week(1);
    week.stop("a", List.of(Set.of("giant"), Set.of("large")), DayLimits.NONE, false, 0);
    week.stop("b", Set.of("large"), 0);
    week.stop("c", Set.of("small"), 0);
    TagRule load = Week.rule(RuleShape.AT_MOST, "giant = 2; large").number(3).get();
    TagRule idle = Week.rule(RuleShape.AT_MOST, "large").number(2).named("idle");
    assertEquals(
        List.of(new DayRule.AtMost("at most", MUST, Map.of("a", 3, "b", 1), 3)),
        week.apply(load, idle).get(0),
        "two large ones never exceed two");
  }

  @Test
  void daysAndCrew() {
    Week week = new Week(2);
    week.day(Set.of("hot"), Set.of("helper"));
    DraftStop a = week.stop("a", Set.of("cat"), 0, 1, 2);
    DraftStop b = week.stop("b", Set.of("dog"), 0, 1, 2);
    DraftStop c = week.stop("c", Set.of("two-person"), 0, 1, 2);
    week.apply(
        Week.rule(RuleShape.ONLY_ON, "cat").b("mon; hot").get(),
        Week.rule(RuleShape.NEVER_ON, "dog").b("tuesdays").rather(15).get(),
        Week.rule(RuleShape.ONLY_WITH, "two-person").b("helper; lift").get());
    assertEquals(List.of(0, 2), a.choices().stream().map(DraftChoice::day).toList());
    assertEquals(
        List.of(0L, 54_000L, 0L), b.choices().stream().map(DraftChoice::extraSixtieths).toList());
    assertEquals(List.of(2), c.choices().stream().map(DraftChoice::day).toList());
  }

  @Test
  void minutesByTagAndByPlace() {
    Week week = new Week(1);
    DraftStop a = week.stop("a", Set.of("contagious"), 0);
    DraftStop b = week.stop("b", Set.of("dog"), 0);
    List<DayRule> rules =
        week.apply(
                Week.rule(RuleShape.MINUTES, "contagious").minutes("x1.25 +15").get(),
                Week.rule(RuleShape.MINUTES, "any").minutes("+5").places("3-").named("tired"))
            .get(0);
    assertEquals(4_500 + 900, a.on(0).orElseThrow().seconds(), "3,600 x 1.25 + 900");
    assertEquals(3_600, b.on(0).orElseThrow().seconds());
    assertEquals(
        List.of(new DayRule.PlaceMinutes("tired", Set.of("a", "b"), 3, 1_000, 1_000, 300)), rules);
  }

  @Test
  void groupsByTheirTag() {
    Week week = new Week(2);
    week.stop("a", Set.of("lane-5"), 0, 1);
    week.stop("b", Set.of("lane-5"), 1);
    week.stop("c", Set.of("lane-6"), 0);
    week.stop("d", Set.of("lane-6"), 0);
    List<List<DayRule>> rules =
        week.apply(
            Week.rule(RuleShape.TOGETHER, "lane-*").rather(20).get(),
            Week.rule(RuleShape.NOT_TOGETHER, "lane-6").get());
    // A group in two parts breaks it on two days, so each bears 10 of the 20 minutes.
    OptionalLong half = OptionalLong.of(36_000);
    DayRule five = new DayRule.Together("together", half, Set.of("a", "b"));
    DayRule six = new DayRule.Together("together", half, Set.of("c", "d"));
    DayRule apart = new DayRule.NotTogether("not together", MUST, Set.of("c", "d"));
    assertEquals(List.of(List.of(five, six, apart), List.of(five)), rules);
  }

  @Test
  void aRuleEndsAndLeavesItsLine() {
    Week week = new Week(2);
    DraftStop a = week.stop("a", Set.of("cat"), 0, 1);
    List<List<DayRule>> rules =
        week.apply(Week.rule(RuleShape.FIRST, "cat").until(Week.MONDAY).line("cats first").get());
    assertEquals(1, rules.get(0).size());
    assertEquals(0, rules.get(1).size());
    assertEquals(List.of("cats first"), a.on(0).orElseThrow().lines());
    assertEquals(List.of(), a.on(1).orElseThrow().lines());
  }

  @Test
  void anErrandIsMeantOnlyWhereItIsNamed() {
    Week week = new Week(1);
    week.stop("blades", Set.of(StopTagger.ERRAND), 0);
    assertEquals(List.of(), week.apply(Week.rule(RuleShape.FIRST, "any").get()).get(0));
    assertEquals(1, week.apply(Week.rule(RuleShape.FIRST, "errand").get()).get(0).size());
  }

  @Test
  void theOrderOfStopsDoesNotMatter() {
    TagRule[] rules = {
      Week.rule(RuleShape.BEFORE, "cat").b("dog").get(),
      Week.rule(RuleShape.TOGETHER, "lane-*").rather(3).get()
    };
    Week week = new Week(1);
    week.stop("a", Set.of("cat", "lane-1"), 0);
    week.stop("b", Set.of("dog", "lane-1"), 0);
    Week other = new Week(1);
    other.stop("b", Set.of("dog", "lane-1"), 0);
    other.stop("a", Set.of("cat", "lane-1"), 0);
    assertEquals(week.apply(rules).toString(), other.apply(rules).toString());
    assertTrue(week.faults.isEmpty());
  }
}
