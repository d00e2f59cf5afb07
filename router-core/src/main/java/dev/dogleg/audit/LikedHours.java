package dev.dogleg.audit;

import dev.dogleg.itinerary.DayRule.Clock;
import dev.dogleg.time.TimeWindow;

/** Whether a stay keeps liked hours. */
final class LikedHours {
  private LikedHours() {}

  /** Whether one visit of a day keeps a clock rule. */
  static boolean kept(Clock rule, DayRows rows, Row visit) {
    int arrive = visit.stop().arriveSeconds();
    int leave = rows.lastOfStay(visit).stop().leaveSeconds();
    return rule.windows().stream().anyMatch(window -> kept(rule, window, visit, arrive, leave));
  }

  private static boolean kept(Clock rule, TimeWindow window, Row visit, int arrive, int leave) {
    return switch (rule.kind()) {
      case ARRIVE ->
          arrive <= window.toSeconds() && visit.stop().startSeconds() >= window.fromSeconds();
      case DONE_BY -> visit.endSeconds() <= window.toSeconds();
      case VAN -> window.holds(arrive) && window.holds(leave);
    };
  }
}
