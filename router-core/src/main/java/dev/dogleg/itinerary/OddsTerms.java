package dev.dogleg.itinerary;

import java.util.Map;
import java.util.Objects;
import java.util.Set;

/**
 * What a van-day's promises are worth and what makes them uncertain.
 *
 * <p>A promise is the end of the last arrival window of a promised visit. A plan pays {@code
 * brokenSixtieths} times the number of promises that it is expected to break.
 *
 * @param services spread of each visit's service, by visit id; a visit without one lasts as planned
 * @param day spread of the day and of its drives
 * @param promised ids of the visits whose windows are promises
 * @param brokenSixtieths price of one broken promise, sixtieths of a second of driving, 0..2^38
 */
public record OddsTerms(
    Map<String, ServiceSpread> services,
    DaySpread day,
    Set<String> promised,
    long brokenSixtieths) {
  /** Copies the collections and checks the range. */
  public OddsTerms {
    services = Map.copyOf(services);
    Objects.requireNonNull(day, "day");
    promised = Set.copyOf(promised);
    if (brokenSixtieths < 0 || brokenSixtieths > 1L << 38) {
      throw new IllegalArgumentException("brokenSixtieths out of range: " + brokenSixtieths);
    }
  }
}
