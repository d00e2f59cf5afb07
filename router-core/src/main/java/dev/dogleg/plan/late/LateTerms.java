package dev.dogleg.plan.late;

import dev.dogleg.itinerary.BreakRule;
import dev.dogleg.plan.late.Promise.Kind;
import dev.dogleg.schedule.DayModel;

/** What is promised to each visit of a model, and by how much an arrival or a break is late. */
final class LateTerms {
  private final int[] until;
  private final boolean[] told;
  private final int breakUntil;

  LateTerms(DayModel day, RestRequest rest) {
    until = new int[day.size()];
    told = new boolean[day.size()];
    for (int visit = 0; visit < day.size(); visit++) {
      Promise promise = rest.promise(day.visit(visit).id()).orElse(null);
      until[visit] = promise == null ? Integer.MAX_VALUE : promise.endSeconds();
      told[visit] = promise != null && promise.kind() == Kind.TOLD;
    }
    breakUntil =
        rest.rest()
            .day()
            .shift()
            .breakRule()
            .map(BreakRule::startWithin)
            .map(window -> window.toSeconds())
            .orElse(Integer.MAX_VALUE);
  }

  /**
   * Seconds by which an arrival at a visit's door breaks its promise.
   *
   * @param opens first second that what may not slide allows there: where it comes after the
   *     promise's end, nobody is served in time however early the van is
   */
  int seconds(int visit, int arrive, int opens) {
    return Math.max(0, Math.max(arrive, opens) - until[visit]);
  }

  /** {@return whether the promise is a told time} */
  boolean told(int visit) {
    return told[visit];
  }

  /** {@return seconds by which a break that starts so starts after its span} */
  int breakLate(int start) {
    return Math.max(0, start - breakUntil);
  }

  /** {@return widths that allow just this lateness} */
  RestRequest.Widths widths(DayModel day, int[] late) {
    java.util.Map<String, Integer> seconds = new java.util.HashMap<>();
    for (int visit = 0; visit < until.length; visit++) {
      if (late[visit] > 0) {
        seconds.put(day.visit(visit).id(), until[visit] + late[visit]);
      }
    }
    int breakLate = late[late.length - 1];
    return new RestRequest.Widths(seconds, breakLate == 0 ? 0 : breakUntil + breakLate);
  }
}
