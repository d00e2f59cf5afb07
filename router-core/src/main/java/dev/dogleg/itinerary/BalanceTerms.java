package dev.dogleg.itinerary;

/**
 * Prices for a day that is fuller or longer than the others.
 *
 * @param groomSeconds service seconds up to which a day costs nothing, 0..86,400
 * @param groomSixtieths price of each second above, 0..36,000
 * @param endSeconds second of the day up to which its end costs nothing, 0 or more
 * @param endSixtieths price of each second later, 0..36,000
 */
public record BalanceTerms(int groomSeconds, int groomSixtieths, int endSeconds, int endSixtieths) {
  /** Checks the ranges. */
  public BalanceTerms {
    if (groomSeconds < 0 || groomSeconds > 86_400 || endSeconds < 0) {
      throw new IllegalArgumentException("balance seconds out of range");
    }
    if (groomSixtieths < 0
        || groomSixtieths > 36_000
        || endSixtieths < 0
        || endSixtieths > 36_000) {
      throw new IllegalArgumentException("balance prices must lie in 0..36000");
    }
  }
}
