package dev.dogleg.cli.tell;

import java.text.Normalizer;
import java.util.HashMap;
import java.util.Map;

/**
 * Replaces typographic marks by plain ones, so that no mark turns a text into UCS-2 and doubles its
 * cost. Letters stay what they are: a name that the GSM alphabet lacks is written in full.
 *
 * <p>A letter written as base and accent is composed (Unicode NFC), a ligature is spelt out: both
 * lose nothing. Control characters and line ends become blanks; runs of blanks become one.
 */
public final class PlainMarks {
  private static final Map<Integer, String> PLAIN = new HashMap<>();

  static {
    put("'", "‘’‚‛′´`ʼʻ‹›");
    put("\"", "“”„‟″«»");
    put("-", "‐‑‒–—―−•‣");
    put("...", "…");
    put(" ", "\u00a0\u1680\u2000\u2001\u2002\u2003\u2004\u2005\u2006\u2007\u2008\u2009\u200a");
    put(" ", "\u2028\u2029\u202f\u205f\u3000");
    put("", "\u00ad\u200b\u200e\u200f\u2060\ufeff");
    put("x", "×");
    put("/", "⁄");
    put("ff", "ﬀ");
    put("fi", "ﬁ");
    put("fl", "ﬂ");
    put("ffi", "ﬃ");
    put("ffl", "ﬄ");
  }

  private PlainMarks() {}

  private static void put(String plain, String marks) {
    marks.codePoints().forEach(mark -> PLAIN.put(mark, plain));
  }

  /**
   * A text with plain marks, on one line.
   *
   * @param text as a person wrote it
   * @return the text to send, without blanks at its ends
   */
  public static String of(String text) {
    StringBuilder plain = new StringBuilder(text.length());
    Normalizer.normalize(text, Normalizer.Form.NFC)
        .codePoints()
        .forEach(
            sign -> {
              String instead = PLAIN.get(sign);
              if (instead != null) {
                plain.append(instead);
              } else {
                plain.appendCodePoint(Character.isISOControl(sign) ? ' ' : sign);
              }
            });
    return plain.toString().replaceAll(" {2,}", " ").strip();
  }
}
