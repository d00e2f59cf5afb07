package dev.dogleg.groom;

/** How well the groomer knows the pet; it decides the spread. */
public enum VisitHistory {
  /** First visit: extra minutes, and the spread of a new pet. */
  FIRST,
  /** Nothing is known: no extra minutes, and the spread of a new pet. */
  UNKNOWN,
  /** Groomed by this groomer before: the spread of a known pet. */
  KNOWN
}
