package dev.dogleg.cli.terms;

import dev.dogleg.time.TimeWindow;
import java.util.ArrayList;
import java.util.List;

/** Spans of a day. */
public final class Windows {
  private Windows() {}

  /**
   * What two lists of spans share.
   *
   * @param some sorted, apart
   * @param others sorted, apart
   * @return the common spans, sorted, apart; empty where they share nothing
   */
  public static List<TimeWindow> common(List<TimeWindow> some, List<TimeWindow> others) {
    List<TimeWindow> shared = new ArrayList<>();
    for (TimeWindow one : some) {
      for (TimeWindow other : others) {
        int from = Math.max(one.fromSeconds(), other.fromSeconds());
        int to = Math.min(one.toSeconds(), other.toSeconds());
        if (from <= to) {
          shared.add(new TimeWindow(from, to));
        }
      }
    }
    return shared.stream().sorted().toList();
  }
}
