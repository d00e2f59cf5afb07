package dev.dogleg.cli.terms;

import dev.dogleg.itinerary.Prices;
import dev.dogleg.model.Strength;
import java.util.OptionalLong;

/** Prices in the planner's sixtieths. */
final class Price {
  private Price() {}

  static long ofSeconds(long seconds) {
    return seconds * Prices.SIXTIETHS_PER_DRIVE_SECOND;
  }

  static long ofMinutes(int minutes) {
    return ofSeconds(60L * minutes);
  }

  /** Price of a breach; empty where it must hold. */
  static OptionalLong of(Strength strength) {
    return strength.must()
        ? OptionalLong.empty()
        : OptionalLong.of(ofMinutes(strength.ratherMinutes()));
  }
}
