package dev.dogleg.audit;

/** Whether the break is taken at a door, and on which side of its service. */
enum BreakAt {
  /** No break at this door. */
  NONE,
  /** After arrival, before the service. */
  BEFORE,
  /** After the service. */
  AFTER
}
