package dev.dogleg.audit;

import dev.dogleg.itinerary.Finding;
import dev.dogleg.itinerary.PlannedStop;
import java.util.List;

/**
 * The times of an order that a person wrote down.
 *
 * @param stops {@code LEAVE}, visits, break and water stops, {@code HOME}; without {@code HOME}
 *     where no road leads there; empty where no visit is left. Spare is 0 where the rest of the day
 *     breaks a limit as it is
 * @param breaches what does not hold, in the order of the day, with what was measured and what is
 *     allowed; an index of a breach counts in them
 */
public record ReTimedDay(List<PlannedStop> stops, List<Finding> breaches) {
  /** Copies the lists. */
  public ReTimedDay {
    stops = List.copyOf(stops);
    breaches = List.copyOf(breaches);
  }
}
