package dev.dogleg.model;

/** How a client wants to hear when the van comes. */
public enum HowToTell {
  /** By text message. */
  TEXT,
  /** By a call. */
  CALL,
  /** Not at all. */
  NOBODY,
  /** Through the neighbour. */
  NEIGHBOUR
}
