package dev.dogleg.audit;

import dev.dogleg.itinerary.DayRule;
import dev.dogleg.itinerary.PlannedStop.Kind;
import java.util.ArrayList;
import java.util.List;

/** What a day does against its rules: findings where they must hold, a price where rather. */
final class RuleCheck {
  /** No price of rules is told beyond this: far more than any day costs, and sums stay longs. */
  private static final long MOST_PRICE = 1L << 60;

  private RuleCheck() {}

  /** Adds a finding for every breach of a rule that must hold. */
  static void check(DayRows rows, FindingList found) {
    List<Row> visits = rows.of(Kind.VISIT);
    for (DayRule rule : rows.request().terms().rules()) {
      if (rule.must()) {
        for (RuleBreach breach : breaches(rule, rows)) {
          int stop = breach.number() < 0 ? -1 : visits.get(breach.number()).index();
          String id = breach.number() < 0 ? "" : visits.get(breach.number()).stop().visitId();
          found.add(
              breach.code(), stop, id, breach.measured(), breach.allowed(), breach.sentence());
        }
      }
    }
  }

  /** The price of all breaches of rules that should rather hold, in sixtieths. */
  static long price(DayRows rows) {
    long sum = 0;
    for (DayRule rule : rows.request().terms().rules()) {
      long price = rule.ratherSixtieths().orElse(0);
      long count = breaches(rule, rows).stream().mapToLong(RuleBreach::count).sum();
      boolean told = price == 0 || count <= MOST_PRICE / price;
      sum = Math.min(MOST_PRICE, sum + (told ? price * count : MOST_PRICE));
    }
    return sum;
  }

  private static List<RuleBreach> breaches(DayRule rule, DayRows rows) {
    List<Row> visits = rows.of(Kind.VISIT);
    if (!(rule instanceof DayRule.Clock clock)) {
      return OrderRules.breaches(rule, visits.stream().map(row -> row.stop().visitId()).toList());
    }
    List<RuleBreach> breaches = new ArrayList<>();
    for (int k = 0; k < visits.size(); k++) {
      Row row = visits.get(k);
      boolean named = clock.visits().contains(row.stop().visitId());
      if (named && !LikedHours.kept(clock, rows, row)) {
        breaches.add(new RuleBreach(rule, k, 1, 1, 0, row.words() + " is outside liked hours."));
      }
    }
    return breaches;
  }
}
