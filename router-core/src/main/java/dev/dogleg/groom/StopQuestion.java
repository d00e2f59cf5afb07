package dev.dogleg.groom;

import java.util.List;
import java.util.OptionalInt;

/**
 * One stop whose minutes are asked: one client's pets of that day, at one door.
 *
 * @param groups the client's bookings of that day, at least one
 * @param ownStopSeconds the business's own stop time instead of the table's, 0..7,200
 * @param ownFurtherPetSeconds the business's own stop time for each pet after the first instead of
 *     the table's, 0..3,600
 * @param extraStopSeconds what this client's stop takes on top, 0..7,200
 */
public record StopQuestion(
    List<GroomGroup> groups,
    OptionalInt ownStopSeconds,
    OptionalInt ownFurtherPetSeconds,
    int extraStopSeconds) {

  /** Checks the ranges. */
  public StopQuestion {
    groups = List.copyOf(groups);
    if (groups.isEmpty()) {
      throw new IllegalArgumentException("a stop needs at least one groom");
    }
    check(ownStopSeconds.orElse(0), 7200);
    check(ownFurtherPetSeconds.orElse(0), 3600);
    check(extraStopSeconds, 7200);
  }

  private static void check(int seconds, int most) {
    if (seconds < 0 || seconds > most) {
      throw new IllegalArgumentException("stop seconds out of range: " + seconds);
    }
  }

  /**
   * A stop with the table's overhead.
   *
   * @param pets one question a pet, at least one
   * @return the question
   */
  public static StopQuestion of(List<GroomQuestion> pets) {
    return new StopQuestion(
        List.of(new GroomGroup(pets, OptionalInt.empty())),
        OptionalInt.empty(),
        OptionalInt.empty(),
        0);
  }
}
