package dev.dogleg.cli.tell;

import java.util.function.IntUnaryOperator;

/**
 * What a text message costs: its alphabet, its length in units of that alphabet, and the segments
 * it is sent in.
 *
 * <p>One message carries 140 octets: 160 septets or 70 UCS-2 units. A longer one is joined of
 * segments that give 6 octets to the joining header (concatenation with an 8-bit reference): 153
 * septets or 67 units each. An escape stays with its character and both halves of a surrogate pair
 * stay together, so a segment may end one unit short. 3GPP TS 23.038 and TS 23.040 clause
 * 9.2.3.24.1.
 *
 * @param ucs2 whether some character is not in the GSM 7 bit alphabet
 * @param units septets, or 16-bit units where {@code ucs2}
 * @param segments messages it is sent in, 0 for an empty text
 */
public record TextSize(boolean ucs2, int units, int segments) {
  private static final int SEPTETS_ALONE = 160;
  private static final int SEPTETS_JOINED = 153;
  private static final int UNITS_ALONE = 70;
  private static final int UNITS_JOINED = 67;

  /**
   * Measures a text.
   *
   * @param text as it is sent
   * @return its size
   */
  public static TextSize of(String text) {
    return Gsm7.writes(text)
        ? measured(text, false, Gsm7::septets, SEPTETS_ALONE, SEPTETS_JOINED)
        : measured(text, true, Character::charCount, UNITS_ALONE, UNITS_JOINED);
  }

  private static TextSize measured(
      String text, boolean ucs2, IntUnaryOperator width, int alone, int joined) {
    int units = 0;
    int segments = 0;
    int room = 0;
    for (int sign : text.codePoints().toArray()) {
      int needed = width.applyAsInt(sign);
      if (room < needed) {
        segments++;
        room = joined;
      }
      room -= needed;
      units += needed;
    }
    return new TextSize(ucs2, units, units <= alone ? Math.min(1, units) : segments);
  }
}
