package dev.dogleg.address;

/** What came of one look-up. */
public enum Outcome {
  /** One place fits what was typed; its grade says how well it is known. */
  FOUND,
  /** Several places fit what was typed; a person must choose. */
  AMBIGUOUS,
  /** No place fits what was typed. */
  NONE
}
