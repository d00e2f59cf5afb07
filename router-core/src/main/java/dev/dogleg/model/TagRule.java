package dev.dogleg.model;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;

/**
 * A rule by tag, as a groomer writes it.
 *
 * @param name its name, unique in a book
 * @param shape what it says
 * @param a whom it concerns: stops with a pet that matches
 * @param b the other side: stops, days or crew; {@link TagMatch#ANY} where the shape has one side
 * @param on days on which it holds, by their tags
 * @param when hours, for the three clock shapes; empty otherwise
 * @param number N of {@code AT_MOST}; 0 otherwise
 * @param minutes what minutes it adds
 * @param strength must or rather
 * @param until last day on which it holds, or empty: always
 * @param line what it puts on the day of a stop it concerns, may be empty
 */
public record TagRule(
    String name,
    RuleShape shape,
    TagMatch a,
    TagMatch b,
    TagMatch on,
    Optional<When> when,
    int number,
    RuleMinutes minutes,
    Strength strength,
    Optional<LocalDate> until,
    String line) {

  /** Checks that the parts fit the shape. */
  public TagRule {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(shape, "shape");
    Objects.requireNonNull(a, "a");
    Objects.requireNonNull(b, "b");
    Objects.requireNonNull(on, "on");
    Objects.requireNonNull(minutes, "minutes");
    Objects.requireNonNull(strength, "strength");
    Objects.requireNonNull(until, "until");
    Objects.requireNonNull(line, "line");
    boolean clock =
        shape == RuleShape.ARRIVE || shape == RuleShape.DONE_BY || shape == RuleShape.VAN;
    if (clock != when.isPresent()) {
      throw new IllegalArgumentException("rule " + name + ": hours belong to clock shapes");
    }
    if (number < 0 || (shape.mustOnly() && !strength.must())) {
      throw new IllegalArgumentException("rule " + name + ": number or strength does not fit");
    }
  }

  /**
   * Whether it holds on a day.
   *
   * @param date the day
   * @param dayTags tags of that day
   * @return true up to its last day, on days that match
   */
  public boolean holdsOn(LocalDate date, java.util.Collection<String> dayTags) {
    return until.map(last -> !date.isAfter(last)).orElse(true) && on.matches(dayTags);
  }
}
