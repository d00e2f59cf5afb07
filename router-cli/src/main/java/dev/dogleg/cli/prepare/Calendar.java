package dev.dogleg.cli.prepare;

import dev.dogleg.model.Booking;
import dev.dogleg.model.Business;
import dev.dogleg.model.DateSpan;
import dev.dogleg.time.WorkDay;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * Which bookings are asked of which day.
 *
 * <p>A booking with one date belongs to that date. One with a span is offered to the earliest day
 * of its span first and carried on while it has no room. One without a date belongs to the day that
 * stands for "tomorrow".
 */
public final class Calendar {
  private final Business business;
  private final LocalDate undated;

  /**
   * A calendar.
   *
   * @param business whose days
   * @param undated the day of bookings without a date
   */
  public Calendar(Business business, LocalDate undated) {
    this.business = business;
    this.undated = undated;
  }

  /**
   * The first day to plan where nobody names one: that of the earliest open booking.
   *
   * @param bookings all bookings
   * @param tomorrow the day after today
   * @return the day, or empty where no booking is open
   */
  public static Optional<LocalDate> earliest(List<Booking> bookings, LocalDate tomorrow) {
    return bookings.stream()
        .filter(booking -> booking.status().open())
        .map(booking -> booking.dates().map(DateSpan::from).orElse(tomorrow))
        .min(LocalDate::compareTo);
  }

  /**
   * Days on which a booking may be made.
   *
   * @param booking the booking
   * @return its span; one day where it has no date
   */
  public DateSpan span(Booking booking) {
    return booking.dates().orElse(DateSpan.of(undated));
  }

  /**
   * Whether a booking may be made on a day: inside its span, a weekday it speaks of, somebody
   * works.
   *
   * @param booking the booking
   * @param date the day
   * @return true where all three hold
   */
  public boolean possible(Booking booking, LocalDate date) {
    return span(booking).holds(date)
        && booking.when().on(new WorkDay(date, business.zone())).isPresent()
        && !business.workingOn(date).isEmpty();
  }

  /**
   * The first day that may serve a booking.
   *
   * @param booking the booking
   * @return the day, or empty where none may
   */
  public Optional<LocalDate> first(Booking booking) {
    DateSpan span = span(booking);
    return span.from()
        .datesUntil(span.to().plusDays(1))
        .filter(date -> possible(booking, date))
        .findFirst();
  }

  /**
   * The last day that may serve a booking after a given one.
   *
   * @param booking the booking
   * @param date a day
   * @return a later possible day, the last of its span; empty where there is none
   */
  public Optional<LocalDate> laterThan(Booking booking, LocalDate date) {
    LocalDate day = span(booking).to();
    while (day.isAfter(date)) {
      if (possible(booking, day)) {
        return Optional.of(day);
      }
      day = day.minusDays(1);
    }
    return Optional.empty();
  }
}
