package dev.dogleg.model;

/**
 * How much a rule or zone binds.
 *
 * @param ratherMinutes -1: it must hold; else what a breach is worth, in minutes of driving,
 *     0..1,440
 */
public record Strength(int ratherMinutes) {
  /** It must hold. */
  public static final Strength MUST = new Strength(-1);

  /** Checks the range. */
  public Strength {
    if (ratherMinutes < -1 || ratherMinutes > 1_440) {
      throw new IllegalArgumentException("rather must lie in 0..1440 minutes");
    }
  }

  /**
   * It should rather hold.
   *
   * @param minutes worth of a breach in minutes of driving, 0..1,440
   * @return the strength
   */
  public static Strength rather(int minutes) {
    return new Strength(Math.max(0, minutes));
  }

  /** {@return whether it must hold} */
  public boolean must() {
    return ratherMinutes < 0;
  }

  /** {@return {@code must} or {@code rather 15}} */
  @Override
  public String toString() {
    return must() ? "must" : "rather " + ratherMinutes;
  }
}
