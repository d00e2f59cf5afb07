package dev.dogleg.cli.csv;

import dev.dogleg.cli.told.Occasion;
import dev.dogleg.cli.told.ToldBook;
import dev.dogleg.cli.told.ToldRow.Told;
import dev.dogleg.cli.words.DateGrammar;
import dev.dogleg.cli.words.DateOrder;
import dev.dogleg.fault.Severity;
import dev.dogleg.model.Booking;
import dev.dogleg.model.BookingTerms;
import dev.dogleg.model.DateSpan;
import dev.dogleg.model.Moves;
import dev.dogleg.model.ToldTime;
import dev.dogleg.model.WallSpan;
import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;

/**
 * Lets what owners were told bind a book's bookings, as if it stood in the column {@code told}.
 *
 * <p>Where both the log and the cell tell a time and one lies in the other, the narrower binds.
 * Where neither does, the cell binds, since a person wrote it later or knows better, and it is
 * said. That the van is late was told after any cell was written: it binds.
 */
final class Promises {
  private final ToldBook told;
  private final Set<String> bookings;
  private final DateOrder order;

  Promises(ToldBook told, Set<String> bookings, DateOrder order) {
    this.told = told;
    this.bookings = bookings;
    this.order = order;
  }

  /** The booking with what was told of it. */
  Booking kept(Booking booking, Cells cells) {
    if (!booking.status().open()) {
      return booking;
    }
    DateSpan dates =
        booking.dates().orElse(new DateSpan(LocalDate.of(1970, 1, 1), LocalDate.of(2200, 12, 31)));
    Optional<Told> binding = told.binding(booking.id(), dates, bookings);
    if (binding.isEmpty()) {
      return booking;
    }
    if (booking.dates().isEmpty()) {
      // Of another day, perhaps long ago: without a date nobody can say.
      cells.add(
          "told-undated",
          Severity.LOOK,
          Column.DATE,
          "was told " + binding.get().span() + " for " + binding.get().date() + "; no date here",
          "write that date, or the status done");
      return booking;
    }
    WallSpan span = binding.get().span();
    Optional<WallSpan> cell = booking.told().map(ToldTime::arriveWithin);
    boolean late = binding.get().occasion() == Occasion.LATE;
    if (cell.isPresent() && !late && !cell.get().holds(span)) {
      if (!span.holds(cell.get())) {
        cells.add(
            "told-otherwise",
            Severity.LOOK,
            Column.TOLD,
            "the owner was told " + span + " (told.csv); this cell binds",
            "the next texts say the changed time");
      }
      span = cell.get();
    }
    BookingTerms terms = booking.terms();
    return new Booking(
        booking.id(),
        booking.clientId(),
        booking.pets(),
        Optional.of(DateSpan.of(binding.get().date())),
        booking.when(),
        booking.minutes(),
        Optional.of(new ToldTime(span)),
        booking.status(),
        booking.note(),
        new BookingTerms(
            Moves.NEVER,
            terms.valueMinor(),
            terms.likes(),
            terms.groomerId(),
            terms.vanId(),
            terms.lock()));
  }

  /** Whether a row that cannot be used may be one of which something was told. */
  boolean concern(Cells cells, People people) {
    if (!people.knows(cells.row())) {
      return false;
    }
    Optional<DateSpan> dates =
        cells.has(Column.DATE)
            ? DateGrammar.read(cells.text(Column.DATE), order).value()
            : Optional.empty();
    return people.find(cells).filter(person -> told.promised(person.id(), dates)).isPresent();
  }
}
