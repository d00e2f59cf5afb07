package dev.dogleg.cli.command;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Says what to text the owners, and keeps what they were told. */
@Command(
    name = "texts",
    description =
        "Writes what to tell owners of a planned day: a text each, a page of links, calendar files."
            + " Nothing is sent.",
    mixinStandardHelpOptions = true)
final class TextsCommand implements Callable<Integer> {
  private final Surroundings surroundings;

  @Spec private CommandSpec spec;
  @Mixin private BookChoice choice;

  @Option(
      names = "--plan",
      paramLabel = "PLAN.csv",
      description = "The plan. Default: BOOK/plan/plan.csv.")
  private Path plan;

  @Option(
      names = "--out",
      paramLabel = "FILE.csv",
      description =
          "The texts; a page of links lies beside it. Default: texts.csv beside the plan.")
  private Path out;

  @Option(
      names = "--ics",
      paramLabel = "DIR",
      description = "Writes calendar files of owners who want them into DIR.")
  private Path ics;

  @Option(
      names = "--date",
      paramLabel = "DATE",
      description = "The day to tell of, YYYY-MM-DD. Default: the plan's first day after today.")
  private LocalDate date;

  @Option(
      names = "--now",
      paramLabel = "TIME",
      description = "The time it is: 18:30 or 2027-02-28T18:30. Default: the clock.")
  private String now;

  @Option(
      names = "--on-my-way",
      paramLabel = "CLIENT",
      description = "Only the door that the van has just left for: client or booking.")
  private String onMyWay;

  @Option(
      names = "--left",
      paramLabel = "TIME",
      description = "With --on-my-way: when the van left. Default: now.")
  private String left;

  @Option(
      names = "--answer",
      paramLabel = "CLIENT=REPLY",
      description =
          "Notes what an owner replied: yes, no, stop, start; none for no answer. Repeatable.")
  private List<String> answers = new ArrayList<>();

  TextsCommand(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() throws IOException {
    if (out != null && !out.getFileName().toString().endsWith(".csv")) {
      throw new ParameterException(spec.commandLine(), "--out: a file that ends in .csv");
    }
    if (left != null && onMyWay == null) {
      throw new ParameterException(spec.commandLine(), "--left goes with --on-my-way");
    }
    if (onMyWay != null && date != null) {
      throw new ParameterException(spec.commandLine(), "--on-my-way is for today: no --date");
    }
    if (answers.stream().anyMatch(answer -> answer.indexOf('=') < 1)) {
      throw new ParameterException(spec.commandLine(), "--answer: CLIENT=REPLY");
    }
    TextsRun.Order order =
        new TextsRun.Order(
            choice,
            Optional.ofNullable(plan),
            Optional.ofNullable(out),
            Optional.ofNullable(ics),
            Optional.ofNullable(date),
            Optional.ofNullable(now),
            Optional.ofNullable(onMyWay),
            Optional.ofNullable(left),
            answers);
    return new TextsRun(surroundings, order).run().number();
  }
}
