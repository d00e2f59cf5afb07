package dev.dogleg.groom;

/** Unit of an amount in a basis line. */
public enum BasisUnit {
  /** Whole minutes. */
  MINUTES,
  /** A factor on minutes, in thousandths. */
  FACTOR_PERMILLE,
  /** Standard deviation of the logarithm of the minutes, in thousandths. */
  LOG_SPREAD_PERMILLE
}
