package dev.dogleg.cli.command;

import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.plan.week.WeekPlanner;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Plans days and writes them. */
@Command(
    name = "plan",
    description = "Plans days: an ordered, checked itinerary in DIR/plan.csv.",
    mixinStandardHelpOptions = true)
final class PlanCommand implements Callable<Integer> {
  private final Surroundings surroundings;
  private final WeekPlanning planning;

  @Spec private CommandSpec spec;
  @Mixin private BookChoice choice;

  @Option(
      names = "--from",
      paramLabel = "DATE",
      description = "First day, YYYY-MM-DD. Default: the day of the earliest open booking.")
  private LocalDate from;

  @Option(
      names = "--days",
      paramLabel = "N",
      defaultValue = "1",
      description = "Calendar days from the first. Default: ${DEFAULT-VALUE}.")
  private int days;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "Where the files go. Default: BOOK/plan.")
  private Path out;

  @Option(
      names = "--seed",
      paramLabel = "N",
      defaultValue = "1",
      description = "Seed of every random choice. Default: ${DEFAULT-VALUE}.")
  private long seed;

  @Option(
      names = "--effort",
      paramLabel = "N",
      description =
          "Limit in solver steps. Default: "
              + DayRequest.USUAL_EFFORT
              + " for a day, "
              + WeekPlanner.USUAL_EFFORT
              + " for several.")
  private Long effort;

  @Option(
      names = "--fresh",
      description = "Several days: pass over the plan that lies in DIR already.")
  private boolean fresh;

  @Option(names = "--strict", description = "Write nothing where anything needs a look.")
  private boolean strict;

  PlanCommand(Surroundings surroundings, WeekPlanning planning) {
    this.surroundings = surroundings;
    this.planning = planning;
  }

  @Override
  public Integer call() throws IOException {
    if (days < 1 || days > 366) {
      throw new ParameterException(spec.commandLine(), "--days must lie in 1..366, was " + days);
    }
    if (effort != null && effort < 1) {
      throw new ParameterException(spec.commandLine(), "--effort must be 1 or more");
    }
    PlanRun.Order order =
        new PlanRun.Order(
            choice,
            Optional.ofNullable(from),
            days,
            Optional.ofNullable(out),
            seed,
            effort == null ? OptionalLong.empty() : OptionalLong.of(effort),
            fresh,
            strict);
    return new PlanRun(surroundings, order, planning).run().number();
  }
}
