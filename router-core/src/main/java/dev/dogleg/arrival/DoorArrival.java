package dev.dogleg.arrival;

import java.util.Objects;

/**
 * Arrival at one door of a planned day.
 *
 * @param visitId whose door
 * @param arrival when the van is there, before any waiting
 */
public record DoorArrival(String visitId, ArrivalTime arrival) {
  /** Checks that nothing is null. */
  public DoorArrival {
    Objects.requireNonNull(visitId, "visitId");
    Objects.requireNonNull(arrival, "arrival");
  }
}
