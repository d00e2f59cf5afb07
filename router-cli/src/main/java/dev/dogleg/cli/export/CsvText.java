package dev.dogleg.cli.export;

import java.util.List;
import java.util.regex.Pattern;

/**
 * Writes rows of comma-separated values (RFC 4180) that a spreadsheet cannot mistake for formulas.
 *
 * <p>Free text that begins with {@code = + - @}, tab or return gets a leading apostrophe, which our
 * readers take off again; text of a closed grammar (number, time, date, id) is written as it is.
 */
final class CsvText {
  private static final Pattern FORMULA = Pattern.compile("(?s)'*[=+\\-@\t\r].*");
  private static final Pattern QUOTED = Pattern.compile("(?s).*[\",\r\n;].*|^\\s.*|.*\\s$");

  private final StringBuilder text = new StringBuilder();

  /** Begins a file with its header. */
  CsvText(List<String> columns) {
    row(columns);
  }

  /** Guards free text against being read as a formula. */
  static String free(String cell) {
    return FORMULA.matcher(cell).matches() ? "'" + cell : cell;
  }

  /** Takes the guard of {@link #free} off again. */
  static String unguarded(String cell) {
    return cell.startsWith("'") && FORMULA.matcher(cell).matches() ? cell.substring(1) : cell;
  }

  /** Adds one row; cells are quoted where they must be. */
  void row(List<String> cells) {
    for (int i = 0; i < cells.size(); i++) {
      if (i > 0) {
        text.append(',');
      }
      String cell = cells.get(i);
      if (QUOTED.matcher(cell).matches()) {
        text.append('"').append(cell.replace("\"", "\"\"")).append('"');
      } else {
        text.append(cell);
      }
    }
    text.append("\r\n");
  }

  /** {@return the whole file} */
  @Override
  public String toString() {
    return text.toString();
  }
}
