package dev.dogleg.cli.csv;

import com.opencsv.CSVReader;
import com.opencsv.CSVReaderBuilder;
import com.opencsv.RFC4180ParserBuilder;
import com.opencsv.exceptions.CsvException;
import dev.dogleg.cli.file.TextFile;
import dev.dogleg.fault.Fault;
import dev.dogleg.fault.Faults;
import dev.dogleg.fault.Severity;
import dev.dogleg.fault.Where;
import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Reads one table: separator, header, cells. */
final class TableReader {
  private static final int MOST_FIELD = 10_000;
  private static final char[] SEPARATORS = {',', ';', '\t'};
  private static final Pattern GUARDED = Pattern.compile("(?s)'+[=+\\-@\t\r].*");
  private static final Pattern EDGES = Pattern.compile("^[\\s\\u00a0]+|[\\s\\u00a0]+$");
  private static final Pattern SEPARATOR_LINE = Pattern.compile("(?i)sep=[,;\t]");

  private final TextFile file;
  private final Set<Column> known;
  private final Faults faults;

  private TableReader(TextFile file, Set<Column> known, Faults faults) {
    this.file = file;
    this.known = known;
    this.faults = faults;
  }

  /** The table, or empty where a fault of the whole file stops the run. */
  static Optional<Table> read(TextFile file, Set<Column> known, Faults faults) {
    return new TableReader(file, known, faults).read();
  }

  private Optional<Table> read() {
    Optional<Character> named = separatorLine();
    char separator = named.orElseGet(this::sniffed);
    RecordCutter cutter = new RecordCutter(file.name(), file.text(), separator, faults);
    List<RecordCutter.Piece> records = cutter.cut();
    if (named.isPresent() && !records.isEmpty()) {
      records = records.subList(1, records.size());
    }
    if (records.isEmpty() || cutter.stopped()) {
      cutter.broken().forEach(broken -> faults.add(broken.fault()));
      if (!cutter.stopped()) {
        stop(1, "missing-column", "a first line with the names of the columns was expected", "");
      }
      return Optional.empty();
    }
    List<List<String>> cells = parse(records, separator);
    Where first = Where.row(file.name(), records.get(0).row());
    Faults ofHeader = new Faults();
    Header header = Header.read(cells.get(0), known, first, ofHeader);
    faults.addAll(ofHeader);
    Optional<Column> needed = Column.needed(known).filter(column -> !header.has(column));
    if (needed.isPresent()) {
      faults.add(without(needed.get(), header, first));
      return Optional.empty();
    }
    for (RecordCutter.Broken broken : cutter.broken()) {
      boolean told = mayBeTold(header, broken.line(), separator);
      faults.add(told ? broken.fault().as(Severity.STOP) : broken.fault());
    }
    List<Row> rows = new ArrayList<>();
    for (int i = 1; i < cells.size(); i++) {
      Where where = Where.row(file.name(), records.get(i).row());
      row(header, cells.get(i), where).ifPresent(rows::add);
    }
    Set<Column> present =
        header.columns().stream().flatMap(Optional::stream).collect(Collectors.toSet());
    return Optional.of(new Table(file.name(), present, rows));
  }

  /**
   * Whether a line that is no record may hold a told time: its cells are counted from the left and
   * from the right, since it is not known where it is broken.
   */
  private static boolean mayBeTold(Header header, String line, char separator) {
    int told = header.columns().indexOf(Optional.of(Column.TOLD));
    if (told < 0) {
      return false;
    }
    String[] parts = line.split(Pattern.quote(String.valueOf(separator)), -1);
    int fromRight = parts.length - (header.names().size() - told);
    return isText(parts, told) || isText(parts, fromRight);
  }

  private static boolean isText(String[] parts, int at) {
    return at >= 0 && at < parts.length && !parts[at].replace("\"", "").isBlank();
  }

  private Fault without(Column needed, Header header, Where where) {
    boolean noNames = header.columns().stream().noneMatch(Optional::isPresent);
    return new Fault(
        "missing-column",
        Severity.STOP,
        where.at(needed.label()),
        "",
        noNames
            ? "a first line with the names of the columns was expected"
            : "the column " + needed.label() + " is needed",
        "columns: " + String.join(", ", Column.labels(known)));
  }

  /** A first line {@code sep=;}, as some spreadsheets write it. */
  private Optional<Character> separatorLine() {
    String first = file.text().lines().findFirst().orElse("");
    return SEPARATOR_LINE.matcher(first).matches()
        ? Optional.of(first.charAt(4))
        : Optional.empty();
  }

  /** The separator by which most known columns stand in the first line. */
  private char sniffed() {
    String line =
        file.text()
            .lines()
            .filter(text -> !text.isBlank())
            .findFirst()
            .orElse("")
            .replace("\"", "");
    char best = ',';
    long most = -1;
    for (char separator : SEPARATORS) {
      String[] parts = line.split(Pattern.quote(String.valueOf(separator)), -1);
      long found = 0;
      for (String part : parts) {
        found += Column.of(Header.fold(part), known).isPresent() ? 1_000 : 0;
      }
      found += Math.min(parts.length, 900);
      if (found > most) {
        most = found;
        best = separator;
      }
    }
    return best;
  }

  private List<List<String>> parse(List<RecordCutter.Piece> records, char separator) {
    String sound =
        records.stream().map(RecordCutter.Piece::lines).collect(Collectors.joining("\n"));
    List<List<String>> cells = new ArrayList<>();
    try (CSVReader reader =
        new CSVReaderBuilder(new StringReader(sound))
            .withCSVParser(new RFC4180ParserBuilder().withSeparator(separator).build())
            .withMultilineLimit(RecordCutter.MOST_LINES)
            .build()) {
      for (String[] next = reader.readNext(); next != null; next = reader.readNext()) {
        cells.add(List.of(next));
      }
    } catch (IOException | CsvException e) {
      throw new IllegalStateException("sound records were refused", e);
    }
    if (cells.size() != records.size()) {
      throw new IllegalStateException(
          records.size() + " records were read as " + cells.size() + " in " + file.name());
    }
    return cells;
  }

  private Optional<Row> row(Header header, List<String> cells, Where where) {
    int width = header.names().size();
    if (cells.size() > width
        && cells.subList(width, cells.size()).stream().anyMatch(c -> !c.isBlank())) {
      boolean told = mayBeTold(header, String.join("\n", cells), '\n');
      faults.add(
          new Fault(
              "too-many-cells",
              told ? Severity.STOP : Severity.ASIDE,
              where,
              cells.get(width),
              width + " cells were expected, " + cells.size() + " are there",
              "put a cell that holds the separator in quotes: \"12 Mill Lane, Harrow\""));
      return Optional.empty();
    }
    Map<Column, String> known = new EnumMap<>(Column.class);
    Map<String, String> raw = new LinkedHashMap<>();
    for (int i = 0; i < width; i++) {
      String cell = i < cells.size() ? cells.get(i) : "";
      if (cell.length() > MOST_FIELD) {
        faults.add(
            new Fault(
                "long-cell",
                Severity.ASIDE,
                where.at(header.names().get(i)),
                cell.substring(0, 40),
                "at most " + MOST_FIELD + " characters were expected in a cell",
                "is a quote missing?"));
        return Optional.empty();
      }
      String plain = GUARDED.matcher(cell).matches() ? cell.substring(1) : cell;
      raw.putIfAbsent(header.names().get(i), plain);
      String stripped = EDGES.matcher(plain).replaceAll("");
      if (header.columns().get(i).isPresent() && !stripped.isEmpty()) {
        known.putIfAbsent(header.columns().get(i).get(), stripped);
      }
    }
    return Optional.of(new Row(where, known, raw));
  }

  private void stop(int row, String code, String expected, String hint) {
    faults.add(new Fault(code, Severity.STOP, Where.row(file.name(), row), "", expected, hint));
  }
}
