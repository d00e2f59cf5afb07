package dev.dogleg.cli.command;

import dev.dogleg.audit.WeekAudit;
import dev.dogleg.cli.command.PlanFile.Group;
import dev.dogleg.cli.console.Console;
import dev.dogleg.cli.console.ExitCode;
import dev.dogleg.cli.console.Progress;
import dev.dogleg.cli.export.PlanReader.PlacedRow;
import dev.dogleg.cli.export.WholeFiles;
import dev.dogleg.cli.export.ZonesJson;
import dev.dogleg.cli.export.ZonesMap;
import dev.dogleg.cli.export.ZonesPage;
import dev.dogleg.cli.export.ZonesSheet;
import dev.dogleg.cli.export.ZonesText;
import dev.dogleg.cli.prepare.EarlierPlan;
import dev.dogleg.cli.prepare.FreeWeek;
import dev.dogleg.cli.prepare.LookUps;
import dev.dogleg.cli.prepare.MapInUse;
import dev.dogleg.cli.prepare.ZoneRound;
import dev.dogleg.cli.terms.VanDay;
import dev.dogleg.cli.terms.VanDays;
import dev.dogleg.fault.Fault;
import dev.dogleg.fault.FaultException;
import dev.dogleg.fault.Faults;
import dev.dogleg.fault.Severity;
import dev.dogleg.fault.Where;
import dev.dogleg.plan.zone.ZoneDayPlan;
import dev.dogleg.plan.zone.ZoneDayPlanner;
import dev.dogleg.plan.zone.ZoneWeek;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What {@code zones} does: read book and plan, add up, look for better days, print, draw. */
final class ZonesRun {

  /**
   * What was asked for on the command line.
   *
   * @param choice which book
   * @param plan the planned days, or empty for the book's own
   * @param page where the map goes, or empty for beside the plan
   * @param weeks most weeks planned
   * @param effort limit of each in solver steps
   * @param json whether to print JSON
   */
  record Order(
      BookChoice choice,
      Optional<Path> plan,
      Optional<Path> page,
      int weeks,
      long effort,
      boolean json) {}

  private final Surroundings surroundings;
  private final Console console;
  private final Order order;
  private final Faults faults = new Faults();

  ZonesRun(Surroundings surroundings, Order order) {
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
    if (input.book().week().zones().isEmpty()) {
      faults.add(
          new Fault(
              "no-zones",
              Severity.STOP,
              Where.file("zones.csv"),
              "",
              "at least one zone was expected",
              "a line such as: North bank,mon; thu  with postcodes, districts, minutes from a place"
                  + " or an area of that name in zones.geojson"));
    }
    List<Group> groups = PlanFile.read(file, input, faults);
    if (groups.isEmpty() && !faults.stops()) {
      faults.add(
          new Fault(
              "no-planned-day",
              Severity.STOP,
              Where.file(file.toString()),
              "",
              "a plan with a day was expected",
              "dogleg plan --from DATE --days 5"));
    }
    if (faults.stops()) {
      return stopped();
    }
    try (MapInUse map = new MapInUse(input.map(), surroundings.cache(), console, faults)) {
      return report(input, file, groups, map);
    } catch (FaultException failed) {
      failed.faults().forEach(faults::add);
      return stopped();
    }
  }

  private ExitCode report(BookInput input, Path file, List<Group> groups, MapInUse map)
      throws IOException {
    List<LocalDate> dates = groups.stream().map(Group::date).distinct().sorted().toList();
    List<VanDay> days = VanDays.of(input.book().business(), input.book().week().days(), dates);
    List<PlacedRow> rows = groups.stream().flatMap(group -> group.rows().stream()).toList();
    EarlierPlan plan = EarlierPlan.of(rows);
    Optional<ZoneRound> round =
        ZoneRound.of(
            input.book(), map, new LookUps(map, input.book().clients()), input.rows(), faults);
    if (round.isEmpty()) {
      return stopped();
    }
    Faults preparing = new Faults();
    Optional<FreeWeek> free =
        FreeWeek.of(
            input.book(),
            round.get(),
            plan,
            days,
            input.tables(),
            map,
            input.rows(),
            order.effort(),
            preparing);
    // What else is wrong with the book was said when it was planned.
    preparing.all().stream().filter(fault -> preparing.stops()).forEach(faults::add);
    if (free.isEmpty()) {
      if (!faults.stops()) {
        faults.add(
            new Fault(
                "no-planned-day",
                Severity.STOP,
                Where.file(file.toString()),
                "",
                "a plan with open bookings of the book was expected",
                "dogleg plan plans anew"));
      }
      return stopped();
    }
    ZonesFacts facts;
    try {
      facts = new ZonesFacts(input.book(), round.get(), free.get(), plan);
    } catch (IllegalArgumentException holdsNot) {
      faults.add(PlannedDates.holdsNot(holdsNot));
      return stopped();
    }
    Optional<ZoneDayPlan> answer = facts.problem().map(this::search);
    List<String> findings = new ArrayList<>(facts.findings());
    answer.ifPresent(weeks -> findings.addAll(audited(weeks)));
    if (!findings.isEmpty()) {
      console.warn("Dogleg's own fault: its audit does not pass an answer.");
      findings.forEach(finding -> console.warn("  " + finding));
      return ExitCode.OWN_FAULT;
    }
    ZonesSheet sheet = facts.sheet(answer, PlanFile.named(groups, input), rows);
    ZonesMap drawing = new ZonesDrawing(input.book(), round.get(), free.get(), facts).draw(map);
    Path page = order.page().orElse(file.resolveSibling("zones.html")).toAbsolutePath();
    WholeFiles files = new WholeFiles(page.getParent());
    files.put(
        page.getFileName().toString(),
        ZonesPage.of(sheet, drawing, PlanNotes.attribution(input.map())));
    files.write();
    return shown(input, sheet, page);
  }

  private ZoneDayPlan search(ZoneWeek problem) {
    try (Progress bar = console.progress("Looking for better days")) {
      return ZoneDayPlanner.plan(problem, order.weeks(), weeks -> bar.at(weeks, order.weeks()));
    }
  }

  private ExitCode shown(BookInput input, ZonesSheet sheet, Path page) {
    if (order.json()) {
      console.say(ZonesJson.of(sheet));
    } else {
      ZonesText.lines(sheet).forEach(console::say);
      console.say("");
      console.say("The map: " + page);
      console.say(PlanNotes.attribution(input.map()));
    }
    String report = FaultReport.of(faults.all(), false);
    if (!report.isEmpty()) {
      console.warn(report);
    }
    return Ending.of(faults.all(), false);
  }

  private ExitCode stopped() {
    console.warn(FaultReport.of(faults.all(), true));
    console.warn("Nothing was reported, and nothing was written.");
    return ExitCode.STOPPED;
  }

  private static List<String> audited(ZoneDayPlan answer) {
    List<String> findings = new ArrayList<>();
    for (ZoneDayPlan.Week week : List.of(answer.now(), answer.best(), answer.free())) {
      WeekAudit.check(week.request(), week.plan())
          .forEach(one -> findings.add(one.finding().text() + " [" + one.finding().code() + "]"));
    }
    return findings;
  }
}
