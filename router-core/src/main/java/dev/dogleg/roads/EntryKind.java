package dev.dogleg.roads;

/** Who may use a road. */
public enum EntryKind {
  /** Everybody. */
  OPEN,
  /** Those who have business there: {@code access=destination} or {@code customers}. */
  DESTINATION,
  /** With the owner's leave: {@code access=private} or {@code permit}. */
  PRIVATE
}
