package dev.dogleg.cli.export;

import com.opencsv.CSVReader;
import com.opencsv.CSVReaderBuilder;
import com.opencsv.RFC4180ParserBuilder;
import com.opencsv.exceptions.CsvException;
import dev.dogleg.fault.Fault;
import dev.dogleg.fault.Faults;
import dev.dogleg.fault.Severity;
import dev.dogleg.fault.Where;
import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads plan.csv again, also one that went through a spreadsheet: other separator, other order of
 * columns, columns of one's own, times without seconds.
 */
public final class PlanReader {
  private static final int MOST_ROWS = 100_000;
  private static final int MOST_LINES = 50;
  private static final Pattern FORMAT = Pattern.compile("plan format (\\d{1,9})\\b.*");

  /** Columns without which a plan cannot be followed. */
  private static final List<String> NEEDED = List.of("date", "groomer", "kind", "booking");

  private final String name;
  private final Faults faults;

  private PlanReader(String name, Faults faults) {
    this.name = name;
    this.faults = faults;
  }

  /**
   * Reads a plan.
   *
   * @param text the file's text
   * @param name as faults shall call it
   * @param faults takes what is wrong: {@code missing-column}, {@code unreadable-plan}, {@code
   *     newer-format} stop the run
   * @return its rows in the file's order, with their places; empty where a fault stops
   */
  public static List<PlacedRow> read(String text, String name, Faults faults) {
    return new PlanReader(name, faults).read(text);
  }

  /**
   * A row and where it stands.
   *
   * @param row the row; cells that the file lacks are empty
   * @param where its place
   */
  public record PlacedRow(PlanRow row, Where where) {}

  private List<PlacedRow> read(String text) {
    List<PlacedRow> rows = new ArrayList<>();
    try (CSVReader reader =
        new CSVReaderBuilder(new StringReader(text))
            .withCSVParser(new RFC4180ParserBuilder().withSeparator(separator(text)).build())
            .withMultilineLimit(MOST_LINES)
            .build()) {
      String[] first = reader.readNext();
      Map<String, Integer> columns = columns(first == null ? new String[0] : first);
      if (!complete(columns)) {
        return List.of();
      }
      long line = reader.getLinesRead() + 1;
      for (String[] cells = reader.readNext(); cells != null; cells = reader.readNext()) {
        if (rows.size() == MOST_ROWS) {
          stop("unreadable-plan", Where.file(name), "", "at most " + MOST_ROWS + " rows are read");
          return List.of();
        }
        Where where = Where.row(name, Math.toIntExact(line));
        if (!blank(cells)) {
          rows.add(new PlacedRow(row(columns, cells), where));
        }
        line = reader.getLinesRead() + 1;
      }
    } catch (IOException | CsvException broken) {
      stop(
          "unreadable-plan",
          Where.file(name),
          "",
          "cannot be read as comma-separated values: " + broken.getMessage());
      return List.of();
    }
    return versionKnown(rows) ? List.copyOf(rows) : List.of();
  }

  private static char separator(String text) {
    String first = text.lines().findFirst().orElse("");
    char best = ',';
    for (char separator : new char[] {';', '\t'}) {
      if (count(first, separator) > count(first, best)) {
        best = separator;
      }
    }
    return best;
  }

  private static long count(String text, char sign) {
    return text.chars().filter(c -> c == sign).count();
  }

  private static Map<String, Integer> columns(String[] header) {
    Map<String, Integer> columns = new HashMap<>();
    for (int i = 0; i < header.length; i++) {
      String label = header[i].strip().toLowerCase(Locale.ROOT).replaceAll("[\\s-]+", "_");
      columns.putIfAbsent(label, i);
    }
    return columns;
  }

  private boolean complete(Map<String, Integer> columns) {
    for (String column : NEEDED) {
      if (!columns.containsKey(column)) {
        stop(
            "missing-column",
            Where.row(name, 1).at(column),
            "",
            "the column " + column + " is needed; is it a plan.csv?");
      }
    }
    return columns.keySet().containsAll(NEEDED);
  }

  private static boolean blank(String[] cells) {
    for (String cell : cells) {
      if (!cell.isBlank()) {
        return false;
      }
    }
    return true;
  }

  private static PlanRow row(Map<String, Integer> columns, String[] cells) {
    List<String> values = new ArrayList<>();
    for (String column : PlanCsv.COLUMNS) {
      Integer at = columns.get(column);
      String cell = at == null || at >= cells.length ? "" : cells[at];
      values.add(CsvText.unguarded(cell).strip());
    }
    return PlanRow.of(values);
  }

  private boolean versionKnown(List<PlacedRow> rows) {
    for (PlacedRow row : rows) {
      Matcher format = FORMAT.matcher(row.row().note());
      if (format.matches() && Integer.parseInt(format.group(1)) > PlanCsv.FORMAT_VERSION) {
        stop(
            "newer-format",
            row.where().at("note"),
            format.group(1),
            "plan format " + PlanCsv.FORMAT_VERSION + " is the newest this program reads");
        return false;
      }
    }
    return true;
  }

  private void stop(String code, Where where, String seen, String expected) {
    faults.add(new Fault(code, Severity.STOP, where, seen, expected, ""));
  }
}
