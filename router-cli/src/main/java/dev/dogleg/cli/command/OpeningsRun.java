package dev.dogleg.cli.command;

import dev.dogleg.cli.console.Console;
import dev.dogleg.cli.console.ExitCode;
import dev.dogleg.cli.export.OpeningsCsv;
import dev.dogleg.cli.export.OpeningsJson;
import dev.dogleg.cli.export.OpeningsSheet;
import dev.dogleg.cli.export.OpeningsText;
import dev.dogleg.cli.export.WholeFiles;
import dev.dogleg.cli.prepare.MapInUse;
import dev.dogleg.cli.prepare.ZoneDoors;
import dev.dogleg.fault.Fault;
import dev.dogleg.fault.FaultException;
import dev.dogleg.fault.Faults;
import java.io.IOException;
import java.nio.file.Path;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;

/** What {@code openings} does: read book and plan, ask for room at every known door, print. */
final class OpeningsRun {
  /** Told spans begin on quarter hours, as those of texts do. */
  private static final int STEP_SECONDS = 900;

  /**
   * What was asked for on the command line.
   *
   * @param choice which book
   * @param plan the planned days, or empty for {@code plan/plan.csv} of the book
   * @param weeks so many weeks from the plan's first day
   * @param spanSeconds width of a told span
   * @param marginSeconds how much longer drives may be than to the known doors
   * @param enoughPercent minutes are to be enough for so many of 100 dogs
   * @param overtime whether overtime counts as room
   * @param csv where the table is written too, or empty
   * @param json whether to print JSON
   */
  record Order(
      BookChoice choice,
      Optional<Path> plan,
      int weeks,
      int spanSeconds,
      int marginSeconds,
      int enoughPercent,
      boolean overtime,
      Optional<Path> csv,
      boolean json) {}

  private final Surroundings surroundings;
  private final Console console;
  private final Order order;
  private final Faults faults = new Faults();

  OpeningsRun(Surroundings surroundings, Order order) {
    this.surroundings = surroundings;
    this.console = surroundings.console();
    this.order = order;
  }

  /** Runs. */
  ExitCode run() throws IOException {
    Optional<PlannedBook> read =
        PlannedBook.read(order.choice(), order.plan(), surroundings.clock(), faults);
    if (read.isEmpty()) {
      return stopped();
    }
    PlannedBook book = read.get();
    BookInput input = book.input();
    if (faults.stops()) {
      return stopped();
    }
    try (MapInUse map = new MapInUse(input.map(), surroundings.cache(), console, faults)) {
      return asked(book, map);
    } catch (FaultException failed) {
      failed.faults().forEach(faults::add);
      return stopped();
    }
  }

  private ExitCode asked(PlannedBook book, MapInUse map) throws IOException {
    BookInput input = book.input();
    Optional<ZoneDoors> zones = book.doors(map, faults);
    if (zones.isEmpty()) {
      return stopped();
    }
    OpeningsSheet.Terms terms =
        new OpeningsSheet.Terms(
            order.spanSeconds(),
            STEP_SECONDS,
            order.marginSeconds(),
            order.enoughPercent(),
            order.overtime(),
            input.book().business().week().promises().keptPercent());
    OpenDays open;
    OpeningsTable table;
    try {
      open = OpenDays.of(input, book.planned(), order.weeks(), map, faults);
      table = new OpeningsTable(input, open, map, console, terms);
      if (faults.stops() || !table.fill(zones.get(), faults)) {
        return stopped();
      }
    } catch (IllegalArgumentException holdsNot) {
      faults.add(PlannedDates.holdsNot(holdsNot));
      return stopped();
    }
    OpeningsSheet sheet =
        new OpeningsSheet(
            ZonedDateTime.now(surroundings.clock().withZone(input.book().business().zone())),
            terms,
            table.kinds(),
            table.zones(zones.get()),
            open.notPlanned(),
            open.notCounted());
    return shown(input, sheet, open.full());
  }

  private ExitCode shown(BookInput input, OpeningsSheet sheet, boolean full) throws IOException {
    if (order.json()) {
      console.say(OpeningsJson.of(sheet));
    } else {
      OpeningsText.lines(sheet).forEach(console::say);
      console.say("");
      console.say(PlanNotes.attribution(input.map()));
    }
    if (order.csv().isPresent()) {
      Path file = order.csv().get().toAbsolutePath().normalize();
      WholeFiles files = new WholeFiles(file.getParent());
      files.put(file.getFileName().toString(), OpeningsCsv.text(sheet));
      List<Path> written = files.write();
      console.warn("Written: " + written.get(0));
    }
    String report = FaultReport.of(faults.all(), false);
    if (!report.isEmpty()) {
      console.warn(report);
    }
    boolean unproven =
        sheet.zones().stream()
            .flatMap(zone -> zone.rows().stream())
            .flatMap(row -> row.cells().stream())
            .anyMatch(cell -> !cell.proven());
    return Ending.of(faults.all(), full || unproven || !sheet.notCounted().isEmpty());
  }

  private ExitCode stopped() {
    List<Fault> all = faults.all();
    console.warn(FaultReport.of(all, true));
    console.warn("Nothing was answered, and nothing was written.");
    return ExitCode.STOPPED;
  }
}
