package dev.dogleg.groom;

import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** Makes words comparable: case, accents, punctuation and spaces no longer matter. */
final class Folding {
  private static final Pattern MARKS = Pattern.compile("\\p{M}+");
  private static final Pattern NO_WORD = Pattern.compile("[^\\p{L}\\p{N}]+");

  private Folding() {}

  static String fold(String text) {
    String plain = MARKS.matcher(Normalizer.normalize(text, Normalizer.Form.NFKD)).replaceAll("");
    return NO_WORD.matcher(plain.toLowerCase(Locale.ROOT)).replaceAll(" ").strip();
  }

  static List<String> words(String text) {
    String folded = fold(text);
    return folded.isEmpty() ? List.of() : List.of(folded.split(" "));
  }
}
