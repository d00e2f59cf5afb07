package dev.dogleg.cli.csv;

import dev.dogleg.fault.Where;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * One row of a table, or what several rows say together of one client or pet.
 *
 * @param where file and row
 * @param cells cells of known columns that are not blank, stripped
 * @param raw every cell as it stands in the file, by the file's own column names, in its order
 * @param places where a cell stands that is not of this row
 */
record Row(
    Where where, Map<Column, String> cells, Map<String, String> raw, Map<Column, Where> places) {
  Row {
    Map<Column, String> known = new EnumMap<>(Column.class);
    known.putAll(cells);
    cells = Collections.unmodifiableMap(known);
    raw = Collections.unmodifiableMap(new LinkedHashMap<>(raw));
    places = Map.copyOf(places);
  }

  Row(Where where, Map<Column, String> cells, Map<String, String> raw) {
    this(where, cells, raw, Map.of());
  }

  String cell(Column column) {
    return cells.getOrDefault(column, "");
  }

  boolean has(Column column) {
    return cells.containsKey(column);
  }

  Where at(Column column) {
    return places.getOrDefault(column, where).at(column.label());
  }
}
