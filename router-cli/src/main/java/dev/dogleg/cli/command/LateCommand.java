package dev.dogleg.cli.command;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Solves the rest of a day that runs late. */
@Command(
    name = "late",
    description = {
      "Running late: the rest of today solved anew, at most three choices, and whom to tell.",
      "Read it while parked, never while driving."
    },
    mixinStandardHelpOptions = true)
final class LateCommand implements Callable<Integer> {
  private static final Pattern CLOCK = Pattern.compile("([01]?\\d|2[0-3])[:.h]?([0-5]\\d)");

  private final Surroundings surroundings;

  @Spec private CommandSpec spec;
  @Mixin private BookChoice choice;

  @Option(
      names = "--plan",
      paramLabel = "PLAN.csv",
      description = "The plan of the day. Default: BOOK/plan/plan.csv.")
  private Path plan;

  @Option(
      names = "--day",
      paramLabel = "DATE",
      description = "Which day, YYYY-MM-DD. Default: today, or the only day of the plan.")
  private LocalDate day;

  @Option(
      names = "--groomer",
      paramLabel = "NAME",
      description = "Whose day, where the plan has several.")
  private String groomer;

  @Option(names = "--now", paramLabel = "HH:MM", description = "What time it is. Default: now.")
  private String now;

  @Option(
      names = "--done",
      paramLabel = "DOORS",
      description =
          "Doors made: a number alone means that many first doors; else numbers, names or ids"
              + " joined by commas. Default: none.")
  private String done;

  @Option(
      names = "--ready",
      paramLabel = "HH:MM",
      description = "The last of --done is still under way, and ready then.")
  private String ready;

  @Option(
      names = "--cancel",
      paramLabel = "DOORS",
      description = "Doors that will not be made: numbers, names or ids joined by commas.")
  private String cancel;

  @Option(
      names = "--at",
      paramLabel = "PLACE",
      description =
          "Where the van is: a door of the day (number, name, id), a client, home, or an address."
              + " Default: the last door of --done, else where the day starts.")
  private String at;

  @Option(
      names = "--break",
      paramLabel = "taken|open",
      description = "Whether the break was taken. Default: as the plan has it.")
  private String breakWord;

  @Option(
      names = "--choose",
      paramLabel = "N",
      description = "Writes choice N into the plan; what is done stays as it is.")
  private Integer choose;

  LateCommand(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() throws IOException {
    if (ready != null && done == null) {
      throw usage("--ready speaks of the last door of --done, which is missing");
    }
    if (choose != null && (choose < 1 || choose > 3)) {
      throw usage("--choose must be 1, 2 or 3, was " + choose);
    }
    if (breakWord != null && !breakWord.equals("taken") && !breakWord.equals("open")) {
      throw usage("--break is taken or open, was " + breakWord);
    }
    LateRun.Order order =
        new LateRun.Order(
            choice,
            Optional.ofNullable(plan),
            Optional.ofNullable(day),
            Optional.ofNullable(groomer),
            time("--now", now),
            done == null ? "" : done,
            time("--ready", ready),
            cancel == null ? "" : cancel,
            Optional.ofNullable(at),
            Optional.ofNullable(breakWord).map("taken"::equals),
            choose == null ? OptionalInt.empty() : OptionalInt.of(choose));
    try {
      return new LateRun(surroundings, order).run().number();
    } catch (WrongUsage wrong) {
      throw usage(wrong.getMessage());
    }
  }

  /** A time as thumbs type it: 9:05, 9.05 or 0905. */
  private Optional<LocalTime> time(String option, String text) {
    if (text == null) {
      return Optional.empty();
    }
    Matcher clock = CLOCK.matcher(text.strip());
    if (!clock.matches()) {
      throw usage(option + " is a time like 11:40, was " + text);
    }
    return Optional.of(
        LocalTime.of(Integer.parseInt(clock.group(1)), Integer.parseInt(clock.group(2))));
  }

  /** What a person asked for does not fit the plan that lies there. */
  static final class WrongUsage extends RuntimeException {
    private static final long serialVersionUID = 1;

    WrongUsage(String message) {
      super(message);
    }
  }

  private ParameterException usage(String message) {
    return new ParameterException(spec.commandLine(), message);
  }
}
