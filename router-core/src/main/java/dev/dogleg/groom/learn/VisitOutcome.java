package dev.dogleg.groom.learn;

/** How a visit ended. */
public enum VisitOutcome {
  /** Groomed as ordered. */
  DONE,
  /** Stopped before its end: it would have taken longer, nobody knows how much. */
  CUT_SHORT,
  /** Nobody was there. */
  NO_SHOW,
  /** The owner or the groomer refused at the door. */
  REFUSED
}
