package dev.dogleg.cli.terms;

import dev.dogleg.itinerary.DayRule;
import dev.dogleg.itinerary.DayRule.ClockKind;
import dev.dogleg.model.DayLimits;
import dev.dogleg.model.RuleShape;
import dev.dogleg.model.TagRule;
import dev.dogleg.time.TimeWindow;
import java.util.List;
import java.util.OptionalLong;
import java.util.Set;

/** What clock rules come to: narrower limits, or liked hours. */
final class ClockTerms {
  private ClockTerms() {}

  /** The hours of a clock rule on a day. */
  static List<TimeWindow> windows(TagRule rule, VanDay day) {
    return rule.when().orElseThrow().on(day.day()).orElseThrow().arriveWithin();
  }

  /**
   * Narrows a choice's limits.
   *
   * @param told whether a time was told: then nothing is narrowed, it is only looked whether it
   *     could
   * @return false where nothing would be left
   */
  static boolean narrow(TagRule rule, VanDay day, boolean told, DraftChoice choice) {
    List<TimeWindow> windows = windows(rule, day);
    DayLimits limits = choice.limits();
    List<TimeWindow> arrive = limits.arriveWithin();
    int doneBy = limits.doneBySeconds();
    List<TimeWindow> van = limits.vanWithin();
    switch (rule.shape()) {
      case ARRIVE -> arrive = Windows.common(arrive, windows);
      case DONE_BY -> doneBy = Math.min(doneBy, windows.get(windows.size() - 1).toSeconds());
      case VAN -> van = Windows.common(van, windows);
      default -> throw new IllegalArgumentException("no clock rule: " + rule.name());
    }
    boolean left =
        !arrive.isEmpty()
            && !van.isEmpty()
            && arrive.get(0).fromSeconds() < doneBy
            && meets(van, arrive, doneBy);
    if (left && !told) {
      choice.limits(new DayLimits(arrive, doneBy, van, limits.first()));
    }
    return left;
  }

  private static boolean meets(List<TimeWindow> van, List<TimeWindow> arrive, int doneBy) {
    for (TimeWindow stay : van) {
      for (TimeWindow window : arrive) {
        if (stay.fromSeconds() <= window.toSeconds()
            && Math.max(stay.fromSeconds(), window.fromSeconds())
                < Math.min(stay.toSeconds(), doneBy)) {
          return true;
        }
      }
    }
    return false;
  }

  /** Liked hours of those whom a rule concerns. */
  static DayRule liked(TagRule rule, VanDay day, Set<String> ids, OptionalLong price) {
    List<TimeWindow> windows = windows(rule, day);
    ClockKind kind =
        rule.shape() == RuleShape.ARRIVE
            ? ClockKind.ARRIVE
            : rule.shape() == RuleShape.VAN ? ClockKind.VAN : ClockKind.DONE_BY;
    List<TimeWindow> used =
        kind == ClockKind.DONE_BY
            ? List.of(new TimeWindow(0, windows.get(windows.size() - 1).toSeconds()))
            : windows;
    return new DayRule.Clock(rule.name(), price, ids, kind, used);
  }
}
