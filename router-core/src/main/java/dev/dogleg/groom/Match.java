package dev.dogleg.groom;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What a word was found to mean.
 *
 * @param <T> kind of thing looked up
 * @param grade how it was found
 * @param value the thing; empty exactly where the grade is {@code NONE}
 * @param nearest up to three names that come nearest, best first; empty where found exactly
 */
public record Match<T>(MatchGrade grade, Optional<T> value, List<String> nearest) {

  /** Checks that grade and value agree. */
  public Match {
    Objects.requireNonNull(grade, "grade");
    nearest = List.copyOf(nearest);
    if (value.isPresent() == (grade == MatchGrade.NONE)) {
      throw new IllegalArgumentException("grade " + grade + " does not agree with " + value);
    }
  }

  /** {@return whether the thing was found without doubt} */
  public boolean isSure() {
    return grade == MatchGrade.EXACT || grade == MatchGrade.ALIAS;
  }

  /** {@return the nearest names as a hint, empty where there are none} */
  public String hint() {
    return nearest.isEmpty() ? "" : "nearest: " + String.join(", ", nearest);
  }
}
