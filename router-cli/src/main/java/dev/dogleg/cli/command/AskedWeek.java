package dev.dogleg.cli.command;

import dev.dogleg.cli.prepare.MapInUse;
import dev.dogleg.cli.prepare.PreparedWeek;
import dev.dogleg.cli.prepare.WeekPreparation;
import dev.dogleg.cli.terms.VanDay;
import dev.dogleg.cli.terms.VanDays;
import dev.dogleg.fault.Fault;
import dev.dogleg.fault.Faults;
import dev.dogleg.fit.FitWeek;
import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.model.Book;
import dev.dogleg.model.Booking;
import dev.dogleg.plan.week.WeekPlanner;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * The planned days with newcomers beside them, ready to be asked.
 *
 * @param week van-days and stops, those of the newcomers too
 * @param fit the planned days
 * @param possible the newcomers that may be on some day, at least one
 */
record AskedWeek(PreparedWeek week, FitWeek fit, List<WeekBooking> possible) {
  AskedWeek {
    possible = List.copyOf(possible);
  }

  /**
   * Prepares.
   *
   * @param told which faults are said: what is wrong with the rest of the book was said when it was
   *     planned
   * @param faults takes them
   * @return the week; empty where a fault stops the run or no newcomer may be on any day
   */
  static Optional<AskedWeek> of(
      BookInput input,
      Newcomers newcomers,
      PlannedDates planned,
      MapInUse map,
      Predicate<Fault> told,
      Faults faults) {
    Book book = newcomers.joined();
    List<VanDay> days = VanDays.of(book.business(), book.week().days(), planned.dates());
    Faults preparing = new Faults();
    List<Booking> bookings =
        WeekPreparation.candidates(
            book, days, planned.dates(), planned.earlier(), newcomers.rows(), preparing);
    Optional<PreparedWeek> prepared =
        WeekPreparation.of(
            book,
            bookings,
            days,
            planned.earlier(),
            input.tables(),
            map,
            newcomers.rows(),
            1,
            WeekPlanner.USUAL_EFFORT,
            preparing);
    preparing.all().stream()
        .filter(fault -> preparing.stops() || told.test(fault))
        .forEach(faults::add);
    Set<String> asked = newcomers.bookings().stream().map(Booking::id).collect(Collectors.toSet());
    List<WeekBooking> possible =
        prepared.stream()
            .flatMap(week -> week.request().bookings().stream())
            .filter(booking -> asked.contains(booking.id().split(";")[0]))
            .toList();
    if (prepared.isEmpty() || possible.isEmpty()) {
      return Optional.empty();
    }
    PreparedWeek week = prepared.get();
    try {
      Set<String> calls = possible.stream().map(WeekBooking::id).collect(Collectors.toSet());
      FitWeek fit = FitWeek.of(week.request(), week.before(), fixed(week), calls);
      return Optional.of(new AskedWeek(week, fit, possible));
    } catch (IllegalArgumentException holdsNot) {
      faults.add(PlannedDates.holdsNot(holdsNot));
      return Optional.empty();
    }
  }

  /** Stops that keep their day whoever comes: told and locked ones. */
  private static Set<String> fixed(PreparedWeek week) {
    Set<String> fixed = new HashSet<>();
    week.bookings()
        .forEach(
            (id, bookings) -> {
              if (bookings.stream()
                  .anyMatch(one -> one.told().isPresent() || one.terms().lock().isPresent())) {
                fixed.add(id);
              }
            });
    return fixed;
  }
}
