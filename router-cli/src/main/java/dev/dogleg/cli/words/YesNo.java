package dev.dogleg.cli.words;

import java.util.Locale;

/** Reads yes or no. */
public final class YesNo {
  private YesNo() {}

  /**
   * Reads a cell.
   *
   * @param cell its text, not blank
   * @return the answer; code {@code bad-yes}
   */
  public static Reading<Boolean> read(String cell) {
    return switch (cell.strip().toLowerCase(Locale.ROOT)) {
      case "yes", "y", "x", "true", "1" -> Reading.of(true);
      case "no", "n", "false", "0" -> Reading.of(false);
      default -> Reading.none(Remark.aside("bad-yes", "yes or no was expected", ""));
    };
  }
}
