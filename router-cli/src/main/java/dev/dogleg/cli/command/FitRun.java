package dev.dogleg.cli.command;

import dev.dogleg.audit.DayAudit;
import dev.dogleg.audit.WeekAudit;
import dev.dogleg.cli.command.Newcomers.Described;
import dev.dogleg.cli.console.Console;
import dev.dogleg.cli.console.ExitCode;
import dev.dogleg.cli.export.FitJson;
import dev.dogleg.cli.export.FitSheet;
import dev.dogleg.cli.export.FitText;
import dev.dogleg.cli.prepare.MapAhead;
import dev.dogleg.cli.prepare.MapInUse;
import dev.dogleg.fault.FaultException;
import dev.dogleg.fault.Faults;
import dev.dogleg.fit.FitAnswer;
import dev.dogleg.fit.FitAnswer.Verdict;
import dev.dogleg.fit.FitQuestion;
import dev.dogleg.fit.FitQuestion.OtherDays;
import dev.dogleg.fit.FitWeek;
import dev.dogleg.fit.Offer;
import dev.dogleg.itinerary.Finding;
import dev.dogleg.itinerary.WeekBooking;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What {@code fit} does: read book, plan and newcomers, ask about each, print. Writes nothing. */
final class FitRun {

  /**
   * What was asked for on the command line.
   *
   * @param choice which book
   * @param plan the planned days, or empty for {@code plan/plan.csv} of the book
   * @param described the newcomer of the options, or empty
   * @param newcomers file of newcomers, or empty
   * @param top so many offers are shown
   * @param otherDays whether tier B is always asked
   * @param effort limit of tier B
   * @param json whether to print JSON
   * @param reasons whether a day without room says why even where another has some
   */
  record Order(
      BookChoice choice,
      Optional<Path> plan,
      Optional<Described> described,
      Optional<Path> newcomers,
      int top,
      boolean otherDays,
      long effort,
      boolean json,
      boolean reasons) {}

  private final Surroundings surroundings;
  private final Console console;
  private final Order order;
  private final Faults faults = new Faults();

  FitRun(Surroundings surroundings, Order order) {
    this.surroundings = surroundings;
    this.console = surroundings.console();
    this.order = order;
  }

  /** Runs. */
  ExitCode run() throws IOException {
    Optional<MapAhead> ahead = BookInput.ahead(order.choice(), surroundings.cache());
    try {
      return run(ahead);
    } finally {
      ahead.ifPresent(MapAhead::close);
    }
  }

  private ExitCode run(Optional<MapAhead> ahead) throws IOException {
    Optional<PlannedBook> read =
        PlannedBook.read(order.choice(), order.plan(), surroundings.clock(), faults);
    if (read.isEmpty()) {
      return stopped();
    }
    PlannedBook book = read.get();
    BookInput input = book.input();
    Optional<Newcomers> newcomers =
        Newcomers.of(order.described(), order.newcomers(), input, faults);
    if (newcomers.isEmpty() || faults.stops()) {
      return stopped();
    }
    try (MapInUse map = new MapInUse(input.map(), surroundings.cache(), console, faults, ahead)) {
      return asked(input, newcomers.get(), book.planned(), map);
    } catch (FaultException failed) {
      failed.faults().forEach(faults::add);
      return stopped();
    }
  }

  private ExitCode asked(BookInput input, Newcomers newcomers, PlannedDates planned, MapInUse map) {
    Optional<AskedWeek> asked =
        AskedWeek.of(input, newcomers, planned, map, newcomers::concerns, faults);
    if (asked.isEmpty()) {
      return stopped();
    }
    FitWeek fit = asked.get().fit();
    FitSheets sheets =
        new FitSheets(newcomers.joined(), asked.get().week(), fit, planned.earlier());
    List<FitSheet> answers = answers(asked.get().possible(), fit, sheets);
    List<String> findings = findings(answers);
    if (!findings.isEmpty()) {
      console.warn("Dogleg's own fault: its audit does not pass an answer.");
      findings.forEach(finding -> console.warn("  " + finding));
      return ExitCode.OWN_FAULT;
    }
    return shown(input, answers);
  }

  /** Asks one after the other, each as if nobody else had called. */
  private List<FitSheet> answers(List<WeekBooking> newcomers, FitWeek fit, FitSheets sheets) {
    List<FitSheet> answers = new ArrayList<>();
    FitWeek week = fit;
    boolean ready = false;
    for (WeekBooking newcomer : newcomers) {
      FitQuestion question =
          new FitQuestion(
              newcomer,
              List.of(),
              order.top(),
              order.otherDays() ? OtherDays.ALWAYS : OtherDays.WHERE_NO_DAY_FITS,
              order.effort());
      FitAnswer answer = week.ask(question);
      answers.add(sheets.of(newcomer, order.reasons() ? reasoned(week, question, answer) : answer));
      // Who needs other days seldom calls alone: the next one finds the week bounded already.
      if (!ready && answer.otherDays().isPresent() && answers.size() < newcomers.size()) {
        week = week.readyForOtherDays(order.effort());
        ready = true;
      }
    }
    return answers;
  }

  private static FitAnswer reasoned(FitWeek week, FitQuestion question, FitAnswer answer) {
    return answer.saying(
        answer.noDays().stream()
            .map(no -> no.proven() ? week.why(question, no.day()) : no)
            .toList());
  }

  /** What the independent audit says of every day and week offered: nothing, or none is shown. */
  private static List<String> findings(List<FitSheet> sheets) {
    List<Finding> findings = new ArrayList<>();
    for (FitSheet sheet : sheets) {
      for (Offer offer : sheet.answer().offers()) {
        findings.addAll(DayAudit.check(offer.request(), offer.after()));
      }
      sheet
          .answer()
          .otherDays()
          .ifPresent(
              week ->
                  WeekAudit.check(week.request(), week.plan())
                      .forEach(one -> findings.add(one.finding())));
    }
    return findings.stream().map(one -> one.text() + " [" + one.code() + "]").toList();
  }

  private ExitCode shown(BookInput input, List<FitSheet> answers) {
    if (order.json()) {
      console.say(FitJson.of(answers));
    } else {
      for (FitSheet sheet : answers) {
        FitText.lines(sheet).forEach(console::say);
        console.say("");
      }
      console.say(PlanNotes.attribution(input.map()));
      console.say("Nothing was written: whoever is taken goes into the book.");
    }
    String report = FaultReport.of(faults.all(), false);
    if (!report.isEmpty()) {
      console.warn(report);
    }
    return ending(answers);
  }

  /** The worst of all answers: not found before proven before yes. */
  private static ExitCode ending(List<FitSheet> answers) {
    List<Verdict> verdicts =
        answers.stream().map(FitSheet::answer).map(FitAnswer::verdict).toList();
    if (verdicts.contains(Verdict.NOT_FOUND)) {
      return ExitCode.NOT_FOUND;
    }
    return verdicts.contains(Verdict.NEVER_FITS) ? ExitCode.NO_FIT : ExitCode.DONE;
  }

  private ExitCode stopped() {
    console.warn(FaultReport.of(faults.all(), true));
    console.warn("Nothing was answered, and nothing was written.");
    return ExitCode.STOPPED;
  }
}
