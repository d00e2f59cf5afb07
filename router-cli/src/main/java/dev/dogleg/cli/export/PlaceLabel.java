package dev.dogleg.cli.export;

import dev.dogleg.model.GeoPoint;
import java.util.Objects;

/**
 * How a place is shown.
 *
 * @param address one line for a person
 * @param point where the van stands
 */
public record PlaceLabel(String address, GeoPoint point) {
  /** Checks that nothing is null. */
  public PlaceLabel {
    Objects.requireNonNull(address, "address");
    Objects.requireNonNull(point, "point");
  }
}
