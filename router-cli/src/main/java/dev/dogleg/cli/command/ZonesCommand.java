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

/** Reports the zones of a planned round. */
@Command(
    name = "zones",
    description =
        "What each zone takes, gaps and overlaps, visits on a wrong zone-day, and better days for"
            + " the zones.",
    mixinStandardHelpOptions = true)
final class ZonesCommand implements Callable<Integer> {
  private final Surroundings surroundings;

  @Spec private CommandSpec spec;

  @Mixin private BookChoice choice;

  @Option(
      names = "--plan",
      paramLabel = "PLAN.csv",
      description = "The planned days. Default: BOOK/plan/plan.csv.")
  private Path plan;

  @Option(
      names = "--page",
      paramLabel = "FILE.html",
      description = "Where the map of the zones goes. Default: zones.html beside the plan.")
  private Path page;

  @Option(
      names = "--weeks",
      paramLabel = "N",
      description = "So many weeks are planned at most in search of better days. Default: 12.")
  private int weeks = 12;

  @Option(
      names = "--effort",
      paramLabel = "STEPS",
      description = "Limit of each of them in solver steps. Default: 20000000.")
  private long effort = 20_000_000L;

  @Option(names = "--json", description = "Print the report as JSON.")
  private boolean json;

  ZonesCommand(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() throws IOException {
    if (weeks < 2 || effort < 1) {
      throw new ParameterException(
          spec.commandLine(), "--weeks must be 2 or more and --effort 1 or more");
    }
    ZonesRun.Order order =
        new ZonesRun.Order(
            choice, Optional.ofNullable(plan), Optional.ofNullable(page), weeks, effort, json);
    return new ZonesRun(surroundings, order).run().number();
  }
}
