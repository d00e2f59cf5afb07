package dev.dogleg.cli.prepare;

import dev.dogleg.cli.terms.Windows;
import dev.dogleg.model.DayLimits;
import dev.dogleg.time.TimeWindow;
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
    List<TimeWindow> arrive = Windows.common(a.arriveWithin(), b.arriveWithin());
    List<TimeWindow> van = Windows.common(a.vanWithin(), b.vanWithin());
    if (arrive.isEmpty() || van.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new DayLimits(
            arrive, Math.min(a.doneBySeconds(), b.doneBySeconds()), van, a.first() || b.first()));
  }
}
