package dev.dogleg.itinerary;

import java.util.List;
import java.util.Objects;

/**
 * A visit that the plan leaves out, and why, truly.
 *
 * @param visitId the visit
 * @param why which of the four cases
 * @param rule the rule that blocks it where it is impossible: {@code no-road}, {@code
 *     arrive-within}, {@code done-by}, {@code van-within}, {@code day-end}, {@code break}, {@code
 *     first}, {@code water} for the tanks, or {@code rule:} and the name of a {@link DayRule} that
 *     must hold; empty otherwise
 * @param shortBySeconds by how many seconds that rule is missed at the best try; 0 where it is not
 *     a matter of time
 * @param withVisits for {@code IMPOSSIBLE_TOGETHER} a smallest set of booked visits of the day with
 *     which there is no day that serves it (removing any one makes room), in id order; empty
 *     otherwise
 */
public record NoRoom(
    String visitId, Why why, String rule, int shortBySeconds, List<String> withVisits) {

  /** The four cases, kept apart. */
  public enum Why {
    /** Not even alone. */
    IMPOSSIBLE_ALONE,
    /** Alone yes, with the others no: proven. */
    IMPOSSIBLE_TOGETHER,
    /** On the waiting list, possible, but dearer than leaving it out: proven. */
    NOT_WORTH_IT,
    /** No room was found within the limit; nothing is proven. */
    NOT_FOUND
  }

  /** Checks that nothing is null. */
  public NoRoom {
    Objects.requireNonNull(visitId, "visitId");
    Objects.requireNonNull(why, "why");
    Objects.requireNonNull(rule, "rule");
    withVisits = List.copyOf(withVisits);
  }
}
