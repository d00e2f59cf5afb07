package dev.dogleg.fault;

import java.util.Objects;

/**
 * The place a fault points at.
 *
 * @param file file name as the user gave it, empty where no file is meant
 * @param row physical line where the record starts, from 1; 0 where no row is meant
 * @param column column name, or key path in a card; empty where no column is meant
 */
public record Where(String file, int row, String column) implements Comparable<Where> {

  /** No place in particular. */
  public static final Where NOWHERE = new Where("", 0, "");

  /** Checks that nothing is null and that the row is not negative. */
  public Where {
    Objects.requireNonNull(file, "file");
    Objects.requireNonNull(column, "column");
    if (row < 0) {
      throw new IllegalArgumentException("row must be 0 or more, was " + row);
    }
  }

  /**
   * A whole file.
   *
   * @param file file name
   * @return the place
   */
  public static Where file(String file) {
    return new Where(file, 0, "");
  }

  /**
   * A whole row.
   *
   * @param file file name
   * @param row physical line, from 1
   * @return the place
   */
  public static Where row(String file, int row) {
    return new Where(file, row, "");
  }

  /**
   * The same row, one of its columns.
   *
   * @param name column name
   * @return the place
   */
  public Where at(String name) {
    return new Where(file, row, name);
  }

  @Override
  public int compareTo(Where other) {
    int byFile = file.compareTo(other.file);
    if (byFile != 0) {
      return byFile;
    }
    int byRow = Integer.compare(row, other.row);
    return byRow != 0 ? byRow : column.compareTo(other.column);
  }

  /** {@return {@code file:row:column}, leaving out the parts that are not meant} */
  @Override
  public String toString() {
    StringBuilder text = new StringBuilder(file);
    if (row > 0) {
      text.append(':').append(row);
    }
    if (!column.isEmpty()) {
      text.append(':').append(column);
    }
    return text.toString();
  }

  // Written out: what a record brings along spins classes at its first call, anew in each start.

  @Override
  public boolean equals(Object other) {
    return other instanceof Where place && compareTo(place) == 0;
  }

  @Override
  public int hashCode() {
    return 31 * (31 * file.hashCode() + row) + column.hashCode();
  }
}
