package dev.dogleg.cli.command;

import dev.dogleg.audit.CertificateAudit;
import dev.dogleg.audit.ProofAudit;
import dev.dogleg.audit.WeekAudit;
import dev.dogleg.audit.WeekFinding;
import dev.dogleg.cli.console.Console;
import dev.dogleg.cli.console.ExitCode;
import dev.dogleg.cli.console.Progress;
import dev.dogleg.cli.export.DayText;
import dev.dogleg.cli.export.NoRoomCsv;
import dev.dogleg.cli.export.PlanRow;
import dev.dogleg.cli.export.PlanRows;
import dev.dogleg.cli.export.PlannedDay;
import dev.dogleg.cli.export.ProofText;
import dev.dogleg.cli.export.WeekLeftOut;
import dev.dogleg.cli.export.WeekText;
import dev.dogleg.cli.prepare.EarlierPlan;
import dev.dogleg.cli.prepare.MapInUse;
import dev.dogleg.cli.prepare.PreparedWeek;
import dev.dogleg.cli.prepare.WeekPreparation;
import dev.dogleg.cli.terms.VanDay;
import dev.dogleg.cli.terms.VanDays;
import dev.dogleg.fault.Fault;
import dev.dogleg.fault.FaultException;
import dev.dogleg.fault.Faults;
import dev.dogleg.fault.Severity;
import dev.dogleg.fault.Where;
import dev.dogleg.itinerary.Proof;
import dev.dogleg.itinerary.WeekPlan;
import dev.dogleg.model.Booking;
import dev.dogleg.plan.week.WeekPlanner;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Plans several days together: prepare, plan, audit, write, print. */
final class WeekRun {
  private final Surroundings surroundings;
  private final Console console;
  private final PlanRun.Order order;
  private final BookInput input;
  private final Faults faults;
  private final PlanOutput output;
  private final WeekPlanning planning;

  WeekRun(
      Surroundings surroundings,
      PlanRun.Order order,
      BookInput input,
      Faults faults,
      WeekPlanning planning) {
    this.surroundings = surroundings;
    this.planning = planning;
    this.console = surroundings.console();
    this.order = order;
    this.input = input;
    this.faults = faults;
    output = new PlanOutput(console, order, input, faults);
  }

  /**
   * Runs.
   *
   * @param dates days of the run, in order
   * @return how it ended; empty where a fault stops the run
   */
  Optional<ExitCode> run(List<LocalDate> dates) throws IOException {
    List<VanDay> days = VanDays.of(input.book().business(), input.book().week().days(), dates);
    vanTwice(days);
    EarlierPlan earlier = new EarlierPlanFile(output.folder(), order.fresh(), faults).read();
    List<Booking> bookings =
        WeekPreparation.candidates(input.book(), days, dates, earlier, input.rows(), faults);
    boolean errands =
        input.book().week().errands().stream()
            .anyMatch(errand -> dates.stream().anyMatch(errand.dates()::holds));
    if (days.isEmpty() || (bookings.isEmpty() && !errands)) {
      if (Ending.stops(faults.all(), order.strict())) {
        return Optional.empty();
      }
      return Optional.of(
          output.nothing(days.isEmpty() ? "nobody works" : "no open booking", dates));
    }
    try (MapInUse map = new MapInUse(input.map(), surroundings.cache(), console, faults)) {
      Optional<PreparedWeek> prepared =
          WeekPreparation.of(
              input.book(),
              bookings,
              days,
              earlier,
              input.tables(),
              map,
              input.rows(),
              order.seed(),
              order.effort().orElse(WeekPlanner.USUAL_EFFORT),
              faults);
      Candidates.withoutDoor(input, bookings, placedBy(prepared), faults);
      if (prepared.isEmpty() || Ending.stops(faults.all(), order.strict())) {
        return Optional.empty();
      }
      return Optional.of(plan(prepared.get()));
    } catch (FaultException failed) {
      failed.faults().forEach(faults::add);
      return Optional.empty();
    }
  }

  /** Two groomers cannot drive one van: each day is planned as if they could, and it is said. */
  private void vanTwice(List<VanDay> days) {
    Set<String> seen = new HashSet<>();
    Set<String> said = new HashSet<>();
    for (VanDay day : days) {
      if (!seen.add(day.day().date() + " " + day.van().id()) && said.add(day.van().id())) {
        faults.add(
            new Fault(
                "van-twice",
                Severity.LOOK,
                Where.file(input.card()).at("groomers." + day.groomer().id() + ".van"),
                day.van().name(),
                "a van of its own was expected; on "
                    + day.day().date()
                    + " another groomer drives this one too",
                "name a van for each groomer, or give one of them the day off"));
      }
    }
  }

  private static java.util.function.Predicate<String> placedBy(Optional<PreparedWeek> week) {
    return client ->
        week.isEmpty()
            || week.get().bookings().values().stream()
                .flatMap(List::stream)
                .anyMatch(booking -> booking.clientId().equals(client));
  }

  private ExitCode plan(PreparedWeek week) throws IOException {
    WeekPlanner.Solved solved;
    try (Interruption interruption = new Interruption(console)) {
      try (Progress bar = console.progress(task(week))) {
        solved = planning.certified(week.request(), new WeekBar(bar, console), interruption::asked);
      }
      WeekPlan plan = solved.plan();
      ProofAudit proof =
          CertificateAudit.check(
              week.request(), plan, solved.certificate(), CertificateAudit.USUAL_WORK);
      List<WeekFinding> findings = new ArrayList<>(WeekAudit.check(week.request(), plan));
      findings.addAll(proof.findings());
      if (!findings.isEmpty()) {
        return output.ownFault(findings.stream().map(one -> text(week, one)).toList());
      }
      return finish(new PlannedWeek(week, plan, input.book(), order.seed()), proof);
    }
  }

  private static String text(PreparedWeek week, WeekFinding one) {
    String day = one.day() < 0 ? "" : week.days().get(one.day()).title() + ": ";
    return day + one.finding().text() + " [" + one.finding().code() + "]";
  }

  private ExitCode finish(PlannedWeek planned, ProofAudit proof) throws IOException {
    List<PlannedDay> days = planned.days();
    List<WeekLeftOut> left = planned.leftOut();
    List<PlanRow> rows = new ArrayList<>();
    days.forEach(day -> rows.addAll(PlanRows.of(day)));
    List<Path> written = output.write(rows, left.isEmpty() ? null : NoRoomCsv.week(left, days));
    for (PlannedDay day : days) {
      if (days.size() == 1) {
        console.say(DayText.of(day).stripTrailing());
      } else if (day.doors() > 0) {
        console.say(DayText.of(day));
      }
    }
    console.say(
        days.size() == 1
            ? WeekText.alone(days, left, planned.proof())
            : WeekText.of(days, planned.values(), left, planned.proof()));
    ProofText.rechecked(proof).forEach(console::say);
    if (days.size() > 1 && !planned.stability().isEmpty()) {
      console.say(planned.stability());
    }
    if (planned.plan().proof().kind() == Proof.Kind.CLOCK_LIMIT) {
      console.say("Stopped by hand: this is the best plan found by then, checked as always.");
    }
    return output.end(written, left.stream().anyMatch(WeekLeftOut::agreed));
  }

  private static String task(PreparedWeek week) {
    int days = week.days().size();
    return days == 1 ? "Planning " + week.days().get(0).title() : "Planning " + days + " days";
  }
}
