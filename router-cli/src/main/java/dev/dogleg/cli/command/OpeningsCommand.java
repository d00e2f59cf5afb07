package dev.dogleg.cli.command;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Prints the times that may be told to a new client without asking again. */
@Command(
    name = "openings",
    description =
        "Room ahead: the times you may tell a new client on the phone, by kind of dog, zone and"
            + " day.",
    mixinStandardHelpOptions = true)
final class OpeningsCommand implements Callable<Integer> {
  private final Surroundings surroundings;

  @Spec private CommandSpec spec;
  @Mixin private BookChoice choice;

  @Option(
      names = "--weeks",
      paramLabel = "N",
      defaultValue = "2",
      description = "Weeks from the plan's first day, 1..6. Default: ${DEFAULT-VALUE}.")
  private int weeks;

  @Option(
      names = "--span",
      paramLabel = "MINUTES",
      defaultValue = "60",
      description = "Width of the span you tell, 30..240. Default: ${DEFAULT-VALUE}.")
  private int span;

  @Option(
      names = "--margin",
      paramLabel = "MINUTES",
      defaultValue = "5",
      description =
          "How much longer than to the known doors the drives may be, 0..15. Default:"
              + " ${DEFAULT-VALUE}.")
  private int margin;

  @Option(
      names = "--enough",
      paramLabel = "PERCENT",
      defaultValue = "80",
      description =
          "Reckon with minutes that are enough for so many of 100 dogs, 50..95. Default:"
              + " ${DEFAULT-VALUE}.")
  private int enough;

  @Option(names = "--overtime", description = "The card's overtime counts as room too.")
  private boolean overtime;

  @Option(names = "--csv", paramLabel = "FILE", description = "Write the table there too.")
  private Path csv;

  @Option(names = "--json", description = "Print the table as JSON.")
  private boolean json;

  @Option(
      names = "--plan",
      paramLabel = "PLAN.csv",
      description = "The planned days. Default: BOOK/plan/plan.csv.")
  private Path plan;

  OpeningsCommand(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() throws IOException {
    check("--weeks", weeks, 1, 6);
    check("--span", span, 30, 240);
    check("--margin", margin, 0, 15);
    check("--enough", enough, 50, 95);
    OpeningsRun.Order order =
        new OpeningsRun.Order(
            choice,
            Optional.ofNullable(plan),
            weeks,
            60 * span,
            60 * margin,
            enough,
            overtime,
            Optional.ofNullable(csv),
            json);
    return new OpeningsRun(surroundings, order).run().number();
  }

  private void check(String name, int value, int least, int most) {
    if (value < least || value > most) {
      throw new ParameterException(
          spec.commandLine(), "%s must lie in %d..%d, was %d".formatted(name, least, most, value));
    }
  }
}
