package dev.dogleg.cli.tell;

import java.util.HashMap;
import java.util.Map;

/**
 * The GSM 7 bit default alphabet with its extension table: how many septets a character takes.
 *
 * <p>3GPP TS 23.038, clauses 6.2.1 and 6.2.1.1. National language tables are not used: phones need
 * not know them.
 */
final class Gsm7 {
  /** Characters by septet 0x00..0x7F; the escape at 0x1B stands as a blank and counts for none. */
  private static final String DEFAULT =
      "@£$¥èéùìòÇ\nØø\rÅå"
          + "Δ_ΦΓΛΩΠΨΣΘΞ\0ÆæßÉ"
          + " !\"#¤%&'()*+,-./"
          + "0123456789:;<=>?"
          + "¡ABCDEFGHIJKLMNO"
          + "PQRSTUVWXYZÄÖÑÜ§"
          + "¿abcdefghijklmno"
          + "pqrstuvwxyzäöñüà";

  /** Characters that an escape goes before: two septets. */
  private static final String EXTENSION = "\f^{}\\[~]|€";

  private static final Map<Integer, Integer> SEPTETS = new HashMap<>();

  static {
    DEFAULT.codePoints().filter(sign -> sign != 0).forEach(sign -> SEPTETS.put(sign, 1));
    EXTENSION.codePoints().forEach(sign -> SEPTETS.put(sign, 2));
  }

  private Gsm7() {}

  /** {@return septets of a character: 1 or 2; 0 where the alphabet lacks it} */
  static int septets(int codePoint) {
    return SEPTETS.getOrDefault(codePoint, 0);
  }

  /** {@return whether a whole text can be written in it} */
  static boolean writes(String text) {
    return text.codePoints().allMatch(SEPTETS::containsKey);
  }
}
