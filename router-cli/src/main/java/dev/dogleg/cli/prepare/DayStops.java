package dev.dogleg.cli.prepare;

import dev.dogleg.fault.Fault;
import dev.dogleg.fault.Faults;
import dev.dogleg.fault.Severity;
import dev.dogleg.fault.Where;
import dev.dogleg.model.Booking;
import dev.dogleg.model.BookingStatus;
import dev.dogleg.model.Client;
import dev.dogleg.model.DayLimits;
import dev.dogleg.time.WorkDay;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Joins the bookings of a day to stops: one client's pets of that day are one arrival. */
final class DayStops {
  private final Calendar calendar;
  private final Map<String, Client> clients;
  private final Function<String, Where> rows;
  private final Faults faults;

  /**
   * A joiner.
   *
   * @param calendar which booking belongs to which day
   * @param clients clients by id
   * @param rows row of a booking, by its id
   * @param faults takes bookings that contradict each other
   */
  DayStops(
      Calendar calendar, Map<String, Client> clients, Function<String, Where> rows, Faults faults) {
    this.calendar = calendar;
    this.clients = clients;
    this.rows = rows;
    this.faults = faults;
  }

  /**
   * The stops of one day.
   *
   * @param bookings bookings possible on it, in the book's order; one that is not (moved there by
   *     hand) has no limits
   * @param day the day
   * @return stops in the order of their first bookings; agreed bookings and those of the waiting
   *     list of one client stay apart, for the one must not wait for the other
   */
  List<DayStop> of(List<Booking> bookings, WorkDay day) {
    Map<String, DayStop> stops = new LinkedHashMap<>();
    for (Booking booking : bookings) {
      DayLimits limits = booking.when().on(day).orElse(DayLimits.NONE);
      if (booking.told().isPresent()) {
        limits = limits.arriving(booking.told().get().arriveWithin().on(day)); // a promise binds
      }
      boolean agreed = booking.status() == BookingStatus.BOOKED;
      boolean last = calendar.laterThan(booking, day.date()).isEmpty();
      String key = booking.clientId() + (agreed ? last ? " must" : " may" : " waits");
      DayStop before = stops.get(key);
      if (before == null) {
        stops.put(
            key,
            new DayStop(clients.get(booking.clientId()), List.of(booking), limits, agreed && last));
      } else {
        join(before, booking, limits).ifPresent(joined -> stops.put(key, joined));
      }
    }
    return List.copyOf(stops.values());
  }

  private Optional<DayStop> join(DayStop before, Booking booking, DayLimits limits) {
    Optional<DayLimits> both = LimitsJoin.both(before.limits(), limits);
    if (both.isEmpty()) {
      faults.add(
          new Fault(
              "two-arrivals",
              booking.told().isPresent() || before.told() ? Severity.STOP : Severity.ASIDE,
              rows.apply(booking.id()).at("when"),
              "",
              "one client's bookings of a day are one arrival, and this one cannot be at the time"
                  + " of "
                  + before.visitId(),
              "give both the same time, or another date to one of them"));
      return Optional.empty();
    }
    List<Booking> bookings = new ArrayList<>(before.bookings());
    bookings.add(booking);
    return Optional.of(new DayStop(before.client(), bookings, both.get(), before.mustToday()));
  }
}
