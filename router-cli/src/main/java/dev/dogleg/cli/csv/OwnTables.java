package dev.dogleg.cli.csv;

import dev.dogleg.cli.file.TextFile;
import dev.dogleg.fault.Faults;
import dev.dogleg.groom.GroomRows;
import dev.dogleg.groom.GroomTables;
import dev.dogleg.groom.TableRow;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** A business's own groom tables in its book folder, laid over the starter tables. */
public final class OwnTables {
  private OwnTables() {}

  /**
   * The groom tables in force for a book.
   *
   * @param folder the book folder; any of {@code groom-times.csv}, {@code add-ons.csv}, {@code
   *     breeds.csv}, {@code services.csv}, {@code words.csv} may lie there, with only the rows that
   *     differ
   * @param starter the starter tables
   * @param faults takes what is wrong: an unreadable file stops the run, a row that cannot be read
   *     is set aside and the starter's holds
   * @return the starter tables with the folder's rows laid over them
   */
  public static GroomTables read(Path folder, GroomTables starter, Faults faults) {
    GroomRows own =
        new GroomRows(
            rows(folder, "groom-times.csv", faults),
            rows(folder, "add-ons.csv", faults),
            rows(folder, "breeds.csv", faults),
            rows(folder, "services.csv", faults),
            rows(folder, "words.csv", faults));
    return own.isEmpty() ? starter : starter.with(own, faults);
  }

  /**
   * Rows of one of a business's own tables.
   *
   * @param folder the book folder
   * @param name file name
   * @param faults takes what is wrong: an unreadable file stops the run
   * @return its rows with their columns as they are compared; none where there is no such file
   */
  public static List<TableRow> rows(Path folder, String name, Faults faults) {
    Path file = folder.resolve(name);
    if (!Files.exists(file)) {
      return List.of();
    }
    List<TableRow> rows = new ArrayList<>();
    TextFile.read(file, name, faults)
        .flatMap(text -> TableReader.read(text, Set.of(), faults))
        .ifPresent(table -> table.rows().forEach(row -> rows.add(folded(row))));
    return rows;
  }

  /** The row with its columns as the groom tables name them. */
  private static TableRow folded(Row row) {
    Map<String, String> cells = new LinkedHashMap<>();
    row.raw().forEach((column, cell) -> cells.put(Header.fold(column), cell));
    return new TableRow(row.where(), cells);
  }
}
