package dev.dogleg.cli.command;

import dev.dogleg.cli.console.Console;
import dev.dogleg.cli.console.QuietLogs;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;

/** Where the process starts. */
public final class Main {
  private Main() {}

  /**
   * Runs one command and ends the process with its exit code.
   *
   * @param args command line
   */
  public static void main(String[] args) {
    QuietLogs.set(System.getenv("DOGLEG_LOG"));
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
    System.exit(CommandTree.run(surroundings, args));
  }
}
