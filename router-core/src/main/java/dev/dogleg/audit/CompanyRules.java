package dev.dogleg.audit;

import dev.dogleg.itinerary.DayRule;
import dev.dogleg.itinerary.DayRule.AtMost;
import dev.dogleg.itinerary.DayRule.NotTogether;
import dev.dogleg.itinerary.DayRule.Together;
import java.util.List;
import java.util.Optional;

/** What a day does against the rules that ask who else is served on it. */
final class CompanyRules {
  private CompanyRules() {}

  /** The breach of one rule by the visits of a day; empty too for rules of another kind. */
  static Optional<RuleBreach> breach(DayRule rule, List<String> ids) {
    if (rule instanceof AtMost most) {
      long points = ids.stream().mapToLong(id -> most.points().getOrDefault(id, 0)).sum();
      String text = "the day has %d load points and may have %d.";
      return above(rule, points, most.most(), text.formatted(points, most.most()));
    }
    if (rule instanceof Together together) {
      List<String> here = ids.stream().filter(together.visits()::contains).toList();
      List<String> missing = together.visits().stream().filter(id -> !ids.contains(id)).toList();
      if (here.isEmpty() || missing.isEmpty()) {
        return Optional.empty();
      }
      String text = "of those that belong together %s are on this day and %s are not.";
      text = text.formatted(String.join(", ", here), String.join(", ", missing));
      int all = together.visits().size();
      return Optional.of(new RuleBreach(rule, -1, 1, all - missing.size(), all, text));
    }
    if (rule instanceof NotTogether apart) {
      List<String> here = ids.stream().filter(apart.visits()::contains).toList();
      String text = "%s are on this day, and one of them may be.";
      return above(rule, here.size(), 1, text.formatted(String.join(", ", here)));
    }
    return Optional.empty();
  }

  private static Optional<RuleBreach> above(DayRule rule, long has, long most, String text) {
    boolean broken = has > most;
    return broken
        ? Optional.of(new RuleBreach(rule, -1, has - most, has, most, text))
        : Optional.empty();
  }
}
