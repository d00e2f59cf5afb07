package dev.dogleg.model;

/**
 * What told times are worth to the business.
 *
 * @param keptPercent of 100 told times so many are to be kept, 50..99
 * @param brokenSeconds what one broken told time is worth in seconds of driving, 0..1,000,000; 0:
 *     the planner does not weigh odds
 */
public record PromiseWish(int keptPercent, int brokenSeconds) {
  /**
   * What holds where a card says nothing: 95 of 100 (as 47 CFR 76.309 asks of cable companies), an
   * hour of driving (an estimate without source).
   */
  public static final PromiseWish STARTER = new PromiseWish(95, 3_600);

  /** Checks the ranges. */
  public PromiseWish {
    if (keptPercent < 50 || keptPercent > 99) {
      throw new IllegalArgumentException("keptPercent must lie in 50..99, was " + keptPercent);
    }
    if (brokenSeconds < 0 || brokenSeconds > 1_000_000) {
      throw new IllegalArgumentException("brokenSeconds out of range: " + brokenSeconds);
    }
  }
}
