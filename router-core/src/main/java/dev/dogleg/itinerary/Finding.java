package dev.dogleg.itinerary;

import java.util.Objects;

/**
 * One breach that the audit saw in a plan.
 *
 * @param code short stable name in lower case with hyphens, for example {@code arrives-late}
 * @param stop index into the plan's stops; -1 where the whole day is meant
 * @param visitId the visit concerned, or empty
 * @param measured what the plan has, in the unit of the rule (seconds, sixtieths or a count)
 * @param allowed what the rule allows, in the same unit
 * @param text one sentence for a person
 */
public record Finding(
    String code, int stop, String visitId, long measured, long allowed, String text) {
  /** Checks that nothing is null. */
  public Finding {
    Objects.requireNonNull(code, "code");
    Objects.requireNonNull(visitId, "visitId");
    Objects.requireNonNull(text, "text");
  }
}
