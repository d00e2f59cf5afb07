package dev.dogleg.cli.command;

import dev.dogleg.cli.command.PlanFile.Group;
import dev.dogleg.cli.tell.AtDoor;
import dev.dogleg.cli.told.ToldBook;
import dev.dogleg.cli.told.ToldLog;
import dev.dogleg.cli.told.ToldRow;
import dev.dogleg.cli.told.ToldRow.Told;
import dev.dogleg.fault.Fault;
import dev.dogleg.fault.Severity;
import dev.dogleg.fault.Where;
import dev.dogleg.model.Book;
import dev.dogleg.model.Booking;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Finds promises whose visit is not where it was told. */
final class Moved {
  private final Book book;
  private final ToldBook before;
  private final LocalDate today;

  Moved(Book book, ToldBook before, LocalDate today) {
    this.book = book;
    this.before = before;
    this.today = today;
  }

  /** What was told of the same pets for a day on which they are not booked any more. */
  Optional<ToldRow> of(AtDoor door) {
    return door.bookings().stream()
        .flatMap(id -> before.movedFrom(id, door.date(), today, date -> booked(id, date)).stream())
        .findFirst();
  }

  private boolean booked(String bookingId, LocalDate date) {
    return book.bookings().stream()
        .filter(booking -> booking.status().open())
        .filter(booking -> ToldRow.stem(booking.id()).equals(ToldRow.stem(bookingId)))
        .anyMatch(booking -> booking.dates().filter(span -> span.holds(date)).isPresent());
  }

  /**
   * Promises for days of the plan that it does not keep because the visit is not in it.
   *
   * @param groups its days
   * @return one fault each, to be looked at; none for what was called off or done
   */
  List<Fault> notPlanned(List<Group> groups) {
    List<Fault> faults = new ArrayList<>();
    for (ToldRow row : before.promises(today)) {
      Told told = row.told().orElseThrow();
      boolean day = groups.stream().anyMatch(group -> group.date().equals(told.date()));
      boolean kept =
          groups.stream()
              .filter(group -> group.date().equals(told.date()))
              .flatMap(group -> PlanFile.ids(group).stream())
              .anyMatch(id -> speaksOf(told, id));
      boolean open =
          book.bookings().stream()
              .anyMatch(booking -> speaksOf(told, booking.id()) && isFor(booking, told.date()));
      if (day && !kept && open) {
        faults.add(
            new Fault(
                "told-not-planned",
                Severity.LOOK,
                Where.file(ToldLog.FILE).at("booking"),
                String.join(";", told.bookings()),
                "was told " + told.span() + " on " + told.date() + " and is not in the plan",
                "plan the day again, or call"));
      }
    }
    return faults;
  }

  private static boolean isFor(Booking booking, LocalDate date) {
    return booking.status().open() && booking.dates().filter(span -> span.holds(date)).isPresent();
  }

  private static boolean speaksOf(Told told, String bookingId) {
    return told.bookings().stream()
        .anyMatch(id -> ToldRow.stem(id).equals(ToldRow.stem(bookingId)));
  }
}
