package dev.dogleg.cli.command;

import dev.dogleg.cli.prepare.LookUps;
import dev.dogleg.cli.prepare.MapInUse;
import dev.dogleg.cli.prepare.ZoneDoors;
import dev.dogleg.fault.Faults;
import dev.dogleg.fault.Severity;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;

/**
 * A book with the days that are planned, as questions about room begin with it.
 *
 * @param input the book
 * @param planned its planned days
 */
record PlannedBook(BookInput input, PlannedDates planned) {
  /**
   * Reads both. What is wrong with rows of the book was said when it was planned, so only what
   * stops is said again.
   *
   * @param choice which book
   * @param plan the planned days, or empty for {@code plan/plan.csv} of the book
   * @param clock tells what lies ahead
   * @param faults takes faults; those of the plan may stop too
   * @return the book; empty where it can not be read
   */
  static Optional<PlannedBook> read(
      BookChoice choice, Optional<Path> plan, Clock clock, Faults faults) {
    Faults ofBook = new Faults();
    Optional<BookInput> read = BookInput.read(choice, false, ofBook);
    if (read.isEmpty() || ofBook.stops()) {
      faults.addAll(ofBook);
      return Optional.empty();
    }
    BookInput input = read.get();
    return Optional.of(new PlannedBook(input, PlannedDates.read(plan, input, clock, faults)));
  }

  /**
   * The known doors of its zones. How addresses were read was said when the book was planned; whose
   * door is missing was not.
   *
   * @param map the map
   * @param faults takes faults
   * @return the doors; empty where a fault stops the run
   */
  Optional<ZoneDoors> doors(MapInUse map, Faults faults) {
    Faults ofDoors = new Faults();
    Optional<ZoneDoors> doors =
        ZoneDoors.of(
            input.book(), map, new LookUps(map, input.book().clients()), input.rows(), ofDoors);
    ofDoors.all().stream()
        .filter(fault -> fault.severity().compareTo(Severity.ASIDE) <= 0)
        .forEach(faults::add);
    return doors;
  }
}
