package dev.dogleg.cli.prepare;

import dev.dogleg.cli.prepare.EarlierPlan.Spot;
import dev.dogleg.cli.prepare.ZoneRound.ZonedClient;
import dev.dogleg.cli.terms.VanDay;
import dev.dogleg.cli.terms.ZoneWeekdays;
import dev.dogleg.fault.Faults;
import dev.dogleg.groom.GroomTables;
import dev.dogleg.model.Book;
import dev.dogleg.model.Booking;
import dev.dogleg.model.BookingStatus;
import dev.dogleg.model.BookingTerms;
import dev.dogleg.model.DateSpan;
import dev.dogleg.model.Errand;
import dev.dogleg.model.Moves;
import dev.dogleg.model.WeekBook;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * The planned visits of a book as they might have been, had another weekday been given: each may be
 * on any day of its week, but for those that keep their day.
 *
 * <p>A visit keeps its day where its time was told, where it is locked, where its client has
 * several visits in that week, where it lies in a zone whose days are no weekdays, and where it is
 * an errand. What the booking says of days and hours ({@code when}), rules and crew bind all the
 * same; zones do not: they are laid over it.
 *
 * @param week van-days and visits; every visit is planned and counts
 * @param placed number of the van-day on which the plan has a visit, by its id
 * @param around numbers of the zones that bind a visit, by its id; none for one that was told
 * @param free ids of visits that may be on another day than they are
 */
public record FreeWeek(
    PreparedWeek week,
    Map<String, Integer> placed,
    Map<String, List<Integer>> around,
    Set<String> free) {
  /** Copies the collections. */
  public FreeWeek {
    placed = Map.copyOf(placed);
    around = Map.copyOf(around);
    free = Set.copyOf(free);
  }

  /**
   * Makes the week.
   *
   * @param book the book
   * @param round its clients by zone
   * @param plan the plan; of the book's bookings those that it has count
   * @param days van-days of the plan
   * @param tables groom tables in force
   * @param map the map
   * @param rows where things stand
   * @param effort limit of one planned week in solver steps
   * @param faults takes what is wrong
   * @return the week; empty where a fault stops the run, or nothing of the plan is in the book
   */
  public static Optional<FreeWeek> of(
      Book book,
      ZoneRound round,
      EarlierPlan plan,
      List<VanDay> days,
      GroomTables tables,
      MapInUse map,
      RowFinder rows,
      long effort,
      Faults faults) {
    Book freed = freed(book, round, plan, days);
    Optional<PreparedWeek> prepared =
        WeekPreparation.of(
            freed, freed.bookings(), days, EarlierPlan.NONE, tables, map, rows, 1, effort, faults);
    return prepared
        .filter(week -> !week.request().bookings().isEmpty())
        .map(week -> of(week, round.byId(), plan, days));
  }

  private static FreeWeek of(
      PreparedWeek week, Map<String, ZonedClient> clients, EarlierPlan plan, List<VanDay> days) {
    Map<String, Integer> placed = new TreeMap<>();
    Map<String, List<Integer>> around = new TreeMap<>();
    Set<String> free = new HashSet<>();
    week.request()
        .bookings()
        .forEach(
            stop -> {
              List<Booking> bookings = week.bookings().get(stop.id());
              String named = bookings.isEmpty() ? stop.id() : bookings.get(0).id();
              Spot spot = plan.of(named).orElseThrow();
              days.stream()
                  .filter(
                      day ->
                          day.day().date().equals(spot.date())
                              && day.groomer().id().equals(spot.groomerId()))
                  .findFirst()
                  .ifPresent(day -> placed.put(stop.id(), day.number()));
              if (stop.choices().size() > 1) {
                free.add(stop.id());
              }
              boolean told = bookings.stream().anyMatch(one -> one.told().isPresent());
              if (!bookings.isEmpty() && !told) {
                Optional.ofNullable(clients.get(bookings.get(0).clientId()))
                    .ifPresent(client -> around.put(stop.id(), client.zones()));
              }
            });
    return new FreeWeek(week, placed, around, free);
  }

  private static Book freed(Book book, ZoneRound round, EarlierPlan plan, List<VanDay> days) {
    Map<String, ZonedClient> clients = round.byId();
    Map<String, Integer> visits = new HashMap<>();
    Set<String> counted = new HashSet<>();
    for (Booking booking : book.bookings()) {
      plan.of(booking.id())
          .ifPresent(
              spot -> {
                if (counted.add(booking.clientId() + " " + spot.date())) {
                  visits.merge(inWeek(booking, spot), 1, Integer::sum);
                }
              });
    }
    List<Booking> bookings = new ArrayList<>();
    for (Booking booking : book.bookings()) {
      Optional<Spot> spot = plan.of(booking.id());
      if (booking.status().open() && spot.isPresent() && worked(days, spot.get())) {
        boolean stays =
            booking.told().isPresent()
                || booking.terms().lock().isPresent()
                || visits.get(inWeek(booking, spot.get())) > 1
                || !byWeekdays(book, clients.get(booking.clientId()));
        LocalDate date = spot.get().date();
        bookings.add(on(booking, stays ? DateSpan.of(date) : weekOf(date)));
      }
    }
    List<Errand> errands = new ArrayList<>();
    for (Errand errand : book.week().errands()) {
      plan.of(errand.id())
          .filter(spot -> worked(days, spot))
          .ifPresent(spot -> errands.add(on(errand, spot.date())));
    }
    WeekBook rest = new WeekBook(book.week().days(), book.week().rules(), List.of(), errands);
    return new Book(book.business(), book.clients(), book.pets(), bookings, rest);
  }

  private static boolean worked(List<VanDay> days, Spot spot) {
    return days.stream()
        .anyMatch(
            day ->
                day.day().date().equals(spot.date())
                    && day.groomer().id().equals(spot.groomerId()));
  }

  private static String inWeek(Booking booking, Spot spot) {
    return booking.clientId() + " " + weekOf(spot.date()).from();
  }

  /** Whether the zones of a client, if any, are worked on weekdays and no other days. */
  private static boolean byWeekdays(Book book, ZonedClient client) {
    return client == null
        || client.zones().stream()
            .allMatch(zone -> ZoneWeekdays.of(book.week().zones().get(zone)).isPresent());
  }

  private static DateSpan weekOf(LocalDate date) {
    LocalDate monday = date.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
    return new DateSpan(monday, monday.plusDays(6));
  }

  private static Booking on(Booking booking, DateSpan dates) {
    BookingTerms terms = booking.terms();
    return new Booking(
        booking.id(),
        booking.clientId(),
        booking.pets(),
        Optional.of(dates),
        booking.when(),
        booking.minutes(),
        booking.told(),
        BookingStatus.BOOKED,
        booking.note(),
        new BookingTerms(
            Moves.NEVER,
            terms.valueMinor(),
            terms.likes(),
            terms.groomerId(),
            terms.vanId(),
            Optional.empty()));
  }

  private static Errand on(Errand errand, LocalDate date) {
    return new Errand(
        errand.id(),
        errand.name(),
        DateSpan.of(date),
        errand.when(),
        errand.seconds(),
        errand.place(),
        errand.groomerId(),
        errand.note());
  }
}
