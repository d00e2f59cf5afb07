package dev.dogleg.cli.prepare;

import dev.dogleg.fault.Faults;
import dev.dogleg.groom.GroomTables;
import dev.dogleg.groom.StopEstimate;
import dev.dogleg.model.Book;
import dev.dogleg.model.Booking;
import dev.dogleg.model.Groomer;
import dev.dogleg.time.WorkDay;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** How long the stops of a book take, without a map. */
public final class StopTimes {
  private StopTimes() {}

  /**
   * One stop and its minutes.
   *
   * @param date first day on which it may be made
   * @param groomer whose pace was reckoned with
   * @param who client and pets in one line
   * @param estimate the minutes and what they rest on
   * @param plannedSeconds seconds that a plan takes for it
   */
  public record StopTime(
      LocalDate date, Groomer groomer, String who, StopEstimate estimate, int plannedSeconds) {}

  /**
   * All stops of open bookings, each on the first day it may be made.
   *
   * @param book the book
   * @param calendar which booking belongs to which day
   * @param tables groom tables in force
   * @param rows where things stand
   * @param faults takes bookings that contradict each other
   * @return stops by date, within it in the book's order; bookings that no working day can hold are
   *     left out
   */
  public static List<StopTime> of(
      Book book, Calendar calendar, GroomTables tables, RowFinder rows, Faults faults) {
    Map<LocalDate, List<Booking>> byDate = new TreeMap<>();
    for (Booking booking : book.bookings()) {
      if (booking.status().open()) {
        calendar
            .first(booking)
            .ifPresent(date -> byDate.computeIfAbsent(date, d -> new ArrayList<>()).add(booking));
      }
    }
    DayStops joiner = new DayStops(calendar, book.clientsById(), rows::booking, faults);
    StopMinutes minutes = new StopMinutes(tables, book);
    List<StopTime> times = new ArrayList<>();
    byDate.forEach(
        (date, bookings) -> {
          Groomer groomer = book.business().workingOn(date).get(0);
          for (DayStop stop : joiner.of(bookings, new WorkDay(date, book.business().zone()))) {
            StopEstimate estimate = minutes.of(groomer, stop, date);
            times.add(
                new StopTime(
                    date,
                    groomer,
                    Labels.who(stop, book),
                    estimate,
                    minutes.plannedSeconds(estimate)));
          }
        });
    return List.copyOf(times);
  }
}
