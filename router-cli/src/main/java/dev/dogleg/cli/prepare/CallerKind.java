package dev.dogleg.cli.prepare;

import dev.dogleg.model.Coat;
import dev.dogleg.model.CoatState;
import dev.dogleg.model.SizeClass;
import java.util.Optional;

/**
 * Kinds of dog that may call, each with the one that stands for it: a first visit, everything done
 * ({@code full}).
 */
public enum CallerKind {
  /** Up to 10 kg. */
  SMALL("small", "up to 10 kg, any coat", SizeClass.SMALL, Optional.empty(), CoatState.GOOD),
  /** 10 to 20 kg. */
  MEDIUM("medium", "10 to 20 kg, any coat", SizeClass.MEDIUM, Optional.empty(), CoatState.GOOD),
  /** 20 to 40 kg. */
  LARGE("large", "20 to 40 kg, any coat", SizeClass.LARGE, Optional.empty(), CoatState.GOOD),
  /** 40 kg and more. */
  GIANT("giant", "40 kg and more, any coat", SizeClass.GIANT, Optional.empty(), CoatState.GOOD),
  /** A large dog with much hair that has tangled. */
  HEAVY_COAT(
      "heavy coat",
      "20 to 40 kg, curly, tangled",
      SizeClass.LARGE,
      Optional.of(Coat.CURLY),
      CoatState.TANGLED);

  private final String word;
  private final String standsFor;
  private final SizeClass size;
  private final Optional<Coat> coat;
  private final CoatState state;

  CallerKind(String word, String standsFor, SizeClass size, Optional<Coat> coat, CoatState state) {
    this.word = word;
    this.standsFor = standsFor;
    this.size = size;
    this.coat = coat;
    this.state = state;
  }

  /** {@return the word for it} */
  public String word() {
    return word;
  }

  /** {@return which dog stands for it} */
  public String standsFor() {
    return standsFor;
  }

  /** {@return its size class} */
  SizeClass size() {
    return size;
  }

  /** {@return its coat; empty: any, with minutes as wide as that} */
  Optional<Coat> coat() {
    return coat;
  }

  /** {@return state of its coat} */
  CoatState state() {
    return state;
  }
}
