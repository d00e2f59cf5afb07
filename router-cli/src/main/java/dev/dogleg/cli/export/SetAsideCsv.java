package dev.dogleg.cli.export;

import dev.dogleg.fault.Fault;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * set-aside.csv: the rows a run could not use, with the reason first and the row itself, the
 * person's own columns included, after it: mend it there and paste it back.
 */
public final class SetAsideCsv {

  /** The columns that stand before those of the rows themselves. */
  public static final List<String> COLUMNS =
      List.of("file", "row", "column", "fault", "seen", "expected", "hint");

  private SetAsideCsv() {}

  /**
   * The whole file.
   *
   * @param rows what was set aside, in the order found
   * @return text with a header
   */
  public static String text(List<SetAside> rows) {
    Set<String> own = new LinkedHashSet<>();
    rows.forEach(row -> own.addAll(row.cells().keySet()));
    List<String> header = new ArrayList<>(COLUMNS);
    own.forEach(name -> header.add(COLUMNS.contains(name) ? "its " + name : CsvText.free(name)));
    CsvText csv = new CsvText(header);
    for (SetAside row : rows) {
      Fault fault = row.fault();
      List<String> cells = new ArrayList<>();
      cells.add(CsvText.free(fault.where().file()));
      cells.add(fault.where().row() > 0 ? Integer.toString(fault.where().row()) : "");
      cells.add(CsvText.free(fault.where().column()));
      cells.add(fault.code());
      cells.add(CsvText.free(fault.seen()));
      cells.add(CsvText.free(fault.expected()));
      cells.add(CsvText.free(fault.hint()));
      own.forEach(name -> cells.add(CsvText.free(row.cells().getOrDefault(name, ""))));
      csv.row(cells);
    }
    return csv.toString();
  }
}
