package dev.dogleg.cli.command;

import dev.dogleg.cli.console.Console;
import dev.dogleg.cli.console.QuietLogs;
import dev.dogleg.plan.week.WeekPlanner;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Optional;

/**
 * One command line run inside the test's own process, on a fixed clock and a map cache that all
 * tests share.
 *
 * @param exit exit code
 * @param out standard output
 * @param err standard error
 */
record TestRun(int exit, String out, String err) {
  /** Root of the project. */
  static final Path ROOT = Path.of(System.getProperty("dogleg.root")).toAbsolutePath().normalize();

  /** The sample map. */
  static final Path MAP = ROOT.resolve("maps-sample/brindlewick.osm.pbf");

  /** Where road networks and address indexes of the tests lie. */
  static final Path CACHE = ROOT.resolve("router-cli/target/test-cache");

  /** "Today" of every test: Sunday 28 February 2027, noon in Greenwich. */
  static final Clock CLOCK = Clock.fixed(Instant.parse("2027-02-28T12:00:00Z"), ZoneOffset.UTC);

  private static boolean warm;

  static TestRun of(String... args) {
    return in(ROOT, args);
  }

  /** A run whose project folder is another one. */
  static TestRun in(Path project, String... args) {
    return run(project, WeekPlanner::certified, args);
  }

  /** A run, on a warm cache, in which somebody else plans the weeks. */
  static TestRun planned(WeekPlanning planning, String... args) {
    warm();
    return run(ROOT, planning, args);
  }

  private static TestRun run(Path project, WeekPlanning planning, String... args) {
    QuietLogs.set("");
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    Console console =
        new Console(
            new PrintWriter(out, false),
            new PrintWriter(err, false),
            false,
            StandardCharsets.UTF_8);
    Surroundings surroundings =
        new Surroundings(console, CLOCK, Optional.of(project), "dogleg", CACHE);
    int exit = CommandTree.run(CommandTree.of(surroundings, planning, args), console, args);
    return new TestRun(exit, plain(out), plain(err));
  }

  /** A cold cache is filled first: its progress is not the matter of a test. */
  static TestRun warm(String... args) {
    warm();
    return of(args);
  }

  private static void warm() {
    if (!warm) {
      TestRun first = of("check", ROOT.resolve("demo-data").toString());
      if (first.exit() != 0) {
        throw new IllegalStateException("the demo book does not check: " + first);
      }
      warm = true;
    }
  }

  private static String plain(StringWriter text) {
    return text.toString().replace("\r\n", "\n");
  }
}
