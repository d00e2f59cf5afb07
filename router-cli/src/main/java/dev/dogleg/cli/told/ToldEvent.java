package dev.dogleg.cli.told;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What a row of the log says. */
public enum ToldEvent {
  /** About to be handed over. */
  PREPARED,
  /** The files of a run are in place. */
  HANDED_OVER,
  /** The owner said yes. */
  CONFIRMED,
  /** The owner said no. */
  REFUSED,
  /** The owner was waited for and did not answer. */
  NO_ANSWER,
  /** The owner wants no more texts. */
  STOPPED,
  /** The owner wants texts again. */
  RESUMED;

  /** {@return the word for it in the log, for example {@code handed over}} */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /**
   * The event of a word.
   *
   * @param word as in the log
   * @return the event, or empty
   */
  public static Optional<ToldEvent> of(String word) {
    return Arrays.stream(values()).filter(one -> one.word().equals(word)).findFirst();
  }
}
