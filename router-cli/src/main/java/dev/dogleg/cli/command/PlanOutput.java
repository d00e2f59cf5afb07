package dev.dogleg.cli.command;

import dev.dogleg.cli.console.Console;
import dev.dogleg.cli.console.ExitCode;
import dev.dogleg.cli.export.PlanCsv;
import dev.dogleg.cli.export.PlanRow;
import dev.dogleg.cli.export.SetAside;
import dev.dogleg.cli.export.SetAsideCsv;
import dev.dogleg.cli.export.WholeFiles;
import dev.dogleg.fault.Faults;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;

/** What a plan leaves behind, of a day or of a week: its files, and the lines under it. */
final class PlanOutput {
  private final Console console;
  private final PlanRun.Order order;
  private final BookInput input;
  private final Faults faults;

  PlanOutput(Console console, PlanRun.Order order, BookInput input, Faults faults) {
    this.console = console;
    this.order = order;
    this.input = input;
    this.faults = faults;
  }

  /** {@return the folder that takes the files} */
  Path folder() {
    return order.out().orElse(input.folder().resolve("plan"));
  }

  /**
   * Writes the files, all or none.
   *
   * @param rows rows of the plan
   * @param noRoom text of the file of what has no room, or null where everything has
   * @return the files written
   */
  List<Path> write(List<PlanRow> rows, String noRoom) throws IOException {
    List<SetAside> aside = input.setAside(faults.all());
    WholeFiles files = new WholeFiles(folder());
    files.put("plan.csv", PlanCsv.text(rows));
    files.put("no-room.csv", noRoom);
    files.put("set-aside.csv", aside.isEmpty() ? null : SetAsideCsv.text(aside));
    return files.write();
  }

  /** Says that there is nothing to plan; an empty plan is written: yesterday's is not today's. */
  ExitCode nothing(String why, List<LocalDate> dates) throws IOException {
    LocalDate first = dates.get(0);
    LocalDate last = dates.get(dates.size() - 1);
    console.say(
        "Nothing to plan: "
            + why
            + (first.equals(last) ? " on " + first : " from " + first + " to " + last)
            + ".");
    return end(write(List.of(), null), false);
  }

  /** Says that the audit does not pass the plan. */
  ExitCode ownFault(List<String> findings) {
    console.warn("Dogleg's own fault: its audit does not pass the plan. Nothing was written.");
    findings.forEach(finding -> console.warn("  " + finding));
    return ExitCode.OWN_FAULT;
  }

  /** The last lines: whose map it is, what was written, what needs a look. */
  ExitCode end(List<Path> written, boolean bookedLeftOut) {
    console.say("");
    console.say(PlanNotes.attribution(input.map()));
    written.forEach(file -> console.say("Written: " + file));
    String report = FaultReport.of(faults.all(), false);
    if (!report.isEmpty()) {
      console.warn(report);
    }
    return Ending.of(faults.all(), bookedLeftOut);
  }
}
