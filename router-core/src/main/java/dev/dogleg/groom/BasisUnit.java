package dev.dogleg.groom;

/** Unit of an amount in a basis line. */
public enum BasisUnit {
  /** Seconds. */
  SECONDS,
  /** A factor on the time, in thousandths. */
  FACTOR_PERMILLE,
  /** Standard deviation of the logarithm of the time, in thousandths. */
  LOG_SPREAD_PERMILLE
}
