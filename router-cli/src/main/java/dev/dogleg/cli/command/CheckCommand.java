package dev.dogleg.cli.command;

import dev.dogleg.cli.console.Console;
import dev.dogleg.cli.console.ExitCode;
import dev.dogleg.cli.prepare.AddressReview;
import dev.dogleg.cli.prepare.Calendar;
import dev.dogleg.cli.prepare.LookUps;
import dev.dogleg.cli.prepare.MapInUse;
import dev.dogleg.cli.prepare.Preparation;
import dev.dogleg.cli.prepare.ZoneDistricts;
import dev.dogleg.cli.terms.TagVocabulary;
import dev.dogleg.fault.FaultException;
import dev.dogleg.fault.Faults;
import dev.dogleg.model.Booking;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Says what is wrong with a book, and what a plan breaks. */
@Command(
    name = "check",
    description = "Lists the faults of a book, and with --plan the breaches of a plan.",
    mixinStandardHelpOptions = true)
final class CheckCommand implements Callable<Integer> {
  private final Surroundings surroundings;

  @Mixin private BookChoice choice;

  @Option(
      names = "--plan",
      paramLabel = "PLAN.csv",
      description = "A plan, also one edited by hand: it is timed anew and every breach is listed.")
  private Path plan;

  CheckCommand(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() throws IOException {
    Console console = surroundings.console();
    Faults faults = new Faults();
    Optional<BookInput> read = BookInput.read(choice, false, faults);
    if (read.isEmpty()) {
      return stopped(faults, List.of());
    }
    BookInput input = read.get();
    LocalDate tomorrow = surroundings.tomorrow(input.book().business().zone());
    Calendar calendar = new Calendar(input.book().business(), tomorrow);
    PlanCheck check = new PlanCheck(input, calendar, faults);
    List<PlanFile.Group> groups = plan == null ? List.of() : PlanFile.read(plan, input, faults);
    List<Booking> bookings =
        plan == null
            ? input.book().bookings().stream().filter(b -> b.status().open()).toList()
            : PlanFile.named(groups, input);
    List<String> inexact = List.of();
    try (MapInUse map = new MapInUse(input.map(), surroundings.cache(), console, faults)) {
      LookUps lookUps = new LookUps(map, input.book().clients());
      inexact = AddressReview.of(input.book(), lookUps, input.rows());
      Preparation preparation =
          Preparation.of(
              input.book(), bookings, calendar, input.tables(), map, lookUps, input.rows(), faults);
      Candidates.withoutDoor(input, bookings, preparation::placed, faults);
      if (faults.stops()) {
        return stopped(faults, inexact);
      }
      if (plan == null) {
        ZoneDistricts.of(input.book().week().zones(), map, input.rows(), faults);
      }
      check.follow(groups, preparation, map, lookUps);
      if (plan == null) {
        new TagVocabulary(input.book(), input.tables())
            .check(
                input.book().week().rules(),
                input.book().week().zones(),
                input.rows()::rule,
                input.rows()::zone,
                faults);
      }
    } catch (FaultException failed) {
      failed.faults().forEach(faults::add);
      return stopped(faults, inexact);
    }
    check.lines().forEach(console::say);
    String report = FaultReport.of(faults.all(), true);
    if (!report.isEmpty()) {
      console.say(report);
    }
    inexact.forEach(console::say);
    if (Ending.of(faults.all(), check.breaches() > 0) == ExitCode.DONE) {
      console.say(
          plan == null
              ? "Nothing to mend: " + bookings.size() + " open bookings."
              : "The plan holds.");
    }
    console.say(PlanNotes.attribution(input.map()));
    return Ending.of(faults.all(), check.breaches() > 0).number();
  }

  private int stopped(Faults faults, List<String> inexact) {
    surroundings.console().say(FaultReport.of(faults.all(), true));
    inexact.forEach(surroundings.console()::say);
    return ExitCode.STOPPED.number();
  }
}
