package dev.dogleg.cli.csv;

import dev.dogleg.cli.file.TextFile;
import dev.dogleg.cli.words.DateGrammar;
import dev.dogleg.cli.words.DateOrder;
import dev.dogleg.cli.words.DecimalGrammar;
import dev.dogleg.cli.words.Reading;
import dev.dogleg.cli.words.Remark;
import dev.dogleg.cli.words.YesNo;
import dev.dogleg.fault.Fault;
import dev.dogleg.fault.Faults;
import dev.dogleg.fault.Severity;
import dev.dogleg.groom.Learned;
import dev.dogleg.groom.LearnedKind;
import dev.dogleg.groom.LearnedRow;
import dev.dogleg.model.DateSpan;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Reads learned.csv, as {@code dogleg learn} wrote it or as a person left it. */
public final class LearnedTable {
  /** Learned values in a book folder; may be missing. */
  public static final String FILE = "learned.csv";

  /** Version of the format, in the row of kind {@code format}. */
  public static final int FORMAT_VERSION = 1;

  /** Kind of the row that holds the version. */
  public static final String FORMAT_KIND = "format";

  private static final Set<LearnedKind> OF_SOMEBODY =
      Set.of(
          LearnedKind.PACE,
          LearnedKind.SERVICE,
          LearnedKind.BREED,
          LearnedKind.PET,
          LearnedKind.DRIVE);

  private final List<LearnedRow> rows = new ArrayList<>();
  private final Set<String> seen = new HashSet<>();

  private LearnedTable() {}

  /**
   * Reads a book's learned values.
   *
   * @param folder the book folder
   * @param faults takes what is wrong: a newer version stops the run, a row that cannot be read is
   *     passed over
   * @return the values; none where there is no such file
   */
  public static Learned read(Path folder, Faults faults) {
    Path file = folder.resolve(FILE);
    if (!Files.exists(file)) {
      return Learned.NONE;
    }
    LearnedTable read = new LearnedTable();
    Optional<Table> table =
        TextFile.read(file, FILE, faults)
            .flatMap(text -> TableReader.read(text, Column.LEARNED_TABLE, faults));
    if (table.isEmpty() || newer(table.get(), faults)) {
      return Learned.NONE;
    }
    for (Row row : table.get().rows()) {
      Cells cells = new Cells(row);
      read.row(cells);
      cells.faults().forEach(faults::add);
    }
    return Learned.of(read.rows);
  }

  private static boolean newer(Table table, Faults faults) {
    for (Row row : table.rows()) {
      String version = row.cell(Column.WHAT);
      if (isFormat(row)
          && !(version.matches("\\d{1,9}") && Integer.parseInt(version) <= FORMAT_VERSION)) {
        faults.add(
            new Fault(
                "newer-format",
                Severity.STOP,
                row.at(Column.WHAT),
                version,
                "learned format " + FORMAT_VERSION + " is the newest this program reads",
                "take the newer program, or move the file away and learn again"));
        return true;
      }
    }
    return false;
  }

  private static boolean isFormat(Row row) {
    return row.cell(Column.KIND).equalsIgnoreCase(FORMAT_KIND);
  }

  private void row(Cells cells) {
    if (isFormat(cells.row())) {
      return;
    }
    if (!cells.has(Column.KIND)) {
      cells.aside("missing-cell", Column.KIND, "what the row speaks of was expected", kinds());
      return;
    }
    Optional<LearnedKind> kind = cells.read(Column.KIND, LearnedTable::kind);
    boolean named = kind.filter(OF_SOMEBODY::contains).isPresent();
    if (named && !cells.has(Column.WHAT)) {
      cells.aside("missing-cell", Column.WHAT, "whose it is was expected", "");
    }
    boolean spread = kind.filter(LearnedTable::isSpread).isPresent();
    Column number = spread ? Column.SPREAD : Column.FACTOR;
    if (!cells.has(number)) {
      cells.aside("missing-cell", number, "a number was expected", "");
    }
    Optional<Integer> factor =
        cells.read(
            Column.FACTOR,
            text ->
                DecimalGrammar.read(text, 1000, LearnedRow.LEAST_FACTOR, LearnedRow.MOST_FACTOR));
    Optional<Integer> wide =
        cells.read(
            Column.SPREAD, text -> DecimalGrammar.read(text, 1000, 0, LearnedRow.MOST_SPREAD));
    Optional<Integer> visits =
        cells.readOrLook(Column.VISITS, text -> DecimalGrammar.read(text, 1, 0, Integer.MAX_VALUE));
    Optional<DateSpan> last =
        cells.readOrLook(Column.LAST, text -> DateGrammar.read(text, DateOrder.ISO));
    boolean keep = cells.read(Column.KEEP, YesNo::read).orElse(false);
    if (cells.bad() || kind.isEmpty()) {
      return;
    }
    String what = named ? cells.text(Column.WHAT) : "";
    if (!seen.add(kind.get() + " " + what)) {
      cells.aside("duplicate-row", Column.WHAT, "stands in an earlier row already", "remove one");
      return;
    }
    rows.add(
        new LearnedRow(
            kind.get(),
            what,
            factor.orElse(1000),
            wide.orElse(0),
            visits.orElse(0),
            last.map(DateSpan::to),
            keep,
            cells.text(Column.NOTE)));
  }

  private static boolean isSpread(LearnedKind kind) {
    return kind == LearnedKind.DAY
        || kind == LearnedKind.DRIVE_DAY
        || kind == LearnedKind.DRIVE_LEG;
  }

  private static Reading<LearnedKind> kind(String text) {
    String word = text.toLowerCase(Locale.ROOT).replaceAll("[\\s_]+", "-");
    return Arrays.stream(LearnedKind.values())
        .filter(kind -> kind.word().equals(word))
        .findFirst()
        .map(Reading::of)
        .orElseGet(
            () ->
                Reading.none(
                    Remark.aside("unknown-kind", "one of " + kinds() + " was expected", "")));
  }

  private static String kinds() {
    return Arrays.stream(LearnedKind.values())
        .map(LearnedKind::word)
        .collect(Collectors.joining(", "));
  }
}
