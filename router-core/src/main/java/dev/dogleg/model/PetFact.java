package dev.dogleg.model;

/** A fact about a pet or its groom that may be known or only guessed from somebody's words. */
public enum PetFact {
  /** Species. */
  SPECIES,
  /** Breed. */
  BREED,
  /** Weight or size class. */
  SIZE,
  /** Coat type. */
  COAT,
  /** Behaviour. */
  BEHAVIOUR,
  /** State of the coat. */
  COAT_STATE,
  /** Date of birth. */
  BORN
}
