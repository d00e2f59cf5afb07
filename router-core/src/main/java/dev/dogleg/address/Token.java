package dev.dogleg.address;

import java.util.ArrayList;
import java.util.List;

/**
 * A word of a typed address or of a name on the map.
 *
 * @param raw small letters with their marks
 * @param plain small letters without marks
 * @param chunk which part between commas it stands in, from 0
 * @param joint what stands between it and the word before: a space, or one of {@code - / ; , . # '}
 */
record Token(String raw, String plain, int chunk, char joint, boolean aside) {

  boolean startsWithDigit() {
    return plain.charAt(0) >= '0' && plain.charAt(0) <= '9';
  }

  /** Cuts text into words; commas, semicolons, line ends and brackets part it into chunks. */
  static List<Token> words(String text) {
    String lower =
        java.text.Normalizer.normalize(text, java.text.Normalizer.Form.NFC)
            .toLowerCase(java.util.Locale.ROOT)
            .replace("½", " 1/2")
            .replace("¼", " 1/4")
            .replace("¾", " 3/4");
    List<Token> words = new ArrayList<>();
    StringBuilder word = new StringBuilder();
    int chunk = 0;
    char joint = ' ';
    int depth = 0;
    for (int i = 0; i <= lower.length(); i++) {
      char c = i < lower.length() ? lower.charAt(i) : '\n';
      boolean mark = Character.getType(c) == Character.NON_SPACING_MARK;
      boolean letter = Character.isLetterOrDigit(c) && c != 'º' && c != 'ª';
      if (letter || (mark && !word.isEmpty())) {
        word.append(c);
        continue;
      }
      if (!word.isEmpty()) {
        String raw = word.toString();
        String plain = Letters.plain(raw);
        if (!plain.isEmpty()) {
          words.add(new Token(raw, plain, chunk, joint, depth > 0));
          joint = 0;
        }
        word.setLength(0);
      }
      if (c == ',' || c == ';' || c == '\n' || c == '(' || c == ')' || c == '|') {
        if (!words.isEmpty() && words.get(words.size() - 1).chunk == chunk) {
          chunk++;
        }
        joint = c == ';' ? ';' : ',';
        depth = c == '(' ? depth + 1 : c == ')' ? Math.max(0, depth - 1) : depth;
      } else if (joint != ',' && joint != ';') {
        joint = stronger(joint, c);
      }
    }
    return words;
  }

  private static char stronger(char joint, char c) {
    char kind =
        switch (c) {
          case '-', '\u2010', '\u2011', '\u2012', '\u2013', '\u2014', '\u2212' -> '-';
          case '/', '\\' -> '/';
          case '#' -> '#';
          case '\'', '\u2019', '`', '\u00b4' -> '\'';
          case '.', '\u00ba', '\u00aa', '\u00b0', '\u00b7' -> '.';
          default -> ' ';
        };
    return joint == 0 || joint == ' ' ? kind : joint;
  }

  /** The words of a span glued together, for comparing names of places. */
  static String glued(List<Token> words, int from, int to) {
    StringBuilder text = new StringBuilder();
    for (int i = from; i < to; i++) {
      text.append(words.get(i).plain);
    }
    return text.toString();
  }
}
