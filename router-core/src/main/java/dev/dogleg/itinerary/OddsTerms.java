package dev.dogleg.itinerary;

import java.util.Map;
import java.util.Objects;
import java.util.Set;

/**
 * What a van-day's promises are worth and what makes them uncertain.
 *
 * <p>A promise is the end of the last arrival window of a promised visit. So many in a thousand are
 * to be kept; a plan pays {@code brokenSixtieths} times the probability by which each promise falls
 * short of that.
 *
 * @param services spread of each visit's service, by visit id; a visit without one lasts as planned
 * @param day spread of the day and of its drives
 * @param promised ids of the visits whose windows are promises
 * @param keptPermille share of promises to be kept, thousandths, 500..999
 * @param brokenSixtieths price of one broken promise, sixtieths of a second of driving, 0..2^38
 */
public record OddsTerms(
    Map<String, ServiceSpread> services,
    DaySpread day,
    Set<String> promised,
    int keptPermille,
    long brokenSixtieths) {
  /** Copies the collections and checks the range. */
  public OddsTerms {
    services = Map.copyOf(services);
    Objects.requireNonNull(day, "day");
    promised = Set.copyOf(promised);
    if (keptPermille < 500 || keptPermille > 999) {
      throw new IllegalArgumentException("keptPermille out of range: " + keptPermille);
    }
    if (brokenSixtieths < 0 || brokenSixtieths > 1L << 38) {
      throw new IllegalArgumentException("brokenSixtieths out of range: " + brokenSixtieths);
    }
  }

  /** {@return whether any plan can pay for a promise} */
  public boolean priced() {
    return brokenSixtieths > 0 && !promised.isEmpty();
  }
}
