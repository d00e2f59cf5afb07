package dev.dogleg.cli.command;

import dev.dogleg.cli.export.PlanReader;
import dev.dogleg.cli.export.PlanReader.PlacedRow;
import dev.dogleg.cli.file.TextFile;
import dev.dogleg.fault.Fault;
import dev.dogleg.fault.Faults;
import dev.dogleg.fault.Severity;
import dev.dogleg.fault.Where;
import dev.dogleg.model.Booking;
import dev.dogleg.model.Groomer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Reads a plan file into its days. */
final class PlanFile {
  private PlanFile() {}

  /** Rows of a plan by day and groomer. */
  record Group(LocalDate date, Groomer groomer, List<PlacedRow> rows) {}

  /** Reads a plan; empty where a fault stops. */
  static List<Group> read(Path file, BookInput input, Faults faults) {
    Optional<TextFile> text = text(file, input, faults);
    if (text.isEmpty()) {
      return List.of();
    }
    PlanRowReader cells = new PlanRowReader(faults);
    Map<String, Group> groups = new LinkedHashMap<>();
    for (PlacedRow row : PlanReader.read(text.get().text(), file.toString(), faults)) {
      Optional<LocalDate> date = cells.date(row);
      Optional<Groomer> groomer = groomer(row, input, faults);
      if (date.isPresent() && groomer.isPresent()) {
        groups
            .computeIfAbsent(
                date.get() + " " + groomer.get().id(),
                key -> new Group(date.get(), groomer.get(), new ArrayList<>()))
            .rows()
            .add(row);
      }
    }
    return List.copyOf(groups.values());
  }

  /** The text of a plan; empty, and a fault, where it cannot be read or nobody has planned yet. */
  static Optional<TextFile> text(Path file, BookInput input, Faults faults) {
    if (!Files.exists(file)) {
      faults.add(
          new Fault(
              "missing-file",
              Severity.STOP,
              Where.file(file.toString()),
              "",
              "there is no plan yet",
              "make it first: dogleg plan " + input.folder()));
      return Optional.empty();
    }
    return TextFile.read(file, file.toString(), faults);
  }

  private static Optional<Groomer> groomer(PlacedRow row, BookInput input, Faults faults) {
    Optional<Groomer> known =
        input.book().business().groomers().stream()
            .filter(groomer -> groomer.id().equals(row.row().groomer()))
            .findFirst();
    if (known.isEmpty()) {
      faults.add(
          new Fault(
              "unknown-groomer",
              Severity.LOOK,
              row.where().at("groomer"),
              row.row().groomer(),
              "no groomer of the card; the row is passed over",
              ""));
    }
    return known;
  }

  /** Bookings that the rows name, in the book's order. */
  static List<Booking> named(List<Group> groups, BookInput input) {
    Set<String> ids = new HashSet<>();
    groups.forEach(group -> ids.addAll(ids(group)));
    return input.book().bookings().stream().filter(b -> ids.contains(b.id())).toList();
  }

  /** Ids that the rows of a day name. */
  static Set<String> ids(Group group) {
    Set<String> ids = new HashSet<>();
    group.rows().forEach(row -> ids.addAll(ids(row)));
    return ids;
  }

  /** Ids that a row names. */
  static List<String> ids(PlacedRow row) {
    return List.of(row.row().booking().split("\\s*;\\s*"));
  }
}
