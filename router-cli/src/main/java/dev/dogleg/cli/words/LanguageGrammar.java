package dev.dogleg.cli.words;

import java.util.IllformedLocaleException;
import java.util.Locale;

/** Reads the name of a language: a BCP 47 tag such as {@code de} or {@code en-GB}. */
public final class LanguageGrammar {
  private LanguageGrammar() {}

  /**
   * Reads a cell.
   *
   * @param cell its text, not blank
   * @return the tag in its canonical writing; code {@code bad-language}
   */
  public static Reading<String> read(String cell) {
    try {
      Locale locale = new Locale.Builder().setLanguageTag(cell.strip().replace('_', '-')).build();
      if (locale.getLanguage().length() >= 2) {
        return Reading.of(locale.toLanguageTag());
      }
    } catch (IllformedLocaleException noTag) {
      // said below
    }
    return Reading.none(
        Remark.aside(
            "bad-language",
            "the short name of a language was expected (BCP 47)",
            "en, de, es, en-GB"));
  }
}
