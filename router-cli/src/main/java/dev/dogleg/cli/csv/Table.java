package dev.dogleg.cli.csv;

import java.util.List;
import java.util.Set;

/**
 * A table as read.
 *
 * @param name file name as faults call it
 * @param columns known columns it has
 * @param rows sound rows in order
 */
record Table(String name, Set<Column> columns, List<Row> rows) {
  Table {
    columns = Set.copyOf(columns);
    rows = List.copyOf(rows);
  }

  static Table none(String name) {
    return new Table(name, Set.of(), List.of());
  }
}
