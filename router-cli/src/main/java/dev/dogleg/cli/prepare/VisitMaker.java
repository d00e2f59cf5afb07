package dev.dogleg.cli.prepare;

import dev.dogleg.itinerary.Prices;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.model.Book;
import dev.dogleg.model.Booking;
import dev.dogleg.model.DayLimits;
import dev.dogleg.model.Pet;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;

/** Makes the planner's visit out of a stop. */
final class VisitMaker {
  /**
   * Price of leaving out an agreed visit that another day of its span may still serve: dearer than
   * any drive, so it is served where there is room, and cheaper than dropping a visit that has this
   * day only.
   */
  static final long CARRY_SIXTIETHS = 1L << 36;

  private VisitMaker() {}

  /**
   * The visit.
   *
   * @param stop the stop
   * @param place its place number in the request
   * @param seconds service seconds
   * @param book the book, for prices
   * @return the visit
   */
  static Visit of(DayStop stop, int place, int seconds, Book book) {
    DayLimits limits = stop.limits();
    return new Visit(
        stop.visitId(),
        place,
        seconds,
        stop.mustToday(),
        stop.mustToday() ? 0 : stop.agreed() ? CARRY_SIXTIETHS : worth(stop, book),
        limits.arriveWithin(),
        limits.doneBySeconds(),
        limits.vanWithin(),
        limits.first());
  }

  private static long worth(DayStop stop, Book book) {
    return book.business().worth().waitingSeconds(price(stop.bookings(), book.petsById()))
        * Prices.SIXTIETHS_PER_DRIVE_SECOND;
  }

  /** Prices of the pets of some bookings, in minor units; empty where none is known. */
  static OptionalLong price(List<Booking> bookings, Map<String, Pet> pets) {
    long price = 0;
    boolean known = false;
    for (Booking booking : bookings) {
      for (var booked : booking.pets()) {
        OptionalLong one = pets.get(booked.petId()).priceMinor();
        known |= one.isPresent();
        price += one.orElse(0);
      }
    }
    return known ? OptionalLong.of(price) : OptionalLong.empty();
  }
}
