package dev.dogleg.cli.csv;

import dev.dogleg.cli.words.Slug;
import dev.dogleg.fault.Severity;
import dev.dogleg.fault.Where;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Takes clients and pets out of wide bookings: what all rows of one client say together. A row that
 * contradicts an earlier one about the address is set aside; about anything else it is looked at.
 */
final class WideRows {
  /** Columns that speak of a pet in a wide row; service and minutes are the booking's there. */
  private static final Set<Column> OF_PETS = ofPets();

  /** Columns that speak of a client in a wide row; tags are the pet's there. */
  private static final Set<Column> OF_CLIENTS = ofClients();

  private final People people;

  WideRows(People people) {
    this.people = people;
  }

  private static Set<Column> ofClients() {
    Set<Column> columns = EnumSet.copyOf(Column.CLIENTS);
    columns.remove(Column.TAGS);
    return columns;
  }

  private static Set<Column> ofPets() {
    Set<Column> columns = EnumSet.copyOf(Column.PETS_TABLE);
    columns.removeAll(
        Set.of(
            Column.CLIENT,
            Column.CLIENT_ID,
            Column.PET,
            Column.PET_ID,
            Column.SERVICE,
            Column.MINUTES));
    return columns;
  }

  /** Clients that stand in bookings only. */
  List<Cells> clients(List<Cells> bookings) {
    Map<String, Merged> byClient = new LinkedHashMap<>();
    for (Cells booking : bookings) {
      Row row = booking.row();
      boolean elsewhere = !row.has(Column.CLIENT) || people.knows(row);
      if (elsewhere || (row.has(Column.CLIENT_ID) && !row.has(Column.CLIENT))) {
        continue;
      }
      String key =
          row.has(Column.CLIENT_ID)
              ? "id " + row.cell(Column.CLIENT_ID)
              : Slug.fold(row.cell(Column.CLIENT));
      byClient.computeIfAbsent(key, ignored -> new Merged(row.where())).add(booking, OF_CLIENTS);
    }
    return byClient.values().stream().map(Merged::cells).toList();
  }

  /** Pets of one booking that its client does not have yet. */
  void pets(List<Cells> bookings, boolean anyClient) {
    Map<Person, Map<String, Merged>> found = new LinkedHashMap<>();
    for (Cells booking : bookings) {
      Row row = booking.row();
      boolean describes = row.cells().keySet().stream().anyMatch(OF_PETS::contains);
      if ((!anyClient && !describes) || !people.knows(row)) {
        continue;
      }
      Optional<Person> owner = people.find(new Cells(row));
      String cell = row.has(Column.PET) ? row.cell(Column.PET) : row.cell(Column.PETS);
      if (owner.isEmpty() || cell.isEmpty() || BookingRecord.isAll(cell)) {
        continue;
      }
      List<String> names = PetNames.split(cell, name -> owner.get().animal(name).isPresent());
      for (int p = 0; p < names.size(); p++) {
        String name = names.get(p);
        if (owner.get().animal(name).isPresent()) {
          continue;
        }
        Map<Column, String> cells = new EnumMap<>(Column.class);
        for (Column column : OF_PETS) {
          if (row.has(column)) {
            cells.put(column, PetNames.each(row.cell(column), names.size()).get(p));
          }
        }
        cells.put(Column.PET, name);
        if (row.has(Column.PET_ID)) {
          cells.put(Column.PET_ID, PetNames.each(row.cell(Column.PET_ID), names.size()).get(p));
        }
        found
            .computeIfAbsent(owner.get(), ignored -> new LinkedHashMap<>())
            .computeIfAbsent(Slug.fold(name), ignored -> new Merged(row.where()))
            .add(booking, cells);
      }
    }
    found.forEach(
        (owner, pets) -> pets.values().forEach(merged -> People.add(owner, merged.cells())));
  }

  /** What several rows say together. */
  private static final class Merged {
    private final Where where;
    private final Map<Column, String> cells = new EnumMap<>(Column.class);
    private final Map<Column, Where> places = new EnumMap<>(Column.class);

    Merged(Where where) {
      this.where = where;
    }

    void add(Cells booking, Set<Column> columns) {
      Map<Column, String> own = new EnumMap<>(Column.class);
      columns.forEach(
          column -> {
            if (booking.has(column)) {
              own.put(column, booking.text(column));
            }
          });
      add(booking, own);
    }

    void add(Cells booking, Map<Column, String> own) {
      own.forEach(
          (column, text) -> {
            String before = cells.putIfAbsent(column, text);
            if (before == null) {
              places.put(column, booking.row().where());
            } else if (!Slug.fold(before).equals(Slug.fold(text))) {
              boolean door = column == Column.ADDRESS || column == Column.PIN;
              booking.add(
                  "two-values",
                  door ? Severity.ASIDE : Severity.LOOK,
                  column,
                  "row " + places.get(column).row() + " says \"" + before + "\"",
                  door
                      ? "one client has one door: give the second one another client name"
                      : "the first is used; make them alike");
            }
          });
    }

    Cells cells() {
      return new Cells(new Row(where, cells, Map.of(), places));
    }
  }
}
