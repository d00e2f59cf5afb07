package dev.dogleg.groom;

import java.util.Locale;
import java.util.Objects;

/**
 * One number of an estimate, and where it comes from.
 *
 * @param what what the number stands for
 * @param amount the number
 * @param unit its unit
 * @param provenance source, "common practice, no source", "planning estimate", "from memory", or
 *     whose own number it is
 */
public record BasisLine(String what, int amount, BasisUnit unit, String provenance) {

  /** Checks that nothing is null. */
  public BasisLine {
    Objects.requireNonNull(what, "what");
    Objects.requireNonNull(unit, "unit");
    Objects.requireNonNull(provenance, "provenance");
  }

  /**
   * {@return the amount as text: {@code 75 min}, {@code 7 min 30 s}, {@code x 1.10}, {@code spread
   * 0.14}}
   */
  public String amountText() {
    return switch (unit) {
      case SECONDS -> amount / 60 + " min" + (amount % 60 == 0 ? "" : " " + amount % 60 + " s");
      case FACTOR_PERMILLE -> String.format(Locale.ROOT, "x %.2f", amount / 1000.0);
      case LOG_SPREAD_PERMILLE -> String.format(Locale.ROOT, "spread %.2f", amount / 1000.0);
    };
  }

  /** {@return one line: what, amount, provenance} */
  @Override
  public String toString() {
    return what + ": " + amountText() + " (" + provenance + ")";
  }
}
