package dev.dogleg.cli.command;

import dev.dogleg.cli.console.Console;
import dev.dogleg.cli.console.ExitCode;
import dev.dogleg.fault.FaultException;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.ParseResult;

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
   * Makes what reads one command line and runs its command.
   *
   * @param surroundings console, clock, folders
   * @param planning who answers a week's request
   * @param args command line
   * @return the command line, not read yet
   */
  static CommandLine of(Surroundings surroundings, WeekPlanning planning, String... args) {
    Console console = surroundings.console();
    CommandLine line = new CommandLine(new CommandTree());
    for (Object command : chosen(commands(surroundings, planning), args)) {
      line.addSubcommand(command);
    }
    line.setOut(console.out());
    line.setErr(console.err());
    line.setExecutionExceptionHandler(new Failures(console));
    line.setUsageHelpWidth(80);
    return line;
  }

  /**
   * Runs one command line.
   *
   * @param line what reads it
   * @param console where it speaks
   * @param args the command line
   * @return exit code, 0..6
   */
  static int run(CommandLine line, Console console, String... args) {
    if (args.length == 0) {
      line.usage(console.err());
      console.err().flush();
      return ExitCode.USAGE.number();
    }
    return line.execute(args);
  }

  /** All commands by name; a command is made only where it is wanted. */
  static Map<String, Supplier<Object>> commands(Surroundings surroundings, WeekPlanning planning) {
    Map<String, Supplier<Object>> commands = new LinkedHashMap<>();
    commands.put("demo", () -> new DemoCommand(surroundings, planning));
    commands.put("plan", () -> new PlanCommand(surroundings, planning));
    commands.put("check", () -> new CheckCommand(surroundings));
    commands.put("texts", () -> new TextsCommand(surroundings));
    commands.put("find", () -> new FindCommand(surroundings));
    commands.put("fit", () -> new FitCommand(surroundings));
    commands.put("openings", () -> new OpeningsCommand(surroundings));
    commands.put("howlong", () -> new HowLongCommand(surroundings));
    commands.put("learn", () -> new LearnCommand(surroundings));
    commands.put("late", () -> new LateCommand(surroundings));
    commands.put("zones", () -> new ZonesCommand(surroundings));
    return commands;
  }

  /** The command that was typed; all of them where none was, so that help and faults name them. */
  private static List<Object> chosen(Map<String, Supplier<Object>> commands, String... args) {
    Supplier<Object> typed = args.length == 0 ? null : commands.get(args[0]);
    return typed != null
        ? List.of(typed.get())
        : commands.values().stream().map(Supplier::get).toList();
  }

  /**
   * What becomes of a command that cannot go on.
   *
   * <p>Here and above no lambda speaks of a class of the option library: its classes are of an old
   * format, and the class archive that makes starts quick leaves out any that a lambda has touched.
   */
  private record Failures(Console console) implements IExecutionExceptionHandler {
    @Override
    public int handleExecutionException(Exception failure, CommandLine line, ParseResult result) {
      return failed(console, failure);
    }
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
