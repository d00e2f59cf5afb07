package dev.dogleg.cli.console;

import java.nio.charset.Charset;
import java.nio.charset.CharsetEncoder;

/** Replaces signs that a reader's character set lacks by plain ones instead of question marks. */
final class PlainText {
  private static final String[][] PLAIN = {
    {"©", "(c)"}, {"–", "-"}, {"—", "-"}, {"·", "-"}, {"…", "..."}, {"×", "x"}, {"’", "'"}
  };

  private PlainText() {}

  /**
   * Folds what cannot be written.
   *
   * @param text any text
   * @param charset what the reader understands
   * @return the text itself where every sign can be written
   */
  static String fold(String text, Charset charset) {
    if (!charset.canEncode()) {
      return text;
    }
    CharsetEncoder encoder = charset.newEncoder();
    if (encoder.canEncode(text)) {
      return text;
    }
    String folded = text;
    for (String[] pair : PLAIN) {
      if (!encoder.canEncode(pair[0])) {
        folded = folded.replace(pair[0], pair[1]);
      }
    }
    return folded;
  }
}
