package dev.dogleg.cli.command;

import dev.dogleg.cli.console.Console;
import dev.dogleg.cli.console.ExitCode;
import dev.dogleg.cli.export.Wrap;
import dev.dogleg.cli.prepare.Calendar;
import dev.dogleg.cli.prepare.StopTimes;
import dev.dogleg.fault.Faults;
import dev.dogleg.groom.BasisLine;
import dev.dogleg.groom.GroomEstimate;
import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Says how long each open stop takes, and why. */
@Command(
    name = "howlong",
    description = "Prints the minutes of each open stop and what each number rests on.",
    mixinStandardHelpOptions = true)
final class HowLongCommand implements Callable<Integer> {
  private static final int COLUMNS = 80;

  private final Surroundings surroundings;

  @Mixin private BookChoice choice;

  HowLongCommand(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() throws IOException {
    Console console = surroundings.console();
    Faults faults = new Faults();
    Optional<BookInput> read = BookInput.read(choice, false, faults);
    if (read.isEmpty() || faults.stops()) {
      console.warn(FaultReport.of(faults.all(), true));
      return ExitCode.STOPPED.number();
    }
    BookInput input = read.get();
    LocalDate tomorrow = surroundings.tomorrow(input.book().business().zone());
    Calendar calendar = new Calendar(input.book().business(), tomorrow);
    for (StopTimes.StopTime stop :
        StopTimes.of(input.book(), calendar, input.tables(), input.rows(), faults)) {
      lines(stop, input.book().business().planPercent()).forEach(console::say);
    }
    String report = FaultReport.of(faults.all(), true);
    if (!report.isEmpty()) {
      console.warn(report);
    }
    return Ending.of(faults.all(), false).number();
  }

  private static List<String> lines(StopTimes.StopTime stop, int percent) {
    List<String> lines = new ArrayList<>();
    String minutes = Math.round(stop.plannedSeconds() / 60.0) + " min";
    String head = stop.date() + "  " + stop.who();
    lines.add(head + " ".repeat(Math.max(2, COLUMNS - head.length() - minutes.length())) + minutes);
    for (BasisLine basis : stop.estimate().basis()) {
      wrapped(lines, basis.toString(), 2);
    }
    for (GroomEstimate groom : stop.estimate().grooms()) {
      groom.guesses().forEach(guess -> wrapped(lines, "guessed: " + guess, 2));
    }
    stop.estimate().cautions().forEach(caution -> wrapped(lines, "mind: " + caution, 2));
    wrapped(
        lines,
        "planned so that it is enough in "
            + percent
            + " of 100 visits; nine times of ten it takes "
            + Math.round(stop.estimate().plannedSeconds(50) / 60.0)
            + " to "
            + Math.round(stop.estimate().plannedSeconds(950) / 60.0)
            + " min",
        2);
    lines.add("");
    return lines;
  }

  private static void wrapped(List<String> lines, String text, int indent) {
    List<String> parts = Wrap.lines(text, COLUMNS - indent - 4);
    lines.add(" ".repeat(indent) + parts.get(0));
    parts.stream().skip(1).forEach(part -> lines.add(" ".repeat(indent + 4) + part));
  }
}
