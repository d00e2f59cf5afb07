package dev.dogleg.oracle;

import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.DayRule;
import dev.dogleg.itinerary.DayTerms;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.plan.SeededDays;
import java.util.List;

/** The oracle's plain reading of rules, for rules that stand alone. */
public final class RuleReading {
  private RuleReading() {}

  private static DayRequest with(List<DayRule> rules) {
    return RandomTerms.with(SeededDays.day(1, 2, 1, false), DayTerms.of(rules));
  }

  /**
   * Service of the last visit of an order that may go on.
   *
   * @param rules the rules
   * @param order visits, the last one is meant
   * @return seconds
   */
  public static int service(List<DayRule> rules, List<Visit> order) {
    return OracleRules.service(with(rules), order);
  }

  /**
   * Price of all breaches of rules that should rather hold; clock rules have none here.
   *
   * @param rules the rules
   * @param order a whole day
   * @return sixtieths
   */
  public static long ratherPrice(List<DayRule> rules, List<Visit> order) {
    return OracleRules.price(with(rules.stream().filter(rule -> !rule.must()).toList()), order);
  }

  /**
   * Whether every rule that must hold does.
   *
   * @param rules the rules
   * @param order a whole day
   * @return false where one is broken
   */
  public static boolean mustHold(List<DayRule> rules, List<Visit> order) {
    return OracleRules.price(with(rules.stream().filter(DayRule::must).toList()), order)
        != OracleRules.BROKEN;
  }
}
