package dev.dogleg.groom;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * A value that is taken, and what else it could be; all are held equally likely.
 *
 * @param <T> kind of value
 * @param taken the value to reckon with
 * @param mayBe every possible value, {@code taken} first, each once
 */
public record Likely<T>(T taken, List<T> mayBe) {

  /** Puts {@code taken} first and drops doubles. */
  public Likely {
    Objects.requireNonNull(taken, "taken");
    List<T> all = new ArrayList<>();
    all.add(taken);
    for (T other : mayBe) {
      if (!all.contains(other)) {
        all.add(other);
      }
    }
    mayBe = List.copyOf(all);
  }

  /**
   * A value without doubt.
   *
   * @param <T> kind of value
   * @param value the value
   * @return it alone
   */
  public static <T> Likely<T> sure(T value) {
    return new Likely<>(value, List.of());
  }

  /**
   * A guess.
   *
   * @param <T> kind of value
   * @param taken the value to reckon with
   * @param others what else it could be
   * @return the guess
   */
  public static <T> Likely<T> guess(T taken, List<T> others) {
    return new Likely<>(taken, others);
  }

  /** {@return whether it could be something else} */
  public boolean isGuess() {
    return mayBe.size() > 1;
  }

  // Written out: what a record brings along spins classes at its first call, anew in each start.

  @Override
  public boolean equals(Object other) {
    return other instanceof Likely<?> likely && mayBe.equals(likely.mayBe);
  }

  @Override
  public int hashCode() {
    return mayBe.hashCode();
  }
}
