package dev.dogleg.cli.terms;

import dev.dogleg.itinerary.DayRule;
import dev.dogleg.itinerary.DayRule.DayPlace;
import dev.dogleg.model.RuleMinutes;
import dev.dogleg.model.TagRule;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.OptionalLong;
import java.util.Set;

/**
 * The rules of one van-day that come of one rule by tag; those that can bind nobody are left out.
 */
final class DayRules {
  private DayRules() {}

  static List<DayRule> of(TagRule rule, VanDay day, Members members) {
    OptionalLong price = Price.of(rule.strength());
    String name = rule.name();
    return switch (rule.shape()) {
      case ONLY_ON, NEVER_ON, ONLY_WITH -> List.of();
      case ARRIVE, DONE_BY, VAN ->
          price.isEmpty() ? List.of() : clock(rule, day, members.of(rule.a()), price);
      case FIRST -> place(name, price, members.of(rule.a()), DayPlace.FIRST);
      case LAST -> place(name, price, members.of(rule.a()), DayPlace.LAST);
      case NOT_FIRST -> place(name, price, members.of(rule.a()), DayPlace.NOT_FIRST);
      case NOT_LAST -> place(name, price, members.of(rule.a()), DayPlace.NOT_LAST);
      case BEFORE ->
          pair(rule, members)
              ? List.of(
                  new DayRule.AllBefore(name, price, members.of(rule.a()), members.of(rule.b())))
              : List.of();
      case NOT_AFTER ->
          pair(rule, members)
              ? List.of(
                  new DayRule.NotRightAfter(
                      name, price, members.of(rule.a()), members.of(rule.b())))
              : List.of();
      case AT_MOST -> atMost(rule, members.points(rule.a()), price);
      case CHANGEOVER ->
          pair(rule, members)
              ? List.of(
                  new DayRule.Changeover(
                      name,
                      members.of(rule.a()),
                      members.of(rule.b()),
                      rule.minutes().plusSeconds()))
              : List.of();
      case MINUTES -> minutes(rule, members.of(rule.a()));
      case TOGETHER -> together(rule, members, price);
      case NOT_TOGETHER -> notTogether(rule, members, price);
    };
  }

  private static List<DayRule> clock(
      TagRule rule, VanDay day, NavigableSet<String> ids, OptionalLong price) {
    return ids.isEmpty() ? List.of() : List.of(ClockTerms.liked(rule, day, ids, price));
  }

  private static List<DayRule> place(
      String name, OptionalLong price, NavigableSet<String> ids, DayPlace where) {
    return ids.isEmpty() ? List.of() : List.of(new DayRule.PlaceInDay(name, price, ids, where, 0));
  }

  /** Whether there are two different stops, one on each side. */
  private static boolean pair(TagRule rule, Members members) {
    Set<String> a = members.of(rule.a());
    Set<String> b = members.of(rule.b());
    return !a.isEmpty() && !b.isEmpty() && (a.size() > 1 || b.size() > 1 || !a.equals(b));
  }

  private static List<DayRule> atMost(
      TagRule rule, Map<String, Integer> points, OptionalLong price) {
    int all = points.values().stream().mapToInt(one -> one).sum();
    return all <= rule.number()
        ? List.of()
        : List.of(new DayRule.AtMost(rule.name(), price, points, rule.number()));
  }

  private static List<DayRule> minutes(TagRule rule, NavigableSet<String> ids) {
    RuleMinutes minutes = rule.minutes();
    return ids.isEmpty() || minutes.everyPlace()
        ? List.of()
        : List.of(
            new DayRule.PlaceMinutes(
                rule.name(),
                ids,
                minutes.fromPlace(),
                minutes.toPlace(),
                minutes.timesThousandths(),
                minutes.plusSeconds()));
  }

  /** A group in two parts breaks the rule on two days: each of them bears half of the price. */
  private static List<DayRule> together(TagRule rule, Members members, OptionalLong price) {
    OptionalLong half =
        price.isPresent() ? OptionalLong.of(price.getAsLong() / 2) : OptionalLong.empty();
    List<DayRule> rules = new ArrayList<>();
    for (NavigableSet<String> group : members.groups(rule.a())) {
      if (group.stream().anyMatch(members::asked)) {
        rules.add(new DayRule.Together(rule.name(), half, group));
      }
    }
    return rules;
  }

  private static List<DayRule> notTogether(TagRule rule, Members members, OptionalLong price) {
    List<DayRule> rules = new ArrayList<>();
    for (NavigableSet<String> group : members.groups(rule.a())) {
      if (group.stream().filter(members::asked).count() > 1) {
        rules.add(new DayRule.NotTogether(rule.name(), price, group));
      }
    }
    return rules;
  }
}
