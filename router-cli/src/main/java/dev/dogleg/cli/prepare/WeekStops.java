package dev.dogleg.cli.prepare;

import dev.dogleg.cli.terms.VanDay;
import dev.dogleg.model.Book;
import dev.dogleg.model.Booking;
import dev.dogleg.model.BookingTerms;
import dev.dogleg.model.Client;
import dev.dogleg.model.DateSpan;
import dev.dogleg.model.DayLimits;
import dev.dogleg.model.Errand;
import dev.dogleg.model.Remedy;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Makes stops of bookings and errands: on which van-days each may be made, and which bookings of
 * one client are surely one arrival.
 */
final class WeekStops {
  /** Farthest that a booking is moved off its dates, in days. */
  private static final int FARTHEST_MOVE_DAYS = 7;

  private final Book book;
  private final List<VanDay> days;
  private final EarlierPlan earlier;

  WeekStops(Book book, List<VanDay> days, EarlierPlan earlier) {
    this.book = book;
    this.days = days;
    this.earlier = earlier;
  }

  /**
   * Stops of bookings, in the book's order, then of errands; those without any van-day left out.
   */
  List<WeekStop> of(List<Booking> bookings, List<Errand> errands) {
    Map<String, Client> clients = book.clientsById();
    Map<String, List<WeekStop>> byKey = new LinkedHashMap<>();
    for (Booking booking : bookings) {
      Map<Integer, Integer> possible = days(booking);
      if (possible.isEmpty()) {
        continue;
      }
      WeekStop stop = WeekStop.of(clients.get(booking.clientId()), List.of(booking), possible);
      List<WeekStop> alike = byKey.computeIfAbsent(key(booking, possible), k -> new ArrayList<>());
      boolean joined = false;
      for (int s = 0; s < alike.size() && !joined; s++) {
        Optional<WeekStop> both = join(alike.get(s), booking);
        if (both.isPresent()) {
          alike.set(s, both.get());
          joined = true;
        }
      }
      if (!joined) {
        alike.add(stop);
      }
    }
    List<WeekStop> stops = new ArrayList<>();
    byKey.values().forEach(stops::addAll);
    for (Errand errand : errands) {
      Map<Integer, Integer> possible = days(errand);
      if (!possible.isEmpty()) {
        stops.add(WeekStop.of(errand, possible));
      }
    }
    return stops;
  }

  /** Bookings with the same key may become one stop. */
  private String key(Booking booking, Map<Integer, Integer> possible) {
    BookingTerms terms = booking.terms();
    return String.join(
        "|",
        booking.clientId(),
        booking.status().name(),
        possible.toString(),
        terms.moves().name(),
        terms.lock().map(Enum::name).orElse(""),
        terms.groomerId().orElse(""),
        terms.vanId().orElse(""),
        booking.dates().map(DateSpan::to).map(LocalDate::toString).orElse(""));
  }

  private Optional<WeekStop> join(WeekStop stop, Booking booking) {
    List<Booking> bookings = new ArrayList<>(stop.bookings());
    bookings.add(booking);
    boolean everyDay =
        stop.days().keySet().stream().allMatch(day -> limits(bookings, days.get(day)).isPresent());
    return everyDay
        ? Optional.of(WeekStop.of(stop.client().orElseThrow(), bookings, stop.days()))
        : Optional.empty();
  }

  /** What one arrival on a day must keep; empty where it cannot keep all. */
  static Optional<DayLimits> limits(List<Booking> bookings, VanDay day) {
    Optional<DayLimits> all = Optional.of(DayLimits.NONE);
    for (Booking booking : bookings) {
      Optional<DayLimits> own = limits(booking, day);
      Optional<DayLimits> before = all;
      all = own.flatMap(one -> before.flatMap(limits -> LimitsJoin.both(limits, one)));
    }
    return all;
  }

  private static Optional<DayLimits> limits(Booking booking, VanDay day) {
    Optional<DayLimits> wished = booking.when().on(day.day());
    return booking.told().isPresent()
        ? Optional.of(
            wished
                .orElse(DayLimits.NONE)
                .arriving(booking.told().get().arriveWithin().on(day.day())))
        : wished;
  }

  /** Van-days by number, with the price of moving a booking there. */
  Map<Integer, Integer> days(Booking booking) {
    Map<Integer, Integer> possible = new TreeMap<>();
    BookingTerms terms = booking.terms();
    Optional<EarlierPlan.Spot> spot = terms.lock().flatMap(lock -> earlier.of(booking.id()));
    for (VanDay day : days) {
      boolean crew =
          terms.groomerId().map(day.groomer().id()::equals).orElse(true)
              && terms.vanId().map(day.van().id()::equals).orElse(true);
      boolean locked =
          spot.map(
                  s ->
                      s.date().equals(day.day().date()) && s.groomerId().equals(day.groomer().id()))
              .orElse(true);
      if (crew && locked && limits(booking, day).isPresent()) {
        boolean stays = spot.isPresent();
        price(booking, day.day().date(), stays).ifPresent(p -> possible.put(day.number(), p));
      }
    }
    return possible;
  }

  /** Seconds of driving that a date costs; empty where it may not be used. */
  private Optional<Integer> price(Booking booking, LocalDate date, boolean locked) {
    Optional<DateSpan> span = booking.dates();
    if (span.isEmpty() || span.get().holds(date)) {
      return Optional.of(0);
    }
    boolean near =
        !date.isBefore(span.get().from().minusDays(FARTHEST_MOVE_DAYS))
            && !date.isAfter(span.get().to().plusDays(FARTHEST_MOVE_DAYS));
    if (!near || booking.told().isPresent()) {
      return Optional.empty();
    }
    int change = book.business().worth().changeSeconds();
    int ask = book.business().week().prices().askSeconds();
    return switch (booking.terms().moves()) {
      case NEVER -> Optional.empty();
      case ANY_TIME -> Optional.of(change);
      case ASK ->
          locked || book.business().week().whenFull().contains(Remedy.ASK)
              ? Optional.of(ask)
              : Optional.empty();
    };
  }

  private Map<Integer, Integer> days(Errand errand) {
    Map<Integer, Integer> possible = new TreeMap<>();
    for (VanDay day : days) {
      boolean crew = errand.groomerId().map(day.groomer().id()::equals).orElse(true);
      if (crew
          && errand.dates().holds(day.day().date())
          && errand.when().on(day.day()).isPresent()) {
        possible.put(day.number(), 0);
      }
    }
    return possible;
  }

  /** Whether a booking may be made on some van-day of the run. */
  boolean possible(Booking booking) {
    return !days(booking).isEmpty();
  }
}
