package dev.dogleg.cli.command;

import dev.dogleg.cli.export.PlanReader;
import dev.dogleg.cli.export.PlanReader.PlacedRow;
import dev.dogleg.cli.prepare.EarlierPlan;
import dev.dogleg.fault.Fault;
import dev.dogleg.fault.Faults;
import dev.dogleg.fault.Severity;
import dev.dogleg.fault.Where;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/**
 * The days ahead that a plan speaks of: from its first after today to its last.
 *
 * @param earlier where the plan has bookings
 * @param dates every day from the first to the last; one without a row is free
 */
record PlannedDates(EarlierPlan earlier, List<LocalDate> dates) {
  PlannedDates {
    dates = List.copyOf(dates);
  }

  /** Reads them; without a day, and with a fault that stops, where there is none. */
  static PlannedDates read(Optional<Path> plan, BookInput input, Clock clock, Faults faults) {
    Path file = plan.orElse(input.folder().resolve("plan").resolve("plan.csv"));
    List<PlacedRow> rows =
        PlanFile.text(file, input, faults)
            .map(text -> PlanReader.read(text.text(), file.toString(), faults))
            .orElse(List.of());
    LocalDate today = LocalDate.now(clock.withZone(input.book().business().zone()));
    TreeSet<LocalDate> dates = new TreeSet<>();
    for (PlacedRow row : rows) {
      date(row).filter(date -> date.isAfter(today)).ifPresent(dates::add);
    }
    if (dates.isEmpty() && !faults.stops()) {
      faults.add(
          new Fault(
              "no-planned-day",
              Severity.STOP,
              Where.file(file.toString()),
              "",
              "a plan with a day after today was expected",
              "dogleg plan --from DATE --days 5"));
    }
    return new PlannedDates(
        EarlierPlan.of(rows),
        dates.isEmpty() ? List.of() : dates.first().datesUntil(dates.last().plusDays(1)).toList());
  }

  private static Optional<LocalDate> date(PlacedRow row) {
    try {
      return Optional.of(LocalDate.parse(row.row().date()));
    } catch (DateTimeParseException unreadable) {
      return Optional.empty();
    }
  }

  /** A plan whose days do not hold. */
  static Fault holdsNot(IllegalArgumentException why) {
    return new Fault(
        "plan-holds-not",
        Severity.STOP,
        Where.NOWHERE,
        why.getMessage(),
        "a plan whose days hold was expected",
        "dogleg check --plan says why; dogleg plan plans anew");
  }
}
