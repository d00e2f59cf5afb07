package dev.dogleg.schedule;

import dev.dogleg.itinerary.DayRule;
import dev.dogleg.itinerary.DayTerms;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Names the first must rule, or the tanks, that an order of visits breaks however it is timed. */
final class BrokenRule {
  private BrokenRule() {}

  /** The first rule, in the order of the day's list, that an order of visits breaks. */
  static Optional<RuleMiss> of(DayModel day, int[] order) {
    List<String> ids = new ArrayList<>();
    for (int i = 0; i < day.size(); i++) {
      ids.add(day.visit(i).id());
    }
    for (DayRule rule : day.terms.rules()) {
      if (rule.must()) {
        String at = brokenAt(day, new DayRules(ids, List.of(rule)), order);
        if (at != null) {
          return Optional.of(new RuleMiss(RuleMiss.RULE + rule.name(), at, 0));
        }
      }
    }
    DayTerms terms = day.terms;
    if (terms.water().isPresent()) {
      for (int visit : order) {
        StepTerms steps = day.steps();
        if (!steps.lasts(steps.fresh(visit), steps.grey(visit))) {
          return Optional.of(new RuleMiss(RuleMiss.WATER, day.visit(visit).id(), 0));
        }
      }
    }
    return Optional.empty();
  }

  private static String brokenAt(DayModel day, DayRules rule, int[] order) {
    long[] served = new long[Math.max(1, (day.size() + Long.SIZE - 1) / Long.SIZE)];
    int last = day.start();
    for (int k = 0; k < order.length; k++) {
      if (!rule.may(served, 0, last, order[k], k + 1)) {
        return day.visit(order[k]).id();
      }
      served[order[k] >>> 6] |= 1L << order[k];
      last = order[k];
    }
    return order.length == 0 || rule.mayEnd(served, 0, last) ? null : day.visit(last).id();
  }
}
