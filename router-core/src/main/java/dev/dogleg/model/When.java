package dev.dogleg.model;

import dev.dogleg.time.TimeWindow;
import dev.dogleg.time.WorkDay;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * When a client can be visited: possibilities joined by "or". Choices that speak of one weekday
 * must bind done-by, van and first alike, since a visit has one of each a day.
 *
 * @param choices at least one
 */
public record When(List<WhenChoice> choices) {

  /** Any time. */
  public static final When ANY = new When(List.of(WhenChoice.ANY));

  /** Checks that choices of one day agree. */
  public When {
    choices = List.copyOf(choices);
    if (choices.isEmpty()) {
      throw new IllegalArgumentException("no choice");
    }
    for (int i = 0; i < choices.size(); i++) {
      for (int j = 0; j < i; j++) {
        if (shareDay(choices.get(i), choices.get(j)) && !choices.get(i).agrees(choices.get(j))) {
          throw new IllegalArgumentException("two choices of one day bind it differently");
        }
      }
    }
  }

  private static boolean shareDay(WhenChoice a, WhenChoice b) {
    return a.days().isEmpty() || b.days().isEmpty() || !Collections.disjoint(a.days(), b.days());
  }

  /**
   * The limits on a given day.
   *
   * @param day date and zone
   * @return the limits, or empty where no choice speaks of that weekday
   */
  public Optional<DayLimits> on(WorkDay day) {
    List<WhenChoice> today =
        choices.stream().filter(choice -> choice.on(day.date().getDayOfWeek())).toList();
    if (today.isEmpty()) {
      return Optional.empty();
    }
    WhenChoice any = today.get(0);
    return Optional.of(
        new DayLimits(
            joined(today.stream().map(choice -> choice.arriveWithin().on(day)).toList()),
            WallSpan.elapsed(any.doneByWallSeconds(), day),
            joined(any.vanWithin().stream().map(span -> span.on(day)).toList()),
            any.first()));
  }

  /** Spans sorted, those that touch or overlap made one. */
  private static List<TimeWindow> joined(List<TimeWindow> spans) {
    List<TimeWindow> result = new ArrayList<>();
    for (TimeWindow span : spans.stream().sorted().toList()) {
      int last = result.size() - 1;
      if (last >= 0 && span.fromSeconds() <= result.get(last).toSeconds()) {
        TimeWindow before = result.get(last);
        result.set(
            last,
            new TimeWindow(before.fromSeconds(), Math.max(before.toSeconds(), span.toSeconds())));
      } else {
        result.add(span);
      }
    }
    return result;
  }
}
