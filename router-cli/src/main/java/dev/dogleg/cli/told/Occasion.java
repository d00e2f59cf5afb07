package dev.dogleg.cli.told;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** Why an owner hears from the groomer. */
public enum Occasion {
  /** The span of the next day, told the evening before. */
  EVENING,
  /** The van has left for this door: a narrower span. */
  ON_MY_WAY,
  /** The date or the span is another than was told before. */
  CHANGED,
  /** May the visit be moved to another day? */
  ASK,
  /** The van can not be there within the span that was told. */
  LATE;

  /** {@return the word for it in files, for example {@code on-my-way}} */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /**
   * The occasion of a word.
   *
   * @param word as in files
   * @return the occasion, or empty
   */
  public static Optional<Occasion> of(String word) {
    return Arrays.stream(values()).filter(one -> one.word().equals(word)).findFirst();
  }
}
