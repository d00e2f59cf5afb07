package dev.dogleg.groom;

/** How a word was found in a table, best first. */
public enum MatchGrade {
  /** The name itself; case, accents and punctuation do not matter. */
  EXACT,
  /** Another name of the same thing. */
  ALIAS,
  /** One typing error away from exactly one thing: a guess, to be said. */
  NEAR,
  /** Not found. */
  NONE
}
