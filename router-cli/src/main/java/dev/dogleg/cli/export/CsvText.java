package dev.dogleg.cli.export;

import java.util.List;
import java.util.regex.Pattern;

/**
 * Writes rows of comma-separated values (RFC 4180) that a spreadsheet cannot mistake for formulas.
 *
 * <p>Free text that begins with {@code = + - @}, tab or return gets a leading apostrophe, which our
 * readers take off again; text of a closed grammar (number, time, date, id) is written as it is.
 */
public final class CsvText {
  private static final Pattern FORMULA = Pattern.compile("(?s)'*[=+\\-@\t\r].*");
  private static final Pattern QUOTED = Pattern.compile("(?s).*[\",\r\n;].*|^\\s.*|.*\\s$");

  private final StringBuilder text = new StringBuilder();

  /**
   * Begins a file with its header.
   *
   * @param columns names of the columns
   */
  public CsvText(List<String> columns) {
    row(columns);
  }

  /**
   * Guards free text against being read as a formula.
   *
   * @param cell any text
   * @return the text, with an apostrophe before it where it begins like a formula
   */
  public static String free(String cell) {
    return FORMULA.matcher(cell).matches() ? "'" + cell : cell;
  }

  /**
   * Takes the guard of {@link #free} off again.
   *
   * @param cell a cell as it stands in a file
   * @return the text that was guarded
   */
  public static String unguarded(String cell) {
    return cell.startsWith("'") && FORMULA.matcher(cell).matches() ? cell.substring(1) : cell;
  }

  /**
   * Adds one row; cells are quoted where they must be.
   *
   * @param cells one a column
   */
  public void row(List<String> cells) {
    text.append(line(cells));
  }

  /**
   * One row as it stands in a file.
   *
   * @param cells one a column; quoted where they must be
   * @return the row with its line end
   */
  public static String line(List<String> cells) {
    StringBuilder text = new StringBuilder();
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
    return text.append("\r\n").toString();
  }

  /** {@return the whole file} */
  @Override
  public String toString() {
    return text.toString();
  }
}
