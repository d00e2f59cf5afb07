package dev.dogleg.cli.prepare;

import dev.dogleg.model.DayLimits;
import dev.dogleg.time.TimeWindow;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What two bookings at one door allow at the same time. */
final class LimitsJoin {
  private LimitsJoin() {}

  /**
   * The limits that keep both.
   *
   * @param a limits of one booking
   * @param b limits of another of the same client and day
   * @return the common limits, or empty where one arrival cannot keep both
   */
  static Optional<DayLimits> both(DayLimits a, DayLimits b) {
    List<TimeWindow> arrive = common(a.arriveWithin(), b.arriveWithin());
    List<TimeWindow> van = common(a.vanWithin(), b.vanWithin());
    if (arrive.isEmpty() || van.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new DayLimits(
            arrive, Math.min(a.doneBySeconds(), b.doneBySeconds()), van, a.first() || b.first()));
  }

  private static List<TimeWindow> common(List<TimeWindow> some, List<TimeWindow> others) {
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
