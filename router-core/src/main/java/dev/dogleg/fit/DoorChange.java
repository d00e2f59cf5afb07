package dev.dogleg.fit;

import java.util.Objects;
import java.util.OptionalInt;

/**
 * One door of a day with a newcomer: who shifts, and how sure its time is before and after.
 *
 * @param visitId the visit
 * @param arriveBefore arrival without the newcomer, elapsed seconds; empty for the newcomer
 * @param arriveAfter arrival with it
 * @param keptBefore odds of being at the door by the end of its last arrival window, thousandths,
 *     rounded down; empty for the newcomer
 * @param keptAfter the same with the newcomer
 * @param promised whether that window is a promise
 */
public record DoorChange(
    String visitId,
    OptionalInt arriveBefore,
    int arriveAfter,
    OptionalInt keptBefore,
    int keptAfter,
    boolean promised) {
  /** Checks that nothing is null. */
  public DoorChange {
    Objects.requireNonNull(visitId, "visitId");
    Objects.requireNonNull(arriveBefore, "arriveBefore");
    Objects.requireNonNull(keptBefore, "keptBefore");
  }

  /** {@return by how many seconds it is later; below 0 where earlier; 0 for the newcomer} */
  public int shiftSeconds() {
    return arriveBefore.isPresent() ? arriveAfter - arriveBefore.getAsInt() : 0;
  }
}
