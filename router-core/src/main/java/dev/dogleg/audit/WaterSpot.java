package dev.dogleg.audit;

import java.util.Objects;

/**
 * Where a person put a water stop.
 *
 * @param afterVisitId the visit after which it stands, its break included; empty: before the first
 * @param place the water place, a number of the request's travel times
 */
public record WaterSpot(String afterVisitId, int place) {
  /** Checks that nothing is null. */
  public WaterSpot {
    Objects.requireNonNull(afterVisitId, "afterVisitId");
  }
}
