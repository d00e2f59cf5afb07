package dev.dogleg.cli.csv;

import dev.dogleg.cli.file.TextFile;
import dev.dogleg.cli.words.Slug;
import dev.dogleg.fault.Fault;
import dev.dogleg.fault.Faults;
import dev.dogleg.fault.Severity;
import dev.dogleg.fault.Where;
import dev.dogleg.groom.learn.LoggedVisit;
import dev.dogleg.model.BookedPet;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The visit log as read: what happened at each door.
 *
 * @param visits sound rows, in the file's order
 * @param setAside how many rows are set aside
 */
public record VisitLog(List<LoggedVisit> visits, int setAside) {
  /** Visit log in a book folder; may be missing. */
  public static final String FILE = "visits.csv";

  /** Copies the list. */
  public VisitLog {
    visits = List.copyOf(visits);
  }

  /**
   * Reads a log.
   *
   * @param path the file
   * @param name as faults shall call it
   * @param read the book, read without a fault that stops
   * @param today no visit can be later
   * @param faults takes what is wrong, row after row
   * @return the log, or empty where a fault stops the run
   */
  public static Optional<VisitLog> read(
      Path path, String name, ReadBook read, LocalDate today, Faults faults) {
    return TextFile.read(path, name, faults)
        .flatMap(text -> TableReader.read(text, Column.VISIT_LOG, faults))
        .map(table -> of(table, read, today, faults));
  }

  private static VisitLog of(Table table, ReadBook read, LocalDate today, Faults faults) {
    Context context =
        new Context(
            read.card(), read.tables(), Optional.empty(), read.corrections(), new HashMap<>());
    LoggedPets pets = new LoggedPets(read.book().orElseThrow(), read.tables());
    List<LoggedVisit> visits = new ArrayList<>();
    Map<String, Where> seen = new HashMap<>();
    for (Row row : table.rows()) {
      Cells cells = new Cells(row);
      Optional<LoggedVisit> visit = VisitRecord.read(cells, pets, context, today);
      visit.filter(found -> !twice(found, cells, seen)).ifPresent(visits::add);
      cells.faults().stream().distinct().forEach(faults::add);
    }
    long broken =
        faults.all().stream()
            .filter(fault -> fault.where().file().equals(table.name()))
            .filter(fault -> fault.severity() == Severity.ASIDE)
            .map(Fault::where)
            .map(Where::row)
            .collect(Collectors.toSet())
            .size();
    return new VisitLog(visits, (int) broken);
  }

  /** One pet is groomed at one time once. */
  private static boolean twice(LoggedVisit visit, Cells cells, Map<String, Where> seen) {
    boolean twice = false;
    for (BookedPet pet : visit.pets()) {
      String key = visit.date() + " " + pet.petId() + " " + Slug.fold(cells.text(Column.STARTED));
      Where before = seen.putIfAbsent(key, visit.where());
      if (before != null && !twice) {
        twice = true;
        cells.aside(
            "duplicate-row",
            cells.has(Column.PET) ? Column.PET : Column.PETS,
            "row " + before.row() + " has this visit already",
            "remove one of them");
      }
    }
    return twice;
  }
}
