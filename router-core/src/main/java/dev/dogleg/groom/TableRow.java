package dev.dogleg.groom;

import dev.dogleg.fault.Where;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;

/**
 * One row of a table as it was read: cells by column name.
 *
 * @param where file and row
 * @param cells every column of the header, in its order; a column may be one's own
 */
public record TableRow(Where where, Map<String, String> cells) {

  /** Copies the cells, trims them, keeps their order. */
  public TableRow {
    Objects.requireNonNull(where, "where");
    Map<String, String> copy = new LinkedHashMap<>();
    cells.forEach((column, cell) -> copy.put(column.strip(), cell.strip()));
    cells = java.util.Collections.unmodifiableMap(copy);
  }

  /**
   * One cell.
   *
   * @param column column name
   * @return the cell's text, empty where there is none
   */
  public String cell(String column) {
    return cells.getOrDefault(column, "");
  }
}
