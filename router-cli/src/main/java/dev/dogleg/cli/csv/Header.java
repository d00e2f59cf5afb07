package dev.dogleg.cli.csv;

import dev.dogleg.cli.words.Nearness;
import dev.dogleg.fault.Fault;
import dev.dogleg.fault.Faults;
import dev.dogleg.fault.Severity;
import dev.dogleg.fault.Where;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * The first line of a table: which cell is which column.
 *
 * @param names cells as they stand there
 * @param columns the known column of each cell, or empty for a person's own column
 */
record Header(List<String> names, List<Optional<Column>> columns) {
  /** A person's own column that begins like this is never taken for a misspelt one. */
  private static final String OWN = "x_";

  private static final Pattern GAPS = Pattern.compile("[\\s\\u00a0-]+");
  private static final Pattern MARKS_LAST = Pattern.compile("[?*:.]+$");

  Header {
    names = List.copyOf(names);
    columns = List.copyOf(columns);
  }

  /** A header cell as it is compared: lower case, spaces and hyphens as underscores. */
  static String fold(String cell) {
    String joined = GAPS.matcher(cell.strip().toLowerCase(Locale.ROOT)).replaceAll("_");
    return MARKS_LAST.matcher(joined).replaceAll("");
  }

  /** Reads the cells; faults in a header stop the run, since every row would be misread. */
  static Header read(List<String> cells, Set<Column> known, Where where, Faults faults) {
    List<Optional<Column>> columns = new ArrayList<>();
    cells.forEach(cell -> columns.add(Column.of(fold(cell), known)));
    Set<Column> present = EnumSet.noneOf(Column.class);
    Set<String> seen = new HashSet<>();
    for (int i = 0; i < cells.size(); i++) {
      columns.get(i).ifPresent(present::add);
      String folded = fold(cells.get(i));
      if (!folded.isEmpty() && !seen.add(folded)) {
        stop(
            faults,
            "duplicate-column",
            where.at(folded),
            cells.get(i),
            "each column once was" + " expected",
            "rename or remove one of them");
      }
    }
    List<String> missing =
        new ArrayList<>(
            Column.labels(
                known.stream().filter(c -> !present.contains(c)).collect(Collectors.toSet())));
    for (int i = 0; i < cells.size(); i++) {
      String folded = fold(cells.get(i));
      if (columns.get(i).isPresent() || folded.isEmpty() || folded.startsWith(OWN)) {
        continue;
      }
      Optional<String> near = Nearness.nearest(folded, missing);
      if (near.isPresent()) {
        stop(
            faults,
            "misspelt-column",
            where.at(folded),
            folded,
            "the column " + near.get() + " is near",
            "rename it to " + near.get() + ", or to " + OWN + folded + " if it is your own");
        // The rows are checked as if it were: whatever else is wrong with them is true then.
        columns.set(i, Column.of(near.get(), known));
        missing.remove(near.get());
      }
    }
    return new Header(new ArrayList<>(cells), columns);
  }

  boolean has(Column column) {
    return columns.contains(Optional.of(column));
  }

  private static void stop(
      Faults faults, String code, Where where, String seen, String expected, String hint) {
    faults.add(new Fault(code, Severity.STOP, where, seen, expected, hint));
  }
}
