package dev.dogleg.schedule;

import java.util.Objects;

/**
 * The first rule that an order of visits cannot keep, however it is timed.
 *
 * @param rule {@code no-road}, {@code arrive-within}, {@code done-by}, {@code van-within}, {@code
 *     day-end}, {@code break} or {@code first}; {@value #WATER} for the tanks, {@value #RULE} and
 *     its name for a rule that must hold
 * @param visitId the visit at which it breaks; empty for the way home
 * @param shortBySeconds by how many seconds it is missed at the best try; 0 where it is not a
 *     matter of time
 */
public record RuleMiss(String rule, String visitId, int shortBySeconds) {
  /** What a miss of the tanks is called. */
  public static final String WATER = "water";

  /** How the name of a rule that must hold begins. */
  public static final String RULE = "rule:";

  /** Checks that nothing is null or negative. */
  public RuleMiss {
    Objects.requireNonNull(rule, "rule");
    Objects.requireNonNull(visitId, "visitId");
    if (shortBySeconds < 0) {
      throw new IllegalArgumentException("shortBySeconds is 0 or more, was " + shortBySeconds);
    }
  }
}
