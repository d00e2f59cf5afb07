package dev.dogleg.cli.command;

import dev.dogleg.cli.command.PlanFile.Group;
import dev.dogleg.cli.console.Console;
import dev.dogleg.cli.console.ExitCode;
import dev.dogleg.cli.prepare.Calendar;
import dev.dogleg.cli.prepare.LookUps;
import dev.dogleg.cli.prepare.MapInUse;
import dev.dogleg.cli.prepare.Preparation;
import dev.dogleg.cli.tell.AtDoor;
import dev.dogleg.cli.tell.Telling;
import dev.dogleg.cli.tell.TextsCsv;
import dev.dogleg.cli.tell.TextsPage;
import dev.dogleg.cli.tell.ToTell;
import dev.dogleg.cli.tell.Writer;
import dev.dogleg.cli.told.HandOver;
import dev.dogleg.cli.told.ToldBook;
import dev.dogleg.cli.told.ToldLog;
import dev.dogleg.fault.Fault;
import dev.dogleg.fault.FaultException;
import dev.dogleg.fault.Faults;
import dev.dogleg.fault.Severity;
import dev.dogleg.fault.Where;
import dev.dogleg.model.Booking;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What {@code texts} does: read, finish what was cut short, decide, hand over, print. */
final class TextsRun {

  /**
   * What was asked for on the command line.
   *
   * @param choice which book
   * @param plan the plan, or empty for {@code plan/plan.csv} of the book
   * @param out the file of texts, or empty for {@code texts.csv} beside the plan
   * @param ics folder of calendar files, or empty for none
   * @param date the day to tell of, or empty for the plan's first after today
   * @param now the time it is, or empty for the clock
   * @param onMyWay client or booking that the van has left for, or empty
   * @param left when it left, or empty for now
   * @param answers replies to note, each {@code CLIENT=REPLY}; where there are any, nothing is told
   */
  record Order(
      BookChoice choice,
      Optional<Path> plan,
      Optional<Path> out,
      Optional<Path> ics,
      Optional<LocalDate> date,
      Optional<String> now,
      Optional<String> onMyWay,
      Optional<String> left,
      List<String> answers) {
    Order {
      answers = List.copyOf(answers);
    }
  }

  private final Surroundings surroundings;
  private final Console console;
  private final Order order;
  private final Faults faults = new Faults();

  TextsRun(Surroundings surroundings, Order order) {
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
    TextSetting setting = new TextSetting(input, surroundings.clock(), faults);
    Optional<ZonedDateTime> now = setting.time(order.now(), "--now");
    Optional<ZonedDateTime> left = setting.time(order.left().or(order::now), "--left");
    Optional<Writer> writer = setting.writer();
    if (now.isEmpty() || left.isEmpty() || writer.isEmpty()) {
      return stopped();
    }
    // What is wrong with the log was said when the book was read.
    ToldLog log = ToldLog.read(input.folder(), new Faults());
    HandOver.Finished finished = HandOver.finish(input.folder(), log, now.get().toOffsetDateTime());
    TextsReport report = new TextsReport(console, now.get());
    report.finished(finished);
    if (!order.answers().isEmpty()) {
      return new Answers(input, setting.phrases(), finished.log(), faults)
              .note(order.answers(), now.get().toOffsetDateTime(), console)
          ? end()
          : stopped();
    }
    return tell(input, writer.get(), finished.log(), report, now.get(), left.get());
  }

  private ExitCode tell(
      BookInput input,
      Writer writer,
      ToldLog log,
      TextsReport report,
      ZonedDateTime now,
      ZonedDateTime left)
      throws IOException {
    Path planFile = order.plan().orElse(input.folder().resolve("plan").resolve("plan.csv"));
    List<Group> groups = PlanFile.read(planFile, input, faults);
    if (faults.stops()) {
      return stopped();
    }
    Optional<LocalDate> date = date(groups, now.toLocalDate());
    if (date.isEmpty()) {
      console.say("Nobody to tell: the plan has no day after " + now.toLocalDate() + ".");
      return end();
    }
    ToldBook before = ToldBook.of(log.rows());
    Telling telling = new Telling(before, writer, now, input.texts().eveningSeconds());
    List<AtDoor> doors = new ArrayList<>();
    List<Booking> bookings = PlanFile.named(groups, input);
    Calendar calendar = new Calendar(input.book().business(), date.get());
    try (MapInUse map = new MapInUse(input.map(), surroundings.cache(), console, faults)) {
      LookUps lookUps = new LookUps(map, input.book().clients());
      Preparation preparation =
          Preparation.of(
              input.book(), bookings, calendar, input.tables(), map, lookUps, input.rows(), faults);
      Candidates.withoutDoor(input, bookings, preparation::placed, faults);
      if (faults.stops()) {
        return stopped();
      }
      DoorTimes times =
          new DoorTimes(
              input, PlanDays.of(groups, input, preparation, map, lookUps, faults), faults);
      if (order.onMyWay().isEmpty() || order.ics().isPresent()) {
        groups.stream()
            .filter(group -> !group.date().isBefore(now.toLocalDate()))
            .forEach(group -> doors.addAll(times.evening(group)));
      }
      if (order.onMyWay().isPresent()) {
        if (!onMyWay(groups, date.get(), times, telling, left)) {
          return stopped();
        }
      } else {
        Moved moved = new Moved(input.book(), before, now.toLocalDate());
        doors.stream()
            .filter(door -> door.date().equals(date.get()) || door.toBeAsked())
            .forEach(door -> telling.evening(door, moved.of(door)));
        moved.notPlanned(groups).forEach(faults::add);
      }
    } catch (FaultException failed) {
      failed.faults().forEach(faults::add);
      return stopped();
    }
    report.told(telling, date.get());
    Path file = order.out().orElse(planFile.resolveSibling("texts.csv"));
    ToldLog longer = handOver(input, log, before.nextRun(), telling, file, now, report);
    if (order.ics().isPresent()) {
      CalendarFiles files = new CalendarFiles(input, writer, ToldBook.of(longer.rows()));
      report.written(files.write(order.ics().get(), doors, now.toInstant()));
    }
    console.say(PlanNotes.attribution(input.map()));
    return end(telling.silent().stream().anyMatch(one -> one.look()));
  }

  /** The day to tell of: the one named, today for a door on the way, else the first after today. */
  private Optional<LocalDate> date(List<Group> groups, LocalDate today) {
    if (order.onMyWay().isPresent()) {
      return Optional.of(today);
    }
    return order
        .date()
        .or(
            () ->
                groups.stream()
                    .map(Group::date)
                    .filter(day -> day.isAfter(today))
                    .min(LocalDate::compareTo));
  }

  private boolean onMyWay(
      List<Group> groups, LocalDate today, DoorTimes times, Telling telling, ZonedDateTime left) {
    String who = order.onMyWay().orElseThrow().strip();
    List<AtDoor> found =
        groups.stream()
            .filter(group -> group.date().equals(today))
            .flatMap(group -> times.onMyWay(group, door -> isNamed(door, who), left).stream())
            .toList();
    if (found.size() != 1) {
      faults.add(
          new Fault(
              "unknown-door",
              Severity.STOP,
              Where.file("--on-my-way"),
              who,
              "a client or booking of one door of " + today + " was expected",
              found.isEmpty()
                  ? "is today in the plan?"
                  : "several doors are meant: name a booking"));
      return false;
    }
    telling.onMyWay(found.get(0));
    return true;
  }

  private static boolean isNamed(AtDoor door, String who) {
    return door.client().name().equalsIgnoreCase(who)
        || door.client().id().equals(who)
        || door.bookings().contains(who);
  }

  private ToldLog handOver(
      BookInput input,
      ToldLog log,
      int run,
      Telling telling,
      Path file,
      ZonedDateTime now,
      TextsReport report)
      throws IOException {
    List<ToTell> some = telling.toTell();
    if (some.isEmpty()) {
      return log;
    }
    OffsetDateTime at = now.toOffsetDateTime();
    HandOver handOver = new HandOver(input.folder(), log, file, run);
    handOver.stage(TextsCsv.text(some), TextsPage.text(some));
    handOver.prepare(
        some.stream().map(one -> one.door().client().id()).toList(),
        some.stream().map(ToTell::told).toList(),
        at);
    report.written(handOver.move());
    return handOver.mark(at);
  }

  private ExitCode end() {
    return end(false);
  }

  private ExitCode end(boolean look) {
    String report = FaultReport.of(faults.all(), false);
    if (!report.isEmpty()) {
      console.warn(report);
    }
    return Ending.of(faults.all(), look);
  }

  private ExitCode stopped() {
    console.warn(FaultReport.of(faults.all(), true));
    console.warn("Nobody is told anything, and nothing was written.");
    return ExitCode.STOPPED;
  }
}
