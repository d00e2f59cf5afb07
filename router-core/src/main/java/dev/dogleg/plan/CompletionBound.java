package dev.dogleg.plan;

/**
 * A lower bound on what the rest of a day is worth: the legs still to drive, the visits left out.
 */
interface CompletionBound {
  /**
   * Bound from a door.
   *
   * @param sets the sets
   * @param set visits served so far, {@code last} among them
   * @param last visit whose door is left next
   * @param earliest earliest leaving
   * @return packed value, never above that of any completion
   */
  long after(VisitSets sets, int set, int last, int earliest);

  /** {@return bound of the whole day} */
  long ofDay();
}
