package dev.dogleg.cli.command;

import dev.dogleg.audit.DayAudit;
import dev.dogleg.cli.command.LateCommand.WrongUsage;
import dev.dogleg.cli.command.PlanFile.Group;
import dev.dogleg.cli.console.Console;
import dev.dogleg.cli.console.ExitCode;
import dev.dogleg.cli.export.LateRows;
import dev.dogleg.cli.export.LateSheet;
import dev.dogleg.cli.export.LateText;
import dev.dogleg.cli.export.PlanCsv;
import dev.dogleg.cli.export.PlanReader;
import dev.dogleg.cli.export.PlanReader.PlacedRow;
import dev.dogleg.cli.export.PlanRow;
import dev.dogleg.cli.export.WholeFiles;
import dev.dogleg.cli.file.TextFile;
import dev.dogleg.cli.prepare.LateDay;
import dev.dogleg.cli.prepare.LookUps;
import dev.dogleg.cli.prepare.MapInUse;
import dev.dogleg.cli.terms.ServedSeconds;
import dev.dogleg.cli.terms.VanDay;
import dev.dogleg.cli.terms.VanDays;
import dev.dogleg.cli.told.ToldBook;
import dev.dogleg.cli.told.ToldLog;
import dev.dogleg.fault.FaultException;
import dev.dogleg.fault.Faults;
import dev.dogleg.itinerary.Finding;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.plan.late.LateAnswer;
import dev.dogleg.plan.late.LateChoice;
import dev.dogleg.plan.late.LatePlanner;
import dev.dogleg.plan.late.Lateness;
import dev.dogleg.plan.late.RestOfDay;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;

/** What {@code late} does: read the plan, solve what is left of it, audit, print, maybe write. */
final class LateRun {

  /**
   * What was asked for on the command line.
   *
   * @param choice which book
   * @param plan the plan, or empty for the book's own
   * @param day which day, or empty for today
   * @param groomer whose, or empty for the only one
   * @param now what time it is, or empty for the clock's
   * @param done doors made, in words
   * @param ready when the last of them will be ready, or empty: it is
   * @param cancel doors that will not be made, in words
   * @param at where the van is, or empty for the last door
   * @param breakTaken whether the break was taken, or empty: as the plan has it
   * @param choose the choice to write, or empty
   */
  record Order(
      BookChoice choice,
      Optional<Path> plan,
      Optional<LocalDate> day,
      Optional<String> groomer,
      Optional<LocalTime> now,
      String done,
      Optional<LocalTime> ready,
      String cancel,
      Optional<String> at,
      Optional<Boolean> breakTaken,
      OptionalInt choose) {}

  private final Surroundings surroundings;
  private final Console console;
  private final Order order;
  private final Faults faults = new Faults();

  LateRun(Surroundings surroundings, Order order) {
    this.surroundings = surroundings;
    this.console = surroundings.console();
    this.order = order;
  }

  /** Runs. */
  ExitCode run() throws IOException {
    Optional<BookInput> read = BookInput.read(order.choice(), false, faults);
    if (read.isEmpty() || faults.stops()) {
      return stopped();
    }
    BookInput input = read.get();
    Path file = order.plan().orElse(input.folder().resolve("plan").resolve("plan.csv"));
    LocalDateTime clock =
        LocalDateTime.now(surroundings.clock().withZone(input.book().business().zone()));
    List<Group> groups = PlanFile.read(file, input, faults);
    if (faults.stops()) {
      return stopped();
    }
    Group group = new LateGroup(order.day(), order.groomer(), clock.toLocalDate()).of(groups);
    LatePlan plan = LatePlan.of(group.rows(), order.done(), order.cancel());
    VanDay day = vanDay(input, group);
    LateStart start = LateStart.of(input.book(), input.read().corrections(), plan, day, order.at());
    try (MapInUse map = new MapInUse(input.map(), surroundings.cache(), console, faults)) {
      LateDay late =
          LateDay.of(
              input.book(),
              start.from(day),
              plan.doors().stream().map(LatePlan::bookings).toList(),
              input.tables(),
              map,
              new LookUps(map, input.book().clients()),
              input.rows());
      // What is wrong with the log was said when the book was read.
      ToldBook told = ToldBook.of(ToldLog.read(input.folder(), new Faults()).rows());
      LateFacts facts = new LateFacts(input.book(), plan, late, told, faults);
      if (faults.stops()) {
        return stopped();
      }
      RestOfDay rest = facts.rest(now(group, clock), order.ready(), order.breakTaken());
      LateAnswer answer = LatePlanner.plan(rest);
      List<String> findings = findings(answer);
      if (!findings.isEmpty()) {
        console.warn("Dogleg's own fault: its audit does not pass the rest of the day.");
        findings.forEach(finding -> console.warn("  " + finding));
        return ExitCode.OWN_FAULT;
      }
      LateSheet sheet = facts.sheet(rest, answer, standing(start));
      return shown(input, file, plan, group, facts, sheet, rest.breakTaken());
    } catch (FaultException failed) {
      failed.faults().forEach(faults::add);
      return stopped();
    }
  }

  private String standing(LateStart start) {
    return start.words()
        + order.ready().map(at -> ", ready at " + at.truncatedTo(ChronoUnit.MINUTES)).orElse("");
  }

  private static VanDay vanDay(BookInput input, Group group) {
    return VanDays.of(input.book().business(), input.book().week().days(), List.of(group.date()))
        .stream()
        .filter(day -> day.groomer().id().equals(group.groomer().id()))
        .findFirst()
        .orElseThrow(
            () -> new WrongUsage(group.date() + " is not worked by " + group.groomer().name()));
  }

  private LocalTime now(Group group, LocalDateTime clock) {
    if (order.now().isEmpty() && !group.date().equals(clock.toLocalDate())) {
      throw new WrongUsage("the plan is for " + group.date() + ": say --now");
    }
    return order.now().orElseGet(() -> clock.toLocalTime().truncatedTo(ChronoUnit.MINUTES));
  }

  /** What the independent audit says of every choice: nothing, or none of them is shown. */
  private static List<String> findings(LateAnswer answer) {
    List<String> findings = new ArrayList<>();
    for (LateChoice choice : answer.choices()) {
      for (Finding finding : DayAudit.check(choice.request(), choice.plan())) {
        findings.add(choice.kind() + ": " + finding.text() + " [" + finding.code() + "]");
      }
    }
    return findings;
  }

  private ExitCode shown(
      BookInput input,
      Path file,
      LatePlan plan,
      Group group,
      LateFacts facts,
      LateSheet sheet,
      boolean breakTaken)
      throws IOException {
    List<LateChoice> choices = sheet.answer().choices();
    int chosen = order.choose().orElse(0);
    if (chosen > choices.size()) {
      throw new WrongUsage("there are " + choices.size() + " choices, not " + chosen);
    }
    LateText.of(sheet).forEach(console::say);
    console.say("");
    console.say(PlanNotes.attribution(input.map()));
    if (chosen == 0) {
      console.say("Nothing was written; --choose 1 writes the first choice into the plan.");
    } else {
      LateChoice choice = choices.get(chosen - 1);
      List<PlanRow> rows =
          LateRows.of(plan.made(breakTaken), facts.notes(), sheet, chosen, minutes(choice));
      write(file, group, rows).forEach(one -> console.say("Written: " + one));
    }
    String report = FaultReport.of(faults.all(), false);
    if (!report.isEmpty()) {
      console.warn(report);
    }
    return Ending.of(faults.all(), breaks(sheet.answer(), choices.get(Math.max(0, chosen - 1))));
  }

  /** Whether somebody must be told or asked. */
  private static boolean breaks(LateAnswer answer, LateChoice choice) {
    Lateness lateness = choice.lateness();
    return lateness.leftOut() > 0
        || lateness.toldBroken() > 0
        || lateness.wishesBroken() > 0
        || choice.moved().isPresent()
        || !answer.rulesGone().isEmpty();
  }

  private static Map<String, Integer> minutes(LateChoice choice) {
    Map<String, Integer> asked =
        choice.request().visits().stream()
            .collect(Collectors.toMap(Visit::id, Visit::serviceSeconds));
    return ServedSeconds.of(choice.order(), asked, choice.request().terms().rules());
  }

  /** The plan again, with the day's rows replaced and everything else as it stands. */
  private static List<Path> write(Path file, Group group, List<PlanRow> day) throws IOException {
    Faults said = new Faults();
    String text = TextFile.read(file, file.toString(), said).map(TextFile::text).orElseThrow();
    Set<PlacedRow> replaced = Set.copyOf(group.rows());
    List<PlanRow> rows = new ArrayList<>();
    boolean put = false;
    for (PlacedRow row : PlanReader.read(text, file.toString(), said)) {
      if (!replaced.contains(row)) {
        rows.add(row.row());
      } else if (!put) {
        rows.addAll(day);
        put = true;
      }
    }
    Path whole = file.toAbsolutePath();
    WholeFiles files = new WholeFiles(whole.getParent());
    files.put(whole.getFileName().toString(), PlanCsv.text(rows));
    return files.write();
  }

  private ExitCode stopped() {
    console.warn(FaultReport.of(faults.all(), true));
    console.warn("Nothing was solved and nothing was written.");
    return ExitCode.STOPPED;
  }
}
