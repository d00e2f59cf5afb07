package dev.dogleg.groom;

import dev.dogleg.fault.Fault;
import dev.dogleg.fault.Faults;
import dev.dogleg.fault.Severity;
import dev.dogleg.model.Coat;
import dev.dogleg.model.SizeClass;
import dev.dogleg.model.Species;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;

/**
 * Turns rows into things, each under its key; a later row with the same key replaces an earlier
 * one.
 */
final class TableReader {
  final Map<TimeKey, TimeCell> times = new LinkedHashMap<>();
  final Map<String, Service> services = new LinkedHashMap<>();
  final Map<String, AddOn> addOns = new LinkedHashMap<>();
  final Map<String, Breed> breeds = new LinkedHashMap<>();
  final List<Word> words = new ArrayList<>();
  private final Faults faults;

  TableReader(Faults faults) {
    this.faults = faults;
  }

  void read(GroomRows rows) {
    each(rows.services(), List.of("service", "for", "provenance"), this::service);
    each(
        rows.groomTimes(),
        List.of(
            "species",
            "service",
            "size",
            "coat",
            "minutes",
            "spread_new",
            "spread_known",
            "provenance"),
        this::time);
    each(rows.addOns(), List.of("what", "kind", "minutes", "provenance"), this::addOn);
    each(rows.breeds(), List.of("breed", "species", "size", "coat", "provenance"), this::breed);
    each(
        rows.words(),
        List.of("kind", "means", "words", "provenance"),
        (row, cells) -> Word.read(row, words, faults));
  }

  private void each(List<TableRow> rows, List<String> columns, BiConsumer<TableRow, Cells> reader) {
    if (rows.isEmpty()) {
      return;
    }
    boolean complete = true;
    for (String column : columns) {
      if (!rows.get(0).cells().containsKey(column)) {
        complete = false;
        faults.add(
            new Fault(
                "missing-column",
                Severity.LOOK,
                rows.get(0).where(),
                "",
                "a column " + column,
                "this table is left out; the starter table holds"));
      }
    }
    if (complete) {
      rows.forEach(row -> reader.accept(row, new Cells(row, faults)));
    }
  }

  private void time(TableRow row, Cells cells) {
    if (!services.containsKey(row.cell("service"))) {
      cells.fault(
          "service",
          "unknown-service",
          "one of " + String.join(", ", services.keySet()),
          "a new service needs a row in services.csv first");
      return;
    }
    TimeKey.read(row, times, faults);
  }

  private void service(TableRow row, Cells cells) {
    Service service =
        new Service(
            cells.needed("service"),
            cells.wordList("for", Species.class),
            cells.list("also_called"),
            cells.text("what_it_is"),
            cells.needed("provenance"));
    if (service.species().isEmpty()) {
      cells.fault("for", "empty-cell", "dog, cat or dog;cat", "");
    }
    if (cells.sound()) {
      services.put(service.name(), service);
    }
  }

  private void addOn(TableRow row, Cells cells) {
    AddOn addOn =
        new AddOn(
            cells.needed("what"),
            cells.word("kind", AddOnKind.class),
            cells.whole("minutes", 0, 600),
            cells.list("not_with"),
            cells.list("also_called"),
            cells.needed("provenance"));
    for (String service : addOn.notWith()) {
      if (!services.containsKey(service)) {
        cells.fault(
            "not_with",
            "unknown-service",
            "services out of " + String.join(", ", services.keySet()),
            "");
      }
    }
    if (cells.sound()) {
      addOns.put(key(addOn.kind(), addOn.name()), addOn);
    }
  }

  static String key(AddOnKind kind, String name) {
    return kind.word() + " " + Folding.fold(name);
  }

  private void breed(TableRow row, Cells cells) {
    Species species = cells.word("species", Species.class);
    Breed breed =
        new Breed(
            cells.needed("breed"),
            species,
            Likely.guess(
                cells.word("size", SizeClass.class),
                cells.wordList("size_may_be", SizeClass.class)),
            Likely.guess(cells.word("coat", Coat.class), cells.wordList("coat_may_be", Coat.class)),
            cells.text("flat_faced").equalsIgnoreCase("yes"),
            cells.list("also_called"),
            cells.needed("provenance"));
    if (cells.sound()) {
      breeds.put(species + " " + Folding.fold(breed.name()), breed);
    }
  }
}
