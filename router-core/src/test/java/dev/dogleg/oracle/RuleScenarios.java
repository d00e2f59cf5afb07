package dev.dogleg.oracle;

import static dev.dogleg.oracle.RuleScenario.A;
import static dev.dogleg.oracle.RuleScenario.B;
import static dev.dogleg.oracle.RuleScenario.C;
import static dev.dogleg.oracle.RuleScenario.FREE;
import static dev.dogleg.oracle.RuleScenario.day;

import dev.dogleg.itinerary.BalanceTerms;
import dev.dogleg.itinerary.DayRule;
import dev.dogleg.itinerary.DayRule.AllBefore;
import dev.dogleg.itinerary.DayRule.AtMost;
import dev.dogleg.itinerary.DayRule.Changeover;
import dev.dogleg.itinerary.DayRule.Clock;
import dev.dogleg.itinerary.DayRule.ClockKind;
import dev.dogleg.itinerary.DayRule.DayPlace;
import dev.dogleg.itinerary.DayRule.NotRightAfter;
import dev.dogleg.itinerary.DayRule.NotTogether;
import dev.dogleg.itinerary.DayRule.PlaceInDay;
import dev.dogleg.itinerary.DayRule.PlaceMinutes;
import dev.dogleg.itinerary.DayRule.Together;
import dev.dogleg.itinerary.DayTerms;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WaterPlace;
import dev.dogleg.itinerary.WaterTerms;
import dev.dogleg.itinerary.WaterUse;
import dev.dogleg.time.TimeWindow;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;

/** Each shape of rule, water and balance on a day on which it binds. */
public final class RuleScenarios {
  private static final OptionalLong MUST = OptionalLong.empty();
  private static final String ACB = "0 > 10 a 20 > 40 c 50 > 60 b 70 > 90";
  private static final String BAC = "0 > 20 b 30 > 40 a 50 > 70 c 80 > 90";
  private static final String AC = "0 > 10 a 20 > 40 c 50 > 60";

  /** a is in a hurry: reached by 25 it is first. */
  private static final Visit EARLY_A = A.arriving(List.of(new TimeWindow(0, 25)));

  private RuleScenarios() {}

  /** {@return all of them, simple to complex} */
  public static List<RuleScenario> all() {
    return List.of(
        place("the sick one last", "b", DayPlace.LAST, 0, ACB, "rule-place@2 2/3"),
        place("the trusted one first", "b", DayPlace.FIRST, 0, BAC, "rule-place@2 2/1"),
        place("the anxious one not first", "a", DayPlace.NOT_FIRST, 0, BAC, "rule-place@1 1/2"),
        place("the impatient one not last", "c", DayPlace.NOT_LAST, 0, ACB, "rule-place@3 3/2"),
        place("just the second", "a", DayPlace.EXACTLY, 2, BAC, "rule-place@1 1/2"),
        // c before b: 10 + 20 + 10 + 20 = 60.
        must(
            "all cats before any dog",
            new AllBefore("cats first", MUST, Set.of("c"), Set.of("b")),
            ACB,
            "rule-before@3 3/2"),
        new RuleScenario(
            "heavy coats not back to back",
            day(300, rule(new NotRightAfter("r", MUST, Set.of("b"), Set.of("a"))), EARLY_A, B, C),
            ACB,
            3600,
            FREE,
            "rule-right-after@2 1/0"),
        atMost(),
        changeoverInTime(),
        changeoverAvoided(),
        placeMinutes(),
        together(),
        notTogether(),
        likedHour(),
        likedHourTooDear(),
        likedOrderPaid(),
        waterOnTheWay(),
        waterTwice(),
        waterJustEnough(),
        balance());
  }

  private static DayTerms rule(DayRule rule) {
    return DayTerms.of(List.of(rule));
  }

  private static RuleScenario must(String name, DayRule rule, String right, String findings) {
    return new RuleScenario(name, day(300, rule(rule), A, B, C), right, 3600, FREE, findings);
  }

  private static RuleScenario place(
      String name, String id, DayPlace where, int place, String right, String findings) {
    return must(name, new PlaceInDay("place", MUST, Set.of(id), where, place), right, findings);
  }

  /** Load points 1 + 2 + 1 = 4 of 3: b, the cheapest to leave out, brings two. */
  private static RuleScenario atMost() {
    AtMost rule = new AtMost("load", MUST, Map.of("a", 1, "b", 2, "c", 1), 3);
    return new RuleScenario(
        "three load points a day",
        day(300, rule(rule), A.waiting(5000), B.waiting(2000), C.waiting(4000)),
        AC,
        2400 + 2000,
        FREE,
        "rule-at-most@-1 4/3");
  }

  /** b after a is served 10 + 15 = 25. */
  private static RuleScenario changeoverInTime() {
    Changeover rule = new Changeover("cleaning", Set.of("a"), Set.of("b"), 15);
    return new RuleScenario(
        "cleaning between",
        day(300, rule(rule), A, B, C),
        "0 > 10 a 20 > 30 b 55 > 65 c 75 > 85",
        2400,
        FREE,
        "changeover-short@2 10/25");
  }

  /** With 60 of cleaning a, b, c would end at 130; the day ends at 110. */
  private static RuleScenario changeoverAvoided() {
    Changeover rule = new Changeover("cleaning", Set.of("a"), Set.of("b"), 60);
    return new RuleScenario(
        "cleaning that the day has no time for",
        day(110, rule(rule), EARLY_A, B, C),
        ACB,
        3600,
        FREE,
        "changeover-short@2 10/70");
  }

  /** The first of the day takes 10 * 1.45 = 14.5, so 15, and 5 more. */
  private static RuleScenario placeMinutes() {
    PlaceMinutes rule = new PlaceMinutes("first is slow", Set.of("a", "b"), 1, 1, 1450, 5);
    return new RuleScenario(
        "the first groom takes longer",
        day(300, rule(rule), A, B, C),
        "0 > 10 a 30 > 40 b 50 > 60 c 70 > 80",
        2400,
        FREE,
        "place-minutes-short@1 10/20");
  }

  /** Time for two of three until 60; a goes only with c, and is worth more than b. */
  private static RuleScenario together() {
    Together rule = new Together("neighbours", MUST, Set.of("a", "c"));
    return new RuleScenario(
        "neighbours together",
        day(60, rule(rule), A.waiting(5000), B.waiting(4000), C.waiting(1000)),
        AC,
        2400 + 4000,
        "0 > 10 a 20 > 30 b 40 > 60",
        "rule-together@-1 1/2");
  }

  private static RuleScenario notTogether() {
    NotTogether rule = new NotTogether("they fight", MUST, Set.of("a", "b"));
    return new RuleScenario(
        "not on the same day",
        day(300, rule(rule), A.waiting(5000), B.waiting(4000), C),
        AC,
        2400 + 4000,
        FREE,
        "rule-not-together@-1 2/1");
  }

  private static Clock hour(long price) {
    List<TimeWindow> until40 = List.of(new TimeWindow(0, 40));
    return new Clock("cool", OptionalLong.of(price), Set.of("c"), ClockKind.ARRIVE, until40);
  }

  /** c by 40: 20 more of driving are 1200, the hour is worth 3000. */
  private static RuleScenario likedHour() {
    return new RuleScenario(
        "an hour worth a detour", day(300, rule(hour(3000)), A, B, C), ACB, 3600, FREE, "");
  }

  private static RuleScenario likedHourTooDear() {
    return new RuleScenario(
        "an hour not worth it", day(300, rule(hour(1000)), A, B, C), FREE, 3400, FREE, "");
  }

  /** Not first and not last would both hold for b only in the middle; a is rather not first. */
  private static RuleScenario likedOrderPaid() {
    PlaceInDay rule =
        new PlaceInDay("rather", OptionalLong.of(700), Set.of("a", "c"), DayPlace.EXACTLY, 2);
    return new RuleScenario(
        "two rather at one place: both pay, moving one costs more",
        day(300, rule(rule), A, B, C),
        FREE,
        2400 + 2 * 700,
        FREE,
        "");
  }

  private static DayTerms water(int tank, int most, WaterPlace... places) {
    WaterUse five = new WaterUse(5, 5);
    Map<String, WaterUse> uses = Map.of("a", five, "b", five, "c", five);
    return new DayTerms(
        List.of(),
        Optional.of(new WaterTerms(new WaterUse(tank, 1000), uses, List.of(places), most)),
        Optional.empty());
  }

  /** 15 of 10: filled at 25, which lies on the way from b to c. */
  private static RuleScenario waterOnTheWay() {
    return new RuleScenario(
        "water on the way",
        day(300, water(10, 2, new WaterPlace(25, 5)), A, B, C),
        "0 > 10 a 20 > 30 b 40 > 45 water 50 > 55 c 65 > 75",
        2400,
        FREE,
        "tank-fresh@3 15/10");
  }

  /** A tank for one: filled twice, at 15 and at 25. */
  private static RuleScenario waterTwice() {
    return new RuleScenario(
        "a tank for one pet",
        day(300, water(5, 2, new WaterPlace(15, 1), new WaterPlace(25, 5)), A, B, C),
        "0 > 10 a 20 > 25 water 26 > 31 b 41 > 46 water 51 > 56 c 66 > 76",
        2400,
        FREE,
        "tank-fresh@2 10/5, tank-fresh@3 15/5");
  }

  private static RuleScenario waterJustEnough() {
    return new RuleScenario(
        "a tank that is just enough",
        day(300, water(15, 2, new WaterPlace(25, 5)), A, B, C),
        FREE,
        2400,
        FREE,
        "");
  }

  /** 30 served, 5 above 25 at 100 each; the end at 70 is 8 after 62 at 10 each. */
  private static RuleScenario balance() {
    DayTerms terms =
        new DayTerms(List.of(), Optional.empty(), Optional.of(new BalanceTerms(25, 100, 62, 10)));
    return new RuleScenario(
        "a full day costs", day(300, terms, A, B, C), FREE, 2400 + 500 + 80, FREE, "");
  }
}
