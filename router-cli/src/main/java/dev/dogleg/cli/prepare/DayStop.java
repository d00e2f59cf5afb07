package dev.dogleg.cli.prepare;

import dev.dogleg.model.Booking;
import dev.dogleg.model.Client;
import dev.dogleg.model.DayLimits;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;

/**
 * One client's bookings of one day, made in one arrival.
 *
 * @param client whose
 * @param bookings at least one, in the book's order; all booked or all on the waiting list
 * @param limits what all of them allow
 * @param mustToday false where it is on the waiting list or another day of its span may still serve
 *     it
 */
record DayStop(Client client, List<Booking> bookings, DayLimits limits, boolean mustToday) {
  DayStop {
    Objects.requireNonNull(client, "client");
    Objects.requireNonNull(limits, "limits");
    bookings = List.copyOf(bookings);
    if (bookings.isEmpty()) {
      throw new IllegalArgumentException("a stop needs a booking");
    }
  }

  /** {@return ids of its bookings joined by {@code ;}} */
  String visitId() {
    return bookings.stream().map(Booking::id).collect(Collectors.joining(";"));
  }

  /** {@return whether its bookings are agreed, not on the waiting list} */
  boolean agreed() {
    return bookings.get(0).status() == dev.dogleg.model.BookingStatus.BOOKED;
  }

  /** {@return whether a time was told for any of its bookings} */
  boolean told() {
    return bookings.stream().anyMatch(booking -> booking.told().isPresent());
  }
}
