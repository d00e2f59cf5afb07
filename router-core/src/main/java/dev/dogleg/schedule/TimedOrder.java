package dev.dogleg.schedule;

import dev.dogleg.itinerary.PlannedStop;
import java.util.List;
import java.util.Optional;

/**
 * One order of visits, timed at least cost, or the reason why it cannot be.
 *
 * @param stops the day's events; empty for a day without visits and for an impossible one
 * @param costSixtieths cost of driving, waiting, kilometres, overtime and end, in sixtieths of a
 *     second of driving; without the prices of what is left out; 0 where impossible
 * @param miss empty where the order can be driven
 */
public record TimedOrder(List<PlannedStop> stops, long costSixtieths, Optional<RuleMiss> miss) {
  /** Copies the list. */
  public TimedOrder {
    stops = List.copyOf(stops);
  }

  /** {@return whether the order can be driven} */
  public boolean possible() {
    return miss.isEmpty();
  }
}
