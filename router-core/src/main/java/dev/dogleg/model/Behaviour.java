package dev.dogleg.model;

/** How the pet bears being groomed. */
public enum Behaviour {
  /** Stands well. */
  EASY,
  /** Needs pauses. */
  NERVOUS,
  /** Needs handling; the groom is stopped when unsafe. */
  DIFFICULT
}
