package dev.dogleg.model;

/** State of the coat on the day. */
public enum CoatState {
  /** Brushed through as usual. */
  GOOD,
  /** A few mats or tangles. */
  TANGLED,
  /** Matted in places. */
  MATTED,
  /** Matted to the skin: shaved, never pulled; the vet first where the skin is hurt. */
  PELTED
}
