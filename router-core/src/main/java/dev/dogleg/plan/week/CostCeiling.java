package dev.dogleg.plan.week;

import dev.dogleg.itinerary.BalanceTerms;
import dev.dogleg.itinerary.DayRule;
import dev.dogleg.itinerary.Prices;

/**
 * A cost that no week reaches, however bad; for the time before any week is known. It is twice what
 * it need be: whoever checks a proof reckons such a cost anew and must not come to more.
 */
final class CostCeiling {
  /** More than any cost. */
  static final long FAR = 1L << 48;

  private CostCeiling() {}

  static long of(WeekModel model) {
    Prices prices = model.request().prices();
    long sum = 1;
    for (int i = 0; i < model.size(); i++) {
      sum += model.leftOutSixtieths(i);
    }
    for (VanKind kind : model.kinds()) {
      RelaxedDay day = kind.relaxed();
      long seconds = (long) day.latestEnd - day.from;
      long most = seconds * Math.max(60, prices.waitingMinuteSeconds());
      most += day.endCost(day.latestEnd);
      long dearest = 0;
      for (int i = 0; i < day.n + 2; i++) {
        for (int j = 0; j < day.n + 2; j++) {
          dearest = Math.max(dearest, day.legs.price(i, j));
        }
      }
      most += dearest * (day.n + 5);
      for (int local = 0; local < kind.size(); local++) {
        most += kind.extraSixtieths(local);
      }
      for (DayRule rule : kind.day().terms().rules()) {
        long breaches = 1L + kind.size();
        if (rule instanceof DayRule.AtMost atMost) {
          breaches = atMost.points().values().stream().mapToLong(Integer::longValue).sum();
        }
        most += Math.min(FAR, rule.ratherSixtieths().orElse(0) * Math.min(breaches, 1 << 20));
      }
      if (kind.day().terms().balance().isPresent()) {
        BalanceTerms balance = kind.day().terms().balance().get();
        most += seconds * balance.groomSixtieths();
        most += Math.max(0L, day.latestEnd - balance.endSeconds()) * balance.endSixtieths();
      }
      sum += most * kind.vanDays().size();
    }
    return Math.min(2 * sum, FAR);
  }
}
