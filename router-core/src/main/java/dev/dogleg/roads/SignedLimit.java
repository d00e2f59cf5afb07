package dev.dogleg.roads;

import com.graphhopper.routing.util.parsers.helpers.OSMValueExtractor;

/** Reads a limit as it stands on a sign: {@code 2.7}, {@code 8'10"}, {@code 3.5 t}, {@code 2,7}. */
final class SignedLimit {
  /** No limit, or none that can be read. */
  static final int NONE = Integer.MAX_VALUE;

  private SignedLimit() {}

  /**
   * Reads a tag value.
   *
   * @param text value, null where the tag is missing
   * @param inKilograms true for a weight (read in tonnes), false for a length (read in metres)
   * @return whole kilograms or centimetres, rounded down; {@link #NONE} where nothing is said
   */
  static int read(String text, boolean inKilograms) {
    if (text == null || text.isBlank()) {
      return NONE;
    }
    String plain = text.strip();
    if (plain.matches("\\d+,\\d+.*")) {
      plain = plain.replace(',', '.');
    }
    double value =
        inKilograms
            ? OSMValueExtractor.stringToTons(plain)
            : OSMValueExtractor.stringToMeter(plain);
    if (Double.isNaN(value) || value < 0) {
      return NONE;
    }
    double whole = Math.floor(value * (inKilograms ? 1000 : 100) + 1e-6);
    return whole >= NONE ? NONE : (int) whole;
  }
}
