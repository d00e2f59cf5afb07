package dev.dogleg.cli.command;

import dev.dogleg.cli.prepare.Calendar;
import dev.dogleg.fault.Fault;
import dev.dogleg.fault.Faults;
import dev.dogleg.fault.Severity;
import dev.dogleg.fault.Where;
import dev.dogleg.model.Booking;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** Picks the bookings that a run of days may serve. */
final class Candidates {
  private Candidates() {}

  /**
   * Bookings that some of the days may serve.
   *
   * @param input the book
   * @param calendar which booking belongs to which day
   * @param dates the days
   * @param faults takes open bookings whose every day falls into the run and is not worked
   * @return open bookings in the book's order
   */
  static List<Booking> of(
      BookInput input, Calendar calendar, List<LocalDate> dates, Faults faults) {
    List<Booking> candidates = new ArrayList<>();
    LocalDate last = dates.get(dates.size() - 1);
    for (Booking booking : input.book().bookings()) {
      if (!booking.status().open()) {
        continue;
      }
      if (dates.stream().anyMatch(date -> calendar.possible(booking, date))) {
        candidates.add(booking);
      } else if (!calendar.span(booking).to().isAfter(last)
          && !calendar.span(booking).from().isBefore(dates.get(0))) {
        faults.add(notWorked(input, calendar, booking));
      }
    }
    return candidates;
  }

  /**
   * Says of each booking that it goes with its client, who could not be placed.
   *
   * @param input the book
   * @param bookings bookings of the run
   * @param placed whether a client was placed, by id
   * @param faults takes one fault a booking whose client stands in another row
   */
  static void withoutDoor(
      BookInput input, List<Booking> bookings, Predicate<String> placed, Faults faults) {
    for (Booking booking : bookings) {
      Where row = input.rows().booking(booking.id());
      Where client = input.rows().client(booking.clientId());
      boolean sameRow = row.file().equals(client.file()) && row.row() == client.row();
      if (!placed.test(booking.clientId()) && !sameRow) {
        String name = input.book().clientsById().get(booking.clientId()).name();
        faults.add(
            new Fault(
                "client-set-aside",
                Severity.ASIDE,
                row.at("client"),
                name,
                "the door of this client was not found",
                "mend " + Where.row(client.file(), client.row())));
      }
    }
  }

  private static Fault notWorked(BookInput input, Calendar calendar, Booking booking) {
    return new Fault(
        "no-working-day",
        booking.told().isPresent() ? Severity.STOP : Severity.ASIDE,
        input.rows().booking(booking.id()).at("date"),
        calendar.span(booking).toString(),
        "a day on which somebody works and that the column when allows was expected",
        "give it another date, or change hours or days_off in the card");
  }
}
