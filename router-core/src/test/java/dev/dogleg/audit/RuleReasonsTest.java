package dev.dogleg.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.dogleg.itinerary.DayPlan;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.DayRule;
import dev.dogleg.itinerary.DayRule.DayPlace;
import dev.dogleg.itinerary.DayTerms;
import dev.dogleg.itinerary.NoRoom;
import dev.dogleg.itinerary.NoRoom.Why;
import dev.dogleg.itinerary.Proof;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WaterTerms;
import dev.dogleg.itinerary.WaterUse;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Why c, which {@link SmallDay}'s plan leaves out, has no room, under rules and with tanks. */
class RuleReasonsTest {
  private static final OptionalLong MUST = OptionalLong.empty();
  private static final Visit C = Visit.booked("c", 3, 10);

  private static String check(DayTerms terms, Visit c, NoRoom reason) {
    DayRequest free = SmallDay.request(SmallDay.VISIT_A, SmallDay.VISIT_B, c);
    DayRequest request =
        new DayRequest(free.shift(), free.visits(), free.travel(), free.prices(), terms, 1, 1000);
    Proof proof = new Proof(Proof.Kind.PROVEN_BEST, 1, 2520, 10);
    DayPlan plan = new DayPlan(SmallDay.shift(), SmallDay.stops(), List.of(reason), 1, 2520, proof);
    return SmallDay.text(DayAudit.check(request, plan));
  }

  private static String check(DayRule rule, NoRoom reason) {
    return check(DayTerms.of(List.of(rule)), C, reason);
  }

  private static NoRoom alone(String rule) {
    return new NoRoom("c", Why.IMPOSSIBLE_ALONE, rule, 0, List.of());
  }

  private static NoRoom with(String... others) {
    return new NoRoom("c", Why.IMPOSSIBLE_TOGETHER, "", 0, List.of(others));
  }

  private static final NoRoom NOT_FOUND = new NoRoom("c", Why.NOT_FOUND, "", 0, List.of());

  @Test
  void aRuleThatForbidsItAloneIsNamed() {
    DayRule load = new DayRule.AtMost("load", MUST, Map.of("c", 3), 2);
    assertEquals("", check(load, alone("rule:load")));
    assertEquals("reason-rule-untrue@-1 1/0", check(load, alone("day-end")));
    assertEquals("reason-rule@-1 1/0", check(load, alone("rule:other")));
    assertEquals("reason-rule@-1 1/0", check(load, alone("water")));
    assertEquals("reason-untrue@-1 1/0", check(load, NOT_FOUND));
    DayRule strangers = new DayRule.Together("pair", MUST, Set.of("c", "z"));
    assertEquals("", check(strangers, alone("rule:pair")));
    assertEquals("reason-untrue@-1 1/0", check(strangers, NOT_FOUND));
  }

  @Test
  void aRuleThatOnlyWantsOthersIsNoReasonWhereOneOfTheOtherReasonsMayBe() {
    DayRule notFirst = new DayRule.PlaceInDay("shy", MUST, Set.of("c"), DayPlace.NOT_FIRST, 0);
    assertEquals("", check(notFirst, alone("rule:shy")));
    assertEquals("", check(notFirst, NOT_FOUND));
    assertEquals("reason-rule-untrue@-1 1/0", check(notFirst, alone("day-end")));
    // c with b: 30 + 10 + 30 + 20 + 20 = 110 and b before c 30 + 20 + 30 + 10 + 30 = 120; both with
    // the break of 10 are too long for 115.
    assertEquals("", check(notFirst, with("b")));
    DayRule pair = new DayRule.Together("pair", MUST, Set.of("a", "c"));
    // The plan serves a without c: that is said, and the reasons stand.
    assertEquals("rule-together@-1 1/2", check(pair, alone("rule:pair")));
    assertEquals("rule-together@-1 1/2", check(pair, with("b")));
  }

  @Test
  void tanksAreAReason() {
    Map<String, WaterUse> uses = Map.of("c", new WaterUse(0, 11));
    WaterTerms water = new WaterTerms(new WaterUse(10, 10), uses, List.of(), 0);
    DayTerms terms = new DayTerms(List.of(), Optional.of(water), Optional.empty());
    assertEquals("", check(terms, C, alone("water")));
    assertEquals("reason-rule-untrue@-1 1/0", check(terms, C, alone("arrive-within")));
    assertEquals("reason-untrue@-1 1/0", check(terms, C, NOT_FOUND));
  }

  @Test
  void minutesByPlaceCountWhereARuleOfTimeIsMissed() {
    // 30 + (10 + 50) + 30 = 120: 5 s more than the day holds, or the rule dropped.
    DayRule slow = new DayRule.PlaceMinutes("slow first", Set.of("c"), 1, 1, 1000, 50);
    NoRoom end = new NoRoom("c", Why.IMPOSSIBLE_ALONE, "day-end", 5, List.of());
    assertEquals("", check(slow, end));
    assertEquals("", check(slow, alone("rule:slow first")));
    NoRoom wrong = new NoRoom("c", Why.IMPOSSIBLE_ALONE, "day-end", 4, List.of());
    assertEquals("reason-short-by-untrue@-1 4/5", check(slow, wrong));
  }

  @Test
  void rulesMakeConflicts() {
    DayRule apart = new DayRule.NotTogether("they fight", MUST, Set.of("a", "c"));
    assertEquals("", check(DayTerms.of(List.of(apart)), Visit.booked("c", 1, 0), with("a")));
    assertEquals(
        "reason-untrue@-1 1/0",
        check(DayTerms.NONE, Visit.booked("c", 1, 0), with("a")),
        "at a's door c has room beside a");
  }
}
