package dev.dogleg.audit;

import java.util.Objects;

/**
 * Where a person put the break.
 *
 * @param visitId the visit at whose door it is taken
 * @param afterService true: after that visit's service; false: after arrival, before the service
 */
public record BreakSpot(String visitId, boolean afterService) {
  /** Checks that nothing is null. */
  public BreakSpot {
    Objects.requireNonNull(visitId, "visitId");
  }
}
