package dev.dogleg.cli.command;

import dev.dogleg.cli.console.Console;
import dev.dogleg.cli.console.ExitCode;
import dev.dogleg.fault.FaultException;
import dev.dogleg.plan.week.WeekPlanner;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** All commands, and what happens when one of them cannot go on. */
@Command(
    name = "dogleg",
    description = "Plans the days of pet groomers who work from a van.",
    mixinStandardHelpOptions = true,
    version = "dogleg 0.1.0-SNAPSHOT",
    synopsisSubcommandLabel = "COMMAND",
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:done",
      "1:the program's own fault, nothing written",
      "2:wrong usage",
      "3:input that stops the run, nothing written",
      "4:done, but something needs a look",
      "5:proven: it does not fit",
      "6:not found within the limit, unproven"
    })
public final class CommandTree {
  private CommandTree() {}

  /**
   * Runs one command line.
   *
   * @param surroundings console, clock, folders
   * @param args command line
   * @return exit code, 0..6
   */
  public static int run(Surroundings surroundings, String... args) {
    return run(surroundings, WeekPlanner::certified, args);
  }

  /**
   * Runs one command line with weeks planned by somebody.
   *
   * @param surroundings console, clock, folders
   * @param planning who answers a week's request
   * @param args command line
   * @return exit code, 0..6
   */
  static int run(Surroundings surroundings, WeekPlanning planning, String... args) {
    Console console = surroundings.console();
    CommandLine line = new CommandLine(new CommandTree());
    line.addSubcommand(new DemoCommand(surroundings, planning));
    line.addSubcommand(new PlanCommand(surroundings, planning));
    line.addSubcommand(new CheckCommand(surroundings));
    line.addSubcommand(new TextsCommand(surroundings));
    line.addSubcommand(new FindCommand(surroundings));
    line.addSubcommand(new FitCommand(surroundings));
    line.addSubcommand(new OpeningsCommand(surroundings));
    line.addSubcommand(new HowLongCommand(surroundings));
    line.addSubcommand(new LearnCommand(surroundings));
    line.addSubcommand(new LateCommand(surroundings));
    line.addSubcommand(new ZonesCommand(surroundings));
    line.setOut(console.out());
    line.setErr(console.err());
    line.setExecutionExceptionHandler((failure, parsed, result) -> failed(console, failure));
    line.setUsageHelpWidth(80);
    if (args.length == 0) {
      line.usage(console.err());
      console.err().flush();
      return ExitCode.USAGE.number();
    }
    return line.execute(args);
  }

  private static int failed(Console console, Exception failure) {
    if (failure instanceof FaultException faults) {
      console.warn(FaultReport.of(faults.faults(), true));
      return ExitCode.STOPPED.number();
    }
    if (failure instanceof FileAlreadyExistsException file) {
      console.warn(file.getFile() + " is a file; a folder is needed there. Nothing was written.");
      return ExitCode.STOPPED.number();
    }
    if (failure instanceof IOException) {
      console.warn("A file cannot be written or read: " + failure);
      return ExitCode.STOPPED.number();
    }
    console.warn("Dogleg's own fault, nothing was written: " + failure);
    for (StackTraceElement frame : failure.getStackTrace()) {
      if (frame.getClassName().startsWith("dev.dogleg")) {
        console.warn("  at " + frame);
      }
    }
    return ExitCode.OWN_FAULT.number();
  }
}
