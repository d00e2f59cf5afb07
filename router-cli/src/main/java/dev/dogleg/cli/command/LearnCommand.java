package dev.dogleg.cli.command;

import dev.dogleg.cli.console.Console;
import dev.dogleg.cli.console.ExitCode;
import dev.dogleg.cli.csv.BookReader;
import dev.dogleg.cli.csv.LearnedTable;
import dev.dogleg.cli.csv.ReadBook;
import dev.dogleg.cli.csv.ReadOptions;
import dev.dogleg.cli.csv.VisitLog;
import dev.dogleg.cli.export.LearnedCsv;
import dev.dogleg.cli.export.LearnedText;
import dev.dogleg.cli.export.WholeFiles;
import dev.dogleg.fault.Fault;
import dev.dogleg.fault.Faults;
import dev.dogleg.fault.Severity;
import dev.dogleg.groom.LearnedRow;
import dev.dogleg.groom.StarterTables;
import dev.dogleg.groom.learn.HeldBack;
import dev.dogleg.groom.learn.LearnSettings;
import dev.dogleg.groom.learn.Lesson;
import dev.dogleg.groom.learn.LoggedVisit;
import dev.dogleg.groom.learn.OddVisit;
import dev.dogleg.groom.learn.VisitLearner;
import dev.dogleg.groom.learn.VisitOutcome;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Learns a groomer's own minutes and drive times from the visit log. */
@Command(
    name = "learn",
    description = "Learns your own minutes from the visit log: BOOK/learned.csv.",
    mixinStandardHelpOptions = true)
final class LearnCommand implements Callable<Integer> {
  private final Surroundings surroundings;

  @Mixin private BookChoice choice;

  @Option(
      names = "--visits",
      paramLabel = "FILE",
      description = "The visit log. Default: BOOK/" + VisitLog.FILE + ".")
  private Path visits;

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = "Where the result goes. Default: BOOK/" + LearnedTable.FILE + ".")
  private Path out;

  @Option(
      names = "--until",
      paramLabel = "DATE",
      description =
          "Last day that counts, YYYY-MM-DD; age is counted to it. Default: the log's last day.")
  private LocalDate until;

  LearnCommand(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() throws IOException {
    Console console = surroundings.console();
    Path book = choice.book().toAbsolutePath().normalize();
    Path folder = Files.isDirectory(book) ? book : book.getParent();
    ReadBook read =
        BookReader.read(
            book,
            new ReadOptions(StarterTables.load(), choice.business(), Optional.empty(), false));
    Faults faults = new Faults();
    faults.addAll(read.faults());
    if (read.book().isEmpty()) {
      return stopped(faults);
    }
    LocalDate today = latest(surroundings.tomorrow(read.book().get().business().zone()));
    Path file = visits == null ? folder.resolve(VisitLog.FILE) : visits;
    String name = visits == null ? VisitLog.FILE : visits.toString();
    Optional<VisitLog> log = VisitLog.read(file, name, read, today, faults);
    if (log.isEmpty() || faults.stops()) {
      return stopped(faults);
    }
    LocalDate last = lastDay(log.get(), today);
    VisitLearner learner = new VisitLearner(read.tables(), read.book().get(), LearnSettings.USUAL);
    Lesson lesson = learner.learn(log.get().visits(), last);
    tell(lesson, log.get(), faults);
    List<LoggedVisit> sound = withoutOdd(log.get(), lesson);
    LearnedText.lines(
            lesson,
            last,
            notUsed(log.get(), lesson, last),
            HeldBack.knownPets(learner, sound, last),
            HeldBack.newPets(learner, sound, last))
        .forEach(console::say);
    List<LearnedRow> rows = kept(lesson, read);
    Path target = (out == null ? folder.resolve(LearnedTable.FILE) : out).toAbsolutePath();
    WholeFiles files = new WholeFiles(target.getParent());
    files.put(target.getFileName().toString(), LearnedCsv.text(rows, LearnedTable.FORMAT_VERSION));
    files.write().forEach(written -> console.say("Written: " + written));
    String report = FaultReport.of(faults.all(), true);
    if (!report.isEmpty()) {
      console.warn(report);
    }
    return Ending.of(faults.all(), false).number();
  }

  /** A visit may lie on any day up to today, or up to the day that a person names. */
  private LocalDate latest(LocalDate tomorrow) {
    LocalDate today = tomorrow.minusDays(1);
    return until != null && until.isAfter(today) ? until : today;
  }

  private LocalDate lastDay(VisitLog log, LocalDate today) {
    return until == null
        ? log.visits().stream().map(LoggedVisit::date).max(LocalDate::compareTo).orElse(today)
        : until;
  }

  private static List<LoggedVisit> withoutOdd(VisitLog log, Lesson lesson) {
    List<LoggedVisit> odd = lesson.odd().stream().map(OddVisit::visit).toList();
    return log.visits().stream().filter(visit -> !odd.contains(visit)).toList();
  }

  /** Says which visits were left out and which were cut short. */
  private static void tell(Lesson lesson, VisitLog log, Faults faults) {
    for (OddVisit odd : lesson.odd()) {
      faults.add(
          new Fault(
              "odd-visit",
              Severity.LOOK,
              odd.visit().where().at("done"),
              odd.visit().groomSeconds() / 60 + " min",
              odd.leastMinutes()
                  + " to "
                  + odd.mostMinutes()
                  + " min were expected by all other visits; it is left out",
              "mend the times, or leave it where it was so: one such visit teaches nothing"));
    }
    log.visits().stream()
        .filter(visit -> visit.outcome() == VisitOutcome.CUT_SHORT)
        .forEach(
            visit ->
                faults.add(
                    new Fault(
                        "cut-short",
                        Severity.NOTE,
                        visit.where().at("outcome"),
                        visit.groomSeconds() / 60 + " min",
                        "the whole groom would have taken longer; it is not learned from",
                        "")));
  }

  private static LearnedText.NotUsed notUsed(VisitLog log, Lesson lesson, LocalDate last) {
    List<LoggedVisit> past =
        log.visits().stream().filter(visit -> !visit.date().isAfter(last)).toList();
    return new LearnedText.NotUsed(
        log.setAside(),
        lesson.odd().size(),
        count(past, VisitOutcome.CUT_SHORT),
        count(past, VisitOutcome.NO_SHOW),
        count(past, VisitOutcome.REFUSED),
        log.visits().size() - past.size());
  }

  private static int count(List<LoggedVisit> visits, VisitOutcome outcome) {
    return (int) visits.stream().filter(visit -> visit.outcome() == outcome).count();
  }

  /** What was learned, under the rows that a person wants kept. */
  private static List<LearnedRow> kept(Lesson lesson, ReadBook read) {
    Map<String, LearnedRow> rows = new LinkedHashMap<>();
    lesson.learned().rows().forEach(row -> rows.put(row.kind() + " " + row.what(), row));
    read.tables().learned().rows().stream()
        .filter(LearnedRow::keep)
        .forEach(row -> rows.put(row.kind() + " " + row.what(), row));
    return new ArrayList<>(rows.values());
  }

  private int stopped(Faults faults) {
    surroundings.console().warn(FaultReport.of(faults.all(), true));
    return ExitCode.STOPPED.number();
  }
}
