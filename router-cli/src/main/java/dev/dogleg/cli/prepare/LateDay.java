package dev.dogleg.cli.prepare;

import dev.dogleg.cli.terms.VanDay;
import dev.dogleg.groom.GroomTables;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.model.Book;
import dev.dogleg.model.Booking;
import dev.dogleg.model.DateSpan;
import dev.dogleg.model.DayLimits;
import dev.dogleg.model.Errand;
import dev.dogleg.model.Moves;
import dev.dogleg.model.WallSpan;
import dev.dogleg.model.When;
import dev.dogleg.model.WhenChoice;
import dev.dogleg.plan.late.Promise;
import dev.dogleg.plan.late.Promise.Kind;
import dev.dogleg.time.TimeWindow;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * A planned day for running late: what may not slide stands in the visits, what was promised apart.
 *
 * @param day the day with the stops of the plan; it starts where the van is
 * @param promises told times, and hours asked for that were never told
 * @param movable ids of visits that may go to another day
 */
public record LateDay(PreparedDay day, List<Promise> promises, Set<String> movable) {
  /** Copies the collections. */
  public LateDay {
    promises = List.copyOf(promises);
    movable = Set.copyOf(movable);
  }

  /**
   * Makes the day.
   *
   * @param book the book
   * @param day the van-day, numbered 0; its start is where the van is
   * @param rows bookings of each stop of the plan
   * @param tables groom tables in force
   * @param map the map
   * @param lookUps its addresses
   * @param where where things stand
   * @return the day
   * @throws dev.dogleg.fault.FaultException where a place cannot be found
   */
  public static LateDay of(
      Book book,
      VanDay day,
      List<List<String>> rows,
      GroomTables tables,
      MapInUse map,
      LookUps lookUps,
      RowFinder where) {
    List<FollowedWeek.FollowedStop> stops =
        rows.stream().map(row -> new FollowedWeek.FollowedStop(0, row)).toList();
    PreparedDay prepared =
        FollowedWeek.of(bare(book), List.of(day), stops, tables, map, lookUps, where).day(0);
    Map<String, Booking> asWritten =
        book.bookings().stream().collect(Collectors.toMap(Booking::id, Function.identity()));
    Map<String, Errand> errands =
        book.week().errands().stream().collect(Collectors.toMap(Errand::id, Function.identity()));
    List<Visit> visits = new ArrayList<>();
    List<Promise> promises = new ArrayList<>();
    Set<String> movable = new TreeSet<>();
    LocalDate date = day.day().date();
    for (Visit visit : prepared.request().visits()) {
      List<Booking> bookings =
          prepared.bookings().getOrDefault(visit.id(), List.of()).stream()
              .map(booking -> asWritten.get(booking.id()))
              .toList();
      Optional<Promise> promise = promise(visit.id(), bookings, day);
      promise.ifPresent(promises::add);
      visits.add(promise.map(one -> sliding(visit, one)).orElse(visit));
      boolean may =
          bookings.isEmpty()
              ? errands.get(visit.id()).dates().to().isAfter(date)
              : bookings.stream().allMatch(booking -> movable(booking, date));
      if (may) {
        movable.add(visit.id());
      }
    }
    return new LateDay(with(prepared, visits), promises, movable);
  }

  /** The book without the hours of arrival that were told or asked for. */
  private static Book bare(Book book) {
    List<Booking> bookings =
        book.bookings().stream()
            .map(
                one ->
                    new Booking(
                        one.id(),
                        one.clientId(),
                        one.pets(),
                        one.dates(),
                        anyHour(one.when()),
                        one.minutes(),
                        Optional.empty(),
                        one.status(),
                        one.note(),
                        one.terms()))
            .toList();
    return new Book(book.business(), book.clients(), book.pets(), bookings, book.week());
  }

  private static When anyHour(When when) {
    return new When(
        when.choices().stream()
            .map(
                choice ->
                    new WhenChoice(
                        choice.days(),
                        WallSpan.ALWAYS,
                        choice.doneByWallSeconds(),
                        choice.vanWithin(),
                        choice.first()))
            .toList());
  }

  private static Optional<Promise> promise(String id, List<Booking> bookings, VanDay day) {
    if (bookings.isEmpty()) {
      return Optional.empty(); // An errand's hours are those of a shop: they do not slide.
    }
    boolean told = bookings.stream().anyMatch(booking -> booking.told().isPresent());
    return WeekStops.limits(bookings, day)
        .map(DayLimits::arriveWithin)
        .filter(windows -> !windows.equals(DayLimits.NONE.arriveWithin()))
        .map(windows -> new Promise(id, told ? Kind.TOLD : Kind.WISH, windows));
  }

  /** A told time binds against a rule of the clock too, but does not slide beyond both. */
  private static Visit sliding(Visit visit, Promise promise) {
    if (promise.kind() == Kind.WISH) {
      return visit;
    }
    List<TimeWindow> all = new ArrayList<>(visit.arriveWithin());
    all.addAll(promise.windows());
    all.sort(null);
    List<TimeWindow> joined = new ArrayList<>();
    for (TimeWindow window : all) {
      int last = joined.size() - 1;
      if (last >= 0 && window.fromSeconds() <= joined.get(last).toSeconds()) {
        TimeWindow before = joined.get(last);
        int to = Math.max(before.toSeconds(), window.toSeconds());
        joined.set(last, new TimeWindow(before.fromSeconds(), to));
      } else {
        joined.add(window);
      }
    }
    return visit.arriving(joined);
  }

  private static boolean movable(Booking booking, LocalDate date) {
    // Every kind of lock keeps the day.
    boolean locked = booking.terms().lock().isPresent() || booking.told().isPresent();
    boolean later = booking.dates().map(DateSpan::to).map(to -> to.isAfter(date)).orElse(true);
    return !locked && (later || booking.terms().moves() != Moves.NEVER);
  }

  private static PreparedDay with(PreparedDay day, List<Visit> visits) {
    DayRequest request = day.request().asking(visits);
    return new PreparedDay(
        day.groomer(), day.van(), request, day.places(), day.stops(), day.bookings());
  }
}
