package dev.dogleg.cli.csv;

import dev.dogleg.fault.Fault;
import dev.dogleg.fault.Faults;
import dev.dogleg.fault.Severity;
import dev.dogleg.fault.Where;
import java.util.ArrayList;
import java.util.List;

/**
 * Cuts a text into the physical lines of its records before the CSV library sees them.
 *
 * <p>The library lets a quote inside an unquoted field swallow the rows after it, and reads a quote
 * that is never closed in quadratic time. Here such a row is a fault of its own line and the next
 * line is a record again. Cost: at most {@value #MOST_LINES} looks at a line.
 */
final class RecordCutter {
  /** Most physical lines of one record. */
  static final int MOST_LINES = 50;

  /** Most records of a table, header not counted. */
  static final int MOST_ROWS = 100_000;

  private static final int MOST_FAULTS = 1_000;
  private static final char QUOTE = '"';

  /**
   * One record.
   *
   * @param row physical line where it starts, from 1
   * @param lines its physical lines, joined by a line feed
   */
  record Piece(int row, String lines) {}

  /**
   * One line that is no record.
   *
   * @param fault why
   * @param line its text
   */
  record Broken(Fault fault, String line) {}

  private final String name;
  private final char separator;
  private final Faults faults;
  private final List<String> lines;
  private final List<Broken> broken = new ArrayList<>();
  private boolean stopped;

  RecordCutter(String name, String text, char separator, Faults faults) {
    this.name = name;
    this.separator = separator;
    this.faults = faults;
    this.lines = text.lines().toList();
  }

  /** All sound records in order; blank lines are left out. */
  List<Piece> cut() {
    List<Piece> records = new ArrayList<>();
    int at = 0;
    while (at < lines.size()) {
      int row = at + 1;
      if (isBlank(lines.get(at))) {
        at++;
        continue;
      }
      int end = end(at);
      if (end > at) {
        if (records.size() > MOST_ROWS) {
          stop("too-many-rows", row, "at most " + MOST_ROWS + " rows are read");
          return records;
        }
        records.add(new Piece(row, String.join("\n", lines.subList(at, end))));
        at = end;
      } else {
        at++;
        if (broken.size() > MOST_FAULTS) {
          stop("too-many-faults", row, "more than " + MOST_FAULTS + " rows are broken");
          return records;
        }
      }
    }
    return records;
  }

  /** {@return lines that were found to be no record while cutting} */
  List<Broken> broken() {
    return broken;
  }

  /** {@return whether the file was given up: too many rows, or too many broken ones} */
  boolean stopped() {
    return stopped;
  }

  private boolean isBlank(String line) {
    for (int i = 0; i < line.length(); i++) {
      if (line.charAt(i) != separator && !Character.isWhitespace(line.charAt(i))) {
        return false;
      }
    }
    return true;
  }

  /** The line after the record that starts at a line, or -1 where it is broken. */
  private int end(int start) {
    boolean quoted = false;
    for (int at = start; at < lines.size() && at < start + MOST_LINES; at++) {
      String line = lines.get(at);
      boolean fieldStart = !quoted;
      for (int i = 0; i < line.length(); i++) {
        char c = line.charAt(i);
        if (quoted) {
          if (c != QUOTE) {
            continue;
          }
          if (i + 1 < line.length() && line.charAt(i + 1) == QUOTE) {
            i++;
            continue;
          }
          quoted = false;
          if (i + 1 < line.length() && line.charAt(i + 1) != separator) {
            return at == start ? stray(start, i) : unclosed(start);
          }
        } else if (c == separator) {
          fieldStart = true;
        } else if (c == QUOTE) {
          if (!fieldStart) {
            return at == start ? stray(start, i) : unclosed(start);
          }
          quoted = true;
          fieldStart = false;
        } else {
          fieldStart = false;
        }
      }
      if (!quoted) {
        return at + 1;
      }
    }
    return unclosed(start);
  }

  private int stray(int start, int position) {
    String line = lines.get(start);
    int from = Math.max(0, position - 20);
    aside(
        "stray-quote",
        start,
        line.substring(from, Math.min(line.length(), position + 10)),
        "a cell with a quote in it must stand in quotes, with the quote doubled",
        "write \"12\"\" brush\" or leave the quote out; no space before a quote");
    return -1;
  }

  private int unclosed(int start) {
    String line = lines.get(start);
    aside(
        "unclosed-quote",
        start,
        line.substring(0, Math.min(line.length(), 40)),
        "a quote opened in this row is not closed within " + MOST_LINES + " lines",
        "close it, or leave it out");
    return -1;
  }

  private void aside(String code, int line, String seen, String expected, String hint) {
    Where where = Where.row(name, line + 1);
    broken.add(
        new Broken(new Fault(code, Severity.ASIDE, where, seen, expected, hint), lines.get(line)));
  }

  private void stop(String code, int row, String expected) {
    stopped = true;
    faults.add(
        new Fault(
            code, Severity.STOP, Where.row(name, row), "", expected, "is it the right file?"));
  }
}
