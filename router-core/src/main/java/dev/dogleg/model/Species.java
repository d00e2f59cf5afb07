package dev.dogleg.model;

/** What kind of animal is groomed. */
public enum Species {
  /** A dog. */
  DOG,
  /** A cat. */
  CAT
}
