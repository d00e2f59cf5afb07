package dev.dogleg.cli.command;

import dev.dogleg.cli.console.Console;
import dev.dogleg.cli.console.ExitCode;
import dev.dogleg.cli.export.DayText;
import dev.dogleg.cli.export.NoRoomCsv;
import dev.dogleg.cli.export.PlanRows;
import dev.dogleg.cli.export.PlannedDay;
import dev.dogleg.cli.prepare.Calendar;
import dev.dogleg.cli.prepare.LookUps;
import dev.dogleg.cli.prepare.MapInUse;
import dev.dogleg.cli.prepare.Preparation;
import dev.dogleg.fault.FaultException;
import dev.dogleg.fault.Faults;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.model.Book;
import dev.dogleg.model.Booking;
import dev.dogleg.model.BookingTerms;
import dev.dogleg.model.Groomer;
import dev.dogleg.model.WeekBook;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;

/** What {@code plan} and {@code demo} do: read, prepare, plan, audit, write, print. */
final class PlanRun {

  /**
   * What was asked for on the command line.
   *
   * @param choice which book
   * @param from first day, or empty for that of the earliest open booking
   * @param days calendar days from it, 1 or more
   * @param out where the files go, or empty for the folder {@code plan} of the book
   * @param seed seed of every random choice
   * @param effort limit in solver steps, or empty for the usual one
   * @param fresh whether an earlier plan is passed over
   * @param strict whether anything that needs a look stops the run
   */
  record Order(
      BookChoice choice,
      Optional<LocalDate> from,
      int days,
      Optional<Path> out,
      long seed,
      OptionalLong effort,
      boolean fresh,
      boolean strict) {
    /** {@return limit in solver steps for a day} */
    long dayEffort() {
      return effort.orElse(DayRequest.USUAL_EFFORT);
    }
  }

  private final Surroundings surroundings;
  private final Console console;
  private final Order order;
  private final WeekPlanning planning;
  private final Faults faults = new Faults();

  PlanRun(Surroundings surroundings, Order order, WeekPlanning planning) {
    this.surroundings = surroundings;
    this.planning = planning;
    this.console = surroundings.console();
    this.order = order;
  }

  /** Runs. */
  ExitCode run() throws IOException {
    Optional<BookInput> read = BookInput.read(order.choice(), order.strict(), faults);
    if (read.isEmpty() || Ending.stops(faults.all(), order.strict())) {
      return stopped();
    }
    BookInput input = read.get();
    LocalDate tomorrow = surroundings.tomorrow(input.book().business().zone());
    Optional<LocalDate> first =
        order.from().or(() -> Calendar.earliest(input.book().bookings(), tomorrow));
    if (first.isEmpty()) {
      console.say("Nothing to plan: no open booking in the book.");
      return Ending.of(faults.all(), false);
    }
    List<LocalDate> dates = first.get().datesUntil(first.get().plusDays(order.days())).toList();
    if (order.days() > 1 || saysMore(input)) {
      Optional<ExitCode> end = new WeekRun(surroundings, order, input, faults, planning).run(dates);
      return end.isPresent() ? end.get() : stopped();
    }
    Calendar calendar = new Calendar(input.book().business(), order.from().orElse(tomorrow));
    List<Booking> bookings = Candidates.of(input, calendar, dates, faults);
    try (MapInUse map = new MapInUse(input.map(), surroundings.cache(), console, faults)) {
      Preparation preparation =
          Preparation.of(
              input.book(),
              bookings,
              calendar,
              input.tables(),
              map,
              new LookUps(map, input.book().clients()),
              input.rows(),
              faults);
      Candidates.withoutDoor(input, bookings, preparation::placed, faults);
      if (Ending.stops(faults.all(), order.strict())) {
        return stopped();
      }
      return plan(input, preparation, calendar, bookings, dates.get(0));
    } catch (FaultException failed) {
      failed.faults().forEach(faults::add);
      return stopped();
    }
  }

  /** Whether the book says more than one groomer's day alone can keep. */
  private static boolean saysMore(BookInput input) {
    Book book = input.book();
    boolean tanks =
        book.business().vans().stream()
            .anyMatch(van -> van.freshLitres().isPresent() || van.greyLitres().isPresent());
    boolean wishes = book.bookings().stream().anyMatch(b -> !b.terms().equals(BookingTerms.NONE));
    return book.business().groomers().size() > 1
        || tanks
        || wishes
        || book.business().week().balance().isPresent()
        || !book.week().equals(WeekBook.NONE);
  }

  private ExitCode plan(
      BookInput input,
      Preparation preparation,
      Calendar calendar,
      List<Booking> bookings,
      LocalDate date)
      throws IOException {
    PlanOutput output = new PlanOutput(console, order, input, faults);
    List<Groomer> groomers = input.book().business().workingOn(date);
    List<Booking> open =
        bookings.stream()
            .filter(booking -> preparation.placed(booking.clientId()))
            .filter(booking -> calendar.possible(booking, date))
            .toList();
    if (groomers.isEmpty() || open.isEmpty()) {
      return output.nothing("no open booking", List.of(date));
    }
    DayRun run = DayRun.plan(preparation, calendar, groomers.get(0), date, open, order, faults);
    if (Ending.stops(faults.all(), order.strict())) {
      return stopped();
    }
    if (!run.findings().isEmpty()) {
      return output.ownFault(
          run.findings().stream().map(one -> one.text() + " [" + one.code() + "]").toList());
    }
    PlannedDay day = run.day();
    String noRoom = day.leftOut().isEmpty() ? null : NoRoomCsv.text(List.of(day));
    List<Path> written = output.write(PlanRows.of(day), noRoom);
    console.say(DayText.of(day).stripTrailing());
    return output.end(written, run.bookedLeftOut());
  }

  private ExitCode stopped() {
    console.warn(FaultReport.of(faults.all(), true));
    console.warn(
        "Nothing was planned and nothing was written" + (order.strict() ? " (--strict)." : "."));
    return ExitCode.STOPPED;
  }
}
