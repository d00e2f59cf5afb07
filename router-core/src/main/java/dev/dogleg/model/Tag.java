package dev.dogleg.model;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A word that a groomer hangs on a pet, client, place, day, person or van, for the rules to speak
 * of.
 *
 * @param name lower case, letters and digits of any script with {@code . _ -} inside, at most 60
 *     characters
 * @param until last day on which it holds, or empty: always
 */
public record Tag(String name, Optional<LocalDate> until) {
  private static final Pattern FORM =
      Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{M}\\p{N}._-]{0,59}");

  /** Checks the form. */
  public Tag {
    Objects.requireNonNull(until, "until");
    if (!isName(name)) {
      throw new IllegalArgumentException("not a tag: " + name);
    }
  }

  /**
   * Whether a text can be the name of a tag.
   *
   * @param name the text
   * @return true for a lower-case word of the form above
   */
  public static boolean isName(String name) {
    return FORM.matcher(name).matches() && name.equals(name.toLowerCase(java.util.Locale.ROOT));
  }

  /**
   * A tag that always holds.
   *
   * @param name its name
   * @return the tag
   */
  public static Tag of(String name) {
    return new Tag(name, Optional.empty());
  }

  /**
   * Whether it holds on a day.
   *
   * @param date the day
   * @return true up to its last day, that one included
   */
  public boolean holdsOn(LocalDate date) {
    return until.map(last -> !date.isAfter(last)).orElse(true);
  }

  /** {@return {@code contagious} or {@code contagious until 2027-03-20}} */
  @Override
  public String toString() {
    return name + until.map(last -> " until " + last).orElse("");
  }
}
