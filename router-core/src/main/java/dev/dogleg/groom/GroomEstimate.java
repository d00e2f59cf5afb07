package dev.dogleg.groom;

import java.util.List;
import java.util.Objects;

/**
 * Minutes for one groom, bath and dry included where the service has them.
 *
 * @param question what was asked
 * @param time the duration
 * @param basis every number it rests on
 * @param guesses what had to be guessed, one line each; empty where nothing was
 * @param cautions what to mind about this animal, one line each
 */
public record GroomEstimate(
    GroomQuestion question,
    ServiceTime time,
    List<BasisLine> basis,
    List<String> guesses,
    List<String> cautions) {

  /** Copies the lists. */
  public GroomEstimate {
    Objects.requireNonNull(question, "question");
    Objects.requireNonNull(time, "time");
    basis = List.copyOf(basis);
    guesses = List.copyOf(guesses);
    cautions = List.copyOf(cautions);
  }

  /** {@return whether anything was guessed} */
  public boolean isGuess() {
    return !guesses.isEmpty();
  }
}
