package dev.dogleg.groom;

import java.util.List;
import java.util.OptionalInt;

/**
 * One stop whose minutes are asked: one client's pets of that day, at one door.
 *
 * @param grooms one question a pet, at least one, in the order of the booking
 * @param ownStopMinutes the business's own minutes per stop instead of the table's, 0..240
 * @param extraStopMinutes more minutes this client's stop takes, 0..240, for example a long walk
 *     from the van
 */
public record StopQuestion(
    List<GroomQuestion> grooms, OptionalInt ownStopMinutes, int extraStopMinutes) {

  /** Checks the ranges. */
  public StopQuestion {
    grooms = List.copyOf(grooms);
    if (grooms.isEmpty()) {
      throw new IllegalArgumentException("a stop needs at least one groom");
    }
    int own = ownStopMinutes.orElse(0);
    if (own < 0 || own > 240 || extraStopMinutes < 0 || extraStopMinutes > 240) {
      throw new IllegalArgumentException("stop minutes must lie in 0..240");
    }
  }

  /**
   * A stop with the table's overhead.
   *
   * @param grooms one question a pet
   * @return the question
   */
  public static StopQuestion of(List<GroomQuestion> grooms) {
    return new StopQuestion(grooms, OptionalInt.empty(), 0);
  }
}
