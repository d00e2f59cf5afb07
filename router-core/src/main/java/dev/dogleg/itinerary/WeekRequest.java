package dev.dogleg.itinerary;

import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;

/**
 * Everything needed to plan several van-days as one problem; what binds an answer stands in {@code
 * docs/WEEK.md}.
 *
 * @param days van-days in the order of their dates, then of the groomers
 * @param bookings stops to place, at most 1,000, ids unique
 * @param prices what things are worth
 * @param seed seed of every random choice
 * @param effort limit in solver steps, 1 or more
 */
public record WeekRequest(
    List<WeekDay> days, List<WeekBooking> bookings, Prices prices, long seed, long effort) {
  /** Most bookings one request may hold. */
  public static final int MOST_BOOKINGS = 1_000;

  /** Checks ids, days and places. */
  public WeekRequest {
    days = List.copyOf(days);
    bookings = List.copyOf(bookings);
    Objects.requireNonNull(prices, "prices");
    if (bookings.size() > MOST_BOOKINGS || effort < 1) {
      throw new IllegalArgumentException(
          "bookings or effort out of range: " + bookings.size() + ", " + effort);
    }
    Set<String> ids = new HashSet<>();
    for (WeekBooking booking : bookings) {
      if (!ids.add(booking.id())) {
        throw new IllegalArgumentException("booking id twice: " + booking.id());
      }
      for (DayChoice choice : booking.choices()) {
        if (choice.day() >= days.size()
            || choice.visit().place() >= days.get(choice.day()).travel().size()) {
          throw new IllegalArgumentException(
              "booking " + booking.id() + " names an unknown day or place");
        }
      }
    }
  }

  /**
   * One van-day with everything that may be asked of it.
   *
   * @param number number of the van-day
   * @return the visits of all choices of that day, in the order of the bookings, on its terms
   */
  public DayRequest asking(int number) {
    List<Visit> visits =
        bookings.stream()
            .flatMap(booking -> booking.choices().stream())
            .filter(choice -> choice.day() == number)
            .map(DayChoice::visit)
            .toList();
    return asking(number, visits);
  }

  /**
   * One van-day with some visits.
   *
   * @param number number of the van-day
   * @param visits visits asked for
   * @return the day on its terms
   */
  public DayRequest asking(int number, List<Visit> visits) {
    WeekDay day = days.get(number);
    return new DayRequest(day.shift(), visits, day.travel(), prices, day.terms(), seed, effort);
  }
}
