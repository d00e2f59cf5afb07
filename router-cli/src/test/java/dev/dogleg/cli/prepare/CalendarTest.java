package dev.dogleg.cli.prepare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.cli.csv.BookReader;
import dev.dogleg.cli.csv.ReadOptions;
import dev.dogleg.groom.StarterTables;
import dev.dogleg.model.Book;
import dev.dogleg.model.Booking;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Which bookings of the demo book are asked of which day. */
class CalendarTest {
  private static final LocalDate MONDAY = LocalDate.of(2027, 3, 1);

  private final Book book =
      BookReader.read(
              Path.of(System.getProperty("dogleg.root"), "demo-data"),
              ReadOptions.of(StarterTables.load()))
          .book()
          .orElseThrow();
  private final Calendar calendar = new Calendar(book.business(), MONDAY);

  @Test
  void theEarliestOpenBookingIsTheFirstDay() {
    assertEquals(Optional.of(MONDAY), Calendar.earliest(book.bookings(), LocalDate.of(2027, 3, 4)));
  }

  @Test
  void aSpanMeetsTheWeekdaysItSpeaksOf() {
    // Monday to Friday, but "Wed; Thu": first Wednesday, last Thursday.
    Booking span =
        book.bookings().stream()
            .filter(booking -> booking.dates().filter(dates -> !dates.single()).isPresent())
            .findFirst()
            .orElseThrow();
    assertFalse(calendar.possible(span, MONDAY));
    assertEquals(Optional.of(MONDAY.plusDays(2)), calendar.first(span));
    assertEquals(Optional.of(MONDAY.plusDays(3)), calendar.laterThan(span, MONDAY.plusDays(2)));
    assertEquals(Optional.empty(), calendar.laterThan(span, MONDAY.plusDays(3)));
  }

  @Test
  void aDatedBookingBelongsToItsDay() {
    Booking first = book.bookings().get(0);
    assertTrue(calendar.possible(first, MONDAY));
    assertFalse(calendar.possible(first, MONDAY.plusDays(1)));
    assertEquals(Optional.empty(), calendar.laterThan(first, MONDAY));
  }
}
