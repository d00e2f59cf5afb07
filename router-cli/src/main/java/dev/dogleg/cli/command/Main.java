package dev.dogleg.cli.command;

import dev.dogleg.cli.console.Console;
import dev.dogleg.cli.console.QuietLogs;
import dev.dogleg.groom.StarterTables;
import dev.dogleg.plan.week.WeekPlanner;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import picocli.CommandLine;

/** Where the process starts. */
public final class Main {
  private Main() {}

  /**
   * Runs one command and ends the process with its exit code.
   *
   * @param args command line
   */
  public static void main(String[] args) {
    // Two things that every command with a book needs and that ask nothing of the command line are
    // done by threads of their own while it is read.
    Thread quiet = begun("quiet-logs", () -> QuietLogs.set(System.getenv("DOGLEG_LOG")));
    if (args.length > 0 && !args[0].startsWith("-")) {
      begun("starter-tables", StarterTables::load);
    }
    Optional<Path> project =
        Optional.ofNullable(System.getProperty("dogleg.project")).map(Path::of);
    Surroundings surroundings =
        new Surroundings(
            Console.system(Boolean.getBoolean("dogleg.terminal")),
            Clock.systemUTC(),
            project,
            System.getProperty("dogleg.typed", "dogleg"),
            CacheFolder.choose(
                System.getenv(), project, Path.of(System.getProperty("user.home", "."))));
    CommandLine line = CommandTree.of(surroundings, WeekPlanner::certified, args);
    finished(quiet);
    System.exit(CommandTree.run(line, surroundings.console(), args));
  }

  private static Thread begun(String name, Runnable work) {
    Thread thread = new Thread(work, name);
    thread.setDaemon(true);
    thread.start();
    return thread;
  }

  private static void finished(Thread thread) {
    try {
      thread.join();
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    }
  }
}
