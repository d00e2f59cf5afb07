package dev.dogleg.cli.csv;

import dev.dogleg.fault.Where;
import java.util.HashMap;
import java.util.Map;

/** Where the records of a book came from, for faults that are found after reading. */
public final class Sources {
  private final Map<String, Row> clients = new HashMap<>();
  private final Map<String, Row> pets = new HashMap<>();
  private final Map<String, Row> bookings = new HashMap<>();
  private final Map<String, Row> rules = new HashMap<>();
  private final Map<String, Row> errands = new HashMap<>();
  private final Map<String, Row> zones = new HashMap<>();
  private final Map<Where, Map<String, String>> raw = new HashMap<>();

  Sources() {}

  void client(String id, Row row) {
    clients.put(id, row);
  }

  void pet(String id, Row row) {
    pets.put(id, row);
  }

  void booking(String id, Row row) {
    bookings.put(id, row);
  }

  void rule(String name, Row row) {
    rules.put(name, row);
  }

  void errand(String id, Row row) {
    errands.put(id, row);
  }

  void zone(String name, Row row) {
    zones.put(name, row);
  }

  void raw(Row row) {
    raw.put(row.where(), row.raw());
  }

  /**
   * Where a cell of a client stands.
   *
   * @param clientId id of a client of the book
   * @param column one of the client columns
   * @return file, row, column
   */
  public Where client(String clientId, Column column) {
    return clients.get(clientId).at(column);
  }

  /**
   * Where a cell of a pet stands.
   *
   * @param petId id of a pet of the book
   * @param column one of the pet columns
   * @return file, row, column
   */
  public Where pet(String petId, Column column) {
    return pets.get(petId).at(column);
  }

  /**
   * Where a cell of a booking stands.
   *
   * @param bookingId id of a booking of the book
   * @param column one of the booking columns
   * @return file, row, column
   */
  public Where booking(String bookingId, Column column) {
    return bookings.get(bookingId).at(column);
  }

  /**
   * Where a cell of a rule stands.
   *
   * @param name name of a rule of the book
   * @param column one of the rules' columns
   * @return file, row, column
   */
  public Where rule(String name, Column column) {
    return rules.get(name).at(column);
  }

  /**
   * Where a cell of an errand stands.
   *
   * @param errandId id of an errand of the book
   * @param column one of the errands' columns
   * @return file, row, column
   */
  public Where errand(String errandId, Column column) {
    return errands.get(errandId).at(column);
  }

  /**
   * Where a cell of a zone stands.
   *
   * @param name name of a zone of the book
   * @param column one of the zones' columns
   * @return file, row, column; the file alone for a zone that no row names
   */
  public Where zone(String name, Column column) {
    return zones.containsKey(name)
        ? zones.get(name).at(column)
        : Where.file(BookReader.ZONE_AREAS).at(name);
  }

  /**
   * The row a place points at, as it stands in its file.
   *
   * @param where file and row; the column does not matter
   * @return cells by the file's column names in its order; empty where the row could not be read
   */
  public Map<String, String> cells(Where where) {
    return raw.getOrDefault(Where.row(where.file(), where.row()), Map.of());
  }
}
