package dev.dogleg.address;

import java.util.Objects;
import java.util.Optional;

/**
 * What the map knows of a district by its name.
 *
 * @param asked the name as typed
 * @param outcome what is known
 * @param district present just where {@code outcome} is {@link Outcome#AREA} or {@link
 *     Outcome#ADDRESSES}
 */
public record DistrictLookUp(String asked, Outcome outcome, Optional<District> district) {
  /** What is known. */
  public enum Outcome {
    /** Its limits. */
    AREA,
    /** No limits, but addresses that bear its name. */
    ADDRESSES,
    /** Areas of this name lie apart; which one is meant must be said otherwise. */
    SEVERAL,
    /** The extract cuts its limits. */
    CUT,
    /** A point alone: where it ends the map does not say. */
    POINT,
    /** Nothing. */
    NONE
  }

  /** Checks that the district is there just where it is known. */
  public DistrictLookUp {
    Objects.requireNonNull(asked, "asked");
    boolean known = outcome == Outcome.AREA || outcome == Outcome.ADDRESSES;
    if (known != district.isPresent()) {
      throw new IllegalArgumentException(outcome + " with " + district);
    }
  }
}
