package dev.dogleg.schedule;

/** Where on the way from one visit to the next the break is taken, if there. */
public enum BreakAt {
  /** Not on this way. */
  NOWHERE,
  /** At the door that is left, after its service. */
  BEFORE_LEAVING,
  /** At the door that is reached, before its service. */
  ON_ARRIVAL
}
