package dev.dogleg.cli.prepare;

import dev.dogleg.cli.export.StopLabel;
import dev.dogleg.cli.terms.DraftChoice;
import dev.dogleg.cli.terms.DraftStop;
import dev.dogleg.cli.terms.StopTagger;
import dev.dogleg.cli.terms.VanDay;
import dev.dogleg.fault.Fault;
import dev.dogleg.fault.FaultException;
import dev.dogleg.fault.Faults;
import dev.dogleg.fault.Severity;
import dev.dogleg.fault.Where;
import dev.dogleg.groom.GroomTables;
import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.itinerary.WeekDay;
import dev.dogleg.itinerary.WeekRequest;
import dev.dogleg.model.Book;
import dev.dogleg.model.Booking;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Makes the request for several van-days out of a book and a map. */
public final class WeekPreparation {
  /** Most stops that may ask for one van-day, as the planner demands. */
  public static final int MOST_A_DAY = 200;

  private final Book book;
  private final GroomTables tables;
  private final List<VanDay> days;
  private final EarlierPlan earlier;
  private final RowFinder rows;
  private final Faults faults;

  private WeekPreparation(
      Book book,
      GroomTables tables,
      List<VanDay> days,
      EarlierPlan earlier,
      RowFinder rows,
      Faults faults) {
    this.book = book;
    this.tables = tables;
    this.days = days;
    this.earlier = earlier;
    this.rows = rows;
    this.faults = faults;
  }

  /**
   * Prepares.
   *
   * @param book the book
   * @param bookings open bookings that the run may plan
   * @param days van-days, at least one
   * @param earlier an earlier plan
   * @param tables groom tables in force
   * @param map the map
   * @param rows where things stand
   * @param seed seed of the run
   * @param effort limit in solver steps
   * @param faults takes what is wrong
   * @return the week; empty where a fault stops the run
   * @throws FaultException where the map cannot be used, or more is asked than can be planned
   */
  public static Optional<PreparedWeek> of(
      Book book,
      List<Booking> bookings,
      List<VanDay> days,
      EarlierPlan earlier,
      GroomTables tables,
      MapInUse map,
      RowFinder rows,
      long seed,
      long effort,
      Faults faults) {
    return new WeekPreparation(book, tables, days, earlier, rows, faults)
        .prepare(bookings, map, seed, effort);
  }

  /**
   * The bookings that a run may plan.
   *
   * @param book the book
   * @param days van-days
   * @param dates days of the run, worked or not
   * @param earlier an earlier plan
   * @param rows where things stand
   * @param faults takes open bookings whose every day falls into the run and cannot be used
   * @return open bookings that some van-day may serve, in the book's order
   */
  public static List<Booking> candidates(
      Book book,
      List<VanDay> days,
      List<LocalDate> dates,
      EarlierPlan earlier,
      RowFinder rows,
      Faults faults) {
    WeekStops stops = new WeekStops(book, days, earlier);
    List<Booking> candidates = new ArrayList<>();
    LocalDate first = dates.get(0);
    LocalDate last = dates.get(dates.size() - 1);
    for (Booking booking : book.bookings()) {
      if (!booking.status().open()) {
        continue;
      }
      boolean inside =
          booking
              .dates()
              .map(span -> !span.from().isBefore(first) && !span.to().isAfter(last))
              .orElse(true);
      boolean touches =
          booking
              .dates()
              .map(span -> !span.to().isBefore(first) && !span.from().isAfter(last))
              .orElse(true);
      if (touches && stops.possible(booking)) {
        candidates.add(booking);
      } else if (inside && !days.isEmpty()) {
        faults.add(noWorkingDay(booking, rows));
      }
    }
    return candidates;
  }

  private static Fault noWorkingDay(Booking booking, RowFinder rows) {
    return new Fault(
        "no-working-day",
        booking.told().isPresent() ? Severity.STOP : Severity.ASIDE,
        rows.booking(booking.id()).at("date"),
        booking.dates().map(Object::toString).orElse(""),
        "a day on which somebody works, and that when, groomer and van allow, was expected",
        "give it another date, or change hours or days off");
  }

  private Optional<PreparedWeek> prepare(
      List<Booking> bookings, MapInUse map, long seed, long effort) {
    List<WeekStop> stops = new WeekStops(book, days, earlier).of(bookings, book.week().errands());
    WeekPlaces places =
        WeekPlaces.find(
            WeekNeeds.of(book, days, stops, rows),
            VanDay.vans(days),
            book.business(),
            map,
            new LookUps(map, book.clients()),
            faults);
    ZoneDistricts districts = ZoneDistricts.of(book.week().zones(), map, rows, faults);
    if (faults.stops()) {
      return Optional.empty();
    }
    WeekChoices choices =
        new WeekChoices(
            book, new StopMinutes(tables, book), new StopTagger(tables, book), places, earlier);
    stops.forEach(stop -> choices.add(stop, days));
    stops = reached(stops, places);
    if (faults.stops()) {
      return Optional.empty();
    }
    WeekTerms terms =
        new WeekTerms(book, tables, days, stops, places, districts, earlier, rows, false, faults);
    List<WeekDay> weekDays = terms.days();
    List<WeekBooking> requested = stops.stream().map(stop -> stop.draft().booking()).toList();
    checkSize(requested);
    WeekRequest request = new WeekRequest(weekDays, requested, terms.prices(), seed, effort);
    return Optional.of(shown(request, stops, choices, places, terms.before()));
  }

  /** Sets aside what no van can be driven to. */
  private List<WeekStop> reached(List<WeekStop> stops, WeekPlaces places) {
    List<WeekStop> reached = new ArrayList<>();
    for (WeekStop stop : stops) {
      if (!stop.draft().choices().isEmpty()) {
        reached.add(stop);
      } else if (places.number(stop.place()).isPresent()) {
        Where row = WeekNeeds.source(stop, rows).cell(stop.place().pin().isPresent());
        faults.add(
            new Fault(
                "unreachable",
                stop.draft().told() ? Severity.STOP : Severity.ASIDE,
                row,
                stop.place().address(),
                "no road that the van may use leads there and back on any day that it may be made",
                "put the pin on the right side of the water, gate or bridge"));
      }
    }
    return reached;
  }

  private void checkSize(List<WeekBooking> bookings) {
    int[] perDay = new int[days.size()];
    bookings.forEach(one -> one.choices().forEach(choice -> perDay[choice.day()]++));
    for (VanDay day : days) {
      if (perDay[day.number()] > MOST_A_DAY) {
        throw new FaultException(
            new Fault(
                "too-many-visits",
                Severity.STOP,
                Where.NOWHERE,
                Integer.toString(perDay[day.number()]),
                "at most " + MOST_A_DAY + " stops may ask for one day, on " + day.title(),
                "plan fewer days at once, or give bookings narrower dates"));
      }
    }
    if (bookings.size() > WeekRequest.MOST_BOOKINGS) {
      throw new FaultException(
          new Fault(
              "too-many-visits",
              Severity.STOP,
              Where.NOWHERE,
              Integer.toString(bookings.size()),
              "at most " + WeekRequest.MOST_BOOKINGS + " stops can be planned together",
              "plan fewer days at once"));
    }
  }

  private PreparedWeek shown(
      WeekRequest request,
      List<WeekStop> stops,
      WeekChoices choices,
      WeekPlaces places,
      Map<String, Integer> before) {
    List<Map<String, StopLabel>> labels = new ArrayList<>();
    days.forEach(day -> labels.add(new LinkedHashMap<>()));
    Map<String, StopLabel> byStop = new HashMap<>();
    Map<String, List<Booking>> parts = new HashMap<>();
    for (WeekStop stop : stops) {
      DraftStop draft = stop.draft();
      for (DraftChoice choice : draft.choices()) {
        StopLabel label = choices.label(stop, choice, days);
        labels.get(choice.day()).put(draft.id(), label);
        byStop.putIfAbsent(draft.id(), label);
      }
      byStop.computeIfAbsent(draft.id(), id -> choices.plain(stop));
      parts.put(draft.id(), stop.bookings());
    }
    return new PreparedWeek(days, request, places.labels(), labels, byStop, parts, before);
  }
}
