package dev.dogleg.model;

/** What of an earlier plan is to stay as it is. */
public enum Lock {
  /** The day, groomer and van. */
  DAY,
  /** The day and the time of arrival. */
  TIME,
  /** The day and the place in its order. */
  PLACE
}
