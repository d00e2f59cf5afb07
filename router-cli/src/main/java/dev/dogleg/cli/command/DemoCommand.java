package dev.dogleg.cli.command;

import dev.dogleg.cli.console.Console;
import dev.dogleg.cli.console.ExitCode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Plans the demo book. */
@Command(
    name = "demo",
    description = "Plans a day of the demo book (an invented business in an invented town).",
    mixinStandardHelpOptions = true)
final class DemoCommand implements Callable<Integer> {
  private final Surroundings surroundings;
  private final WeekPlanning planning;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "Where the files go. Default: demo-out in the project folder.")
  private Path out;

  DemoCommand(Surroundings surroundings, WeekPlanning planning) {
    this.surroundings = surroundings;
    this.planning = planning;
  }

  @Override
  public Integer call() throws IOException {
    Console console = surroundings.console();
    Path project = surroundings.project().orElse(Path.of(""));
    Path book = project.resolve("demo-data");
    if (!Files.isDirectory(book)) {
      console.warn("The demo needs the project's folder demo-data: start router-cli/bin/dogleg.");
      return ExitCode.STOPPED.number();
    }
    console.warn("Planning a day of the demo book " + book);
    PlanRun.Order order =
        new PlanRun.Order(
            new BookChoice(book, null),
            Optional.empty(),
            1,
            Optional.of(out == null ? project.resolve("demo-out") : out),
            1,
            OptionalLong.empty(),
            false,
            false);
    ExitCode end = new PlanRun(surroundings, order, planning).run();
    console.say("The book it came from: " + book);
    console.say(
        "The whole week: %s plan %s --days 5"
            .formatted(quoted(surroundings.typed()), quoted(book.toString())));
    return end.number();
  }

  private static String quoted(String text) {
    return text.contains(" ") ? '"' + text + '"' : text;
  }
}
