package dev.dogleg.itinerary;

/**
 * How much a visit's service varies: fixed seconds, and on top a lognormal duration.
 *
 * <p>Lognormal fits service times better than normal: Strum, May, Vargas 2000, Anesthesiology
 * 92:1160-1167 (surgery; from memory).
 *
 * @param fixedSeconds seconds that do not vary, 0..43,200
 * @param medianSeconds median of the part that varies, 0 or more; 0 where nothing varies
 * @param logSpread standard deviation of its logarithm as seen over many days (what whole days have
 *     in common is part of it), 0..3
 */
public record ServiceSpread(int fixedSeconds, double medianSeconds, double logSpread) {
  /** Checks the ranges. */
  public ServiceSpread {
    if (fixedSeconds < 0
        || fixedSeconds > 43_200
        || !(medianSeconds >= 0 && medianSeconds <= 86_400)
        || !(logSpread >= 0 && logSpread <= 3)) {
      throw new IllegalArgumentException(
          "not a service: " + fixedSeconds + " + " + medianSeconds + ", spread " + logSpread);
    }
  }
}
