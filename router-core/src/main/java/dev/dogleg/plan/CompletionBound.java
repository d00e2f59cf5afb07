package dev.dogleg.plan;

import dev.dogleg.schedule.RunEnvelope;

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
   * @param taken whether the break was taken
   * @param earliest earliest leaving
   * @return packed value, never above that of any completion
   */
  long after(VisitSets sets, int set, int last, boolean taken, int earliest);

  /**
   * Latest second at which a door may be left.
   *
   * @param sets the sets
   * @param set visits served so far, {@code last} among them
   * @param last visit whose door is left next
   * @return a later leaving is useless
   */
  int latest(VisitSets sets, int set, int last);

  /** {@return bound of the whole day} */
  long ofDay();

  /** {@return whether {@link #clip} knows the hours and so pays} */
  default boolean timed() {
    return false;
  }

  /**
   * Shortens runs to the seconds from which the day can still be finished below a limit.
   *
   * @param runs runs of being ready to leave {@code last}
   * @param sets the sets
   * @param set visits served so far, {@code last} among them
   * @param last visit whose door is left next
   * @param taken whether the break was taken
   * @param limit a whole value of this or more is useless
   */
  default void clip(
      RunEnvelope runs, VisitSets sets, int set, int last, boolean taken, long limit) {}

  /**
   * Bound from a door where it is known how many water stops were made and are still to come.
   *
   * @param sets the sets
   * @param set visits served so far, {@code last} among them
   * @param last visit whose door is left next
   * @param taken whether the break was taken
   * @param earliest earliest leaving
   * @param made water stops made
   * @param stops water stops to come, at least
   * @return packed value, never above that of any completion
   */
  default long after(
      VisitSets sets, int set, int last, boolean taken, int earliest, int made, int stops) {
    return after(sets, set, last, taken, earliest);
  }

  /**
   * Likewise {@link #clip}.
   *
   * @param runs runs of being ready to leave {@code last}
   * @param sets the sets
   * @param set visits served so far, {@code last} among them
   * @param last visit whose door is left next
   * @param taken whether the break was taken
   * @param limit a whole value of this or more is useless
   * @param made water stops made
   * @param stops water stops to come, at least
   */
  default void clip(
      RunEnvelope runs,
      VisitSets sets,
      int set,
      int last,
      boolean taken,
      long limit,
      int made,
      int stops) {
    clip(runs, sets, set, last, taken, limit);
  }
}
