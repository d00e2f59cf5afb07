package dev.dogleg.audit;

import dev.dogleg.itinerary.Finding;
import java.util.Objects;

/**
 * One breach that the audit saw in a week.
 *
 * @param day number of the van-day in the request, from 0; -1 where the whole week is meant
 * @param finding the breach; its {@code stop} counts in that day's events
 */
public record WeekFinding(int day, Finding finding) {
  /** Checks that nothing is null. */
  public WeekFinding {
    Objects.requireNonNull(finding, "finding");
  }
}
