package dev.dogleg.address;

import dev.dogleg.model.GeoPoint;
import java.util.Objects;

/**
 * One place that an address may mean.
 *
 * @param point where it is
 * @param grade how well the map knows it
 * @param address the address as the map spells it, on one line
 * @param number house number as the map spells it; as typed where the map does not bear it; empty
 *     where none was typed
 * @param street street (or place) as the map spells it, for comparison with the road snapped to
 * @param postcode postcode of the map, empty where it knows none
 * @param town town of the map, empty where it knows none
 * @param distanceEstimateMetres how far the door may be from {@code point}, in metres, 0 or more
 * @param spelledAsTyped false where the street was read through a typing error or a left-out word
 * @param metresFromClients distance to the book's nearest other clients, -1 where none were given
 * @param source map object, for example {@code way 123}; empty where the place was computed
 * @param reason why this grade, in one sentence
 */
public record Match(
    GeoPoint point,
    Grade grade,
    String address,
    String number,
    String street,
    String postcode,
    String town,
    int distanceEstimateMetres,
    boolean spelledAsTyped,
    int metresFromClients,
    String source,
    String reason) {

  /** Checks for null and for a negative estimate. */
  public Match {
    Objects.requireNonNull(point, "point");
    Objects.requireNonNull(grade, "grade");
    Objects.requireNonNull(address, "address");
    Objects.requireNonNull(number, "number");
    Objects.requireNonNull(street, "street");
    Objects.requireNonNull(postcode, "postcode");
    Objects.requireNonNull(town, "town");
    Objects.requireNonNull(source, "source");
    Objects.requireNonNull(reason, "reason");
    if (distanceEstimateMetres < 0) {
      throw new IllegalArgumentException("estimate below zero: " + distanceEstimateMetres);
    }
  }
}
