package dev.dogleg.plan.late;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.DayRule;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.oracle.RandomTerms;
import dev.dogleg.oracle.RuleReading;
import dev.dogleg.plan.SeededDays;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalLong;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The rules of a rest say of every way to go on what the day's rules say of the whole day. */
class RestRulesTest {
  private static final int SEEDS = 2_000;

  @Test
  void restAndWholeDayAgreeOnEveryBreachAndEveryMinute() {
    int allowed = 0;
    for (int seed = 1; seed <= SEEDS; seed++) {
      DayRequest day = RandomTerms.on(seed, SeededDays.day(seed, 6, 1, false));
      Random random = new Random(seed);
      List<Visit> order = new ArrayList<>(day.visits());
      Collections.shuffle(order, random);
      int done = 1 + random.nextInt(3);
      List<String> made = order.subList(0, done).stream().map(Visit::id).toList();
      List<DayRule> rules = new RestRules(day.terms().rules(), made, Set.of()).rules();
      long[] constant = {-1};
      for (int way = 0; way < 12; way++) {
        List<Visit> left = new ArrayList<>(order.subList(done, order.size()));
        Collections.shuffle(left, random);
        List<Visit> go = left.subList(0, 1 + random.nextInt(left.size()));
        String name =
            "seed " + seed + " done " + made + " then " + go.stream().map(Visit::id).toList();
        List<Visit> whole = new ArrayList<>(order.subList(0, done));
        whole.addAll(go);
        List<Visit> rest = new ArrayList<>(order.subList(done - 1, done));
        rest.addAll(go);
        for (int k = 1; k <= go.size(); k++) {
          assertEquals(
              RuleReading.service(day.terms().rules(), whole.subList(0, done + k)),
              RuleReading.service(rules, rest.subList(0, 1 + k)),
              name);
        }
        long price = RuleReading.ratherPrice(day.terms().rules(), whole);
        long ofRest = RuleReading.ratherPrice(rules, rest);
        constant[0] = way == 0 ? price - ofRest : constant[0];
        assertEquals(constant[0], price - ofRest, name);
        boolean may = RuleReading.mustHold(day.terms().rules(), whole);
        assertTrue(!may || RuleReading.mustHold(rules, rest), name);
        allowed += may ? 1 : 0;
      }
    }
    assertTrue(allowed > SEEDS, "days that must rules allow: " + allowed);
  }

  @Test
  void whatMustHoldStillHoldsInTheRest() {
    List<DayRule> rules =
        List.of(
            new DayRule.AllBefore("cats first", OptionalLong.empty(), Set.of("c"), Set.of("d")),
            new DayRule.NotRightAfter("apart", OptionalLong.empty(), Set.of("d"), Set.of("a")),
            new DayRule.AtMost(
                "one giant", OptionalLong.empty(), java.util.Map.of("a", 1, "d", 1), 1));
    RestRules rest = new RestRules(rules, List.of("a"), Set.of());
    assertEquals(
        List.of(
            rules.get(0),
            rules.get(1),
            new DayRule.AtMost("one giant", OptionalLong.empty(), java.util.Map.of("d", 1), 0)),
        rest.rules());
    assertEquals(List.of(), rest.gone());
  }

  @Test
  void whatCannotHoldAnyMoreIsNamed() {
    List<DayRule> rules =
        List.of(
            new DayRule.AllBefore("cats first", OptionalLong.empty(), Set.of("c"), Set.of("d")),
            new DayRule.PlaceInDay(
                "early bird", OptionalLong.empty(), Set.of("b"), DayRule.DayPlace.FIRST, 0));
    RestRules rest = new RestRules(rules, List.of("d"), Set.of());
    assertEquals(List.of(), rest.rules());
    assertEquals(List.of("cats first", "early bird"), rest.gone());
    assertEquals(List.of("cats first"), new RestRules(rules, List.of("d"), Set.of("b")).gone());
  }
}
