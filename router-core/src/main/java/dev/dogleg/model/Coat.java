package dev.dogleg.model;

/** Coat types of the trade. A cat's coat is {@code SMOOTH} (short-haired) or {@code LONG}. */
public enum Coat {
  /** Short and close. */
  SMOOTH,
  /** Soft undercoat below a harsher topcoat, of any length. */
  DOUBLE,
  /** Harsh and wiry. */
  WIRE,
  /** Curly or fleecy, grows on. */
  CURLY,
  /** Long, silky or feathered. */
  LONG,
  /** Cords. */
  CORDED,
  /** No hair to speak of. */
  HAIRLESS
}
