package dev.dogleg.cli.prepare;

import dev.dogleg.cli.export.PlaceLabel;
import dev.dogleg.cli.export.StopLabel;
import dev.dogleg.fault.Fault;
import dev.dogleg.fault.FaultException;
import dev.dogleg.fault.Faults;
import dev.dogleg.fault.Severity;
import dev.dogleg.fault.Where;
import dev.dogleg.groom.GroomTables;
import dev.dogleg.groom.Learned;
import dev.dogleg.itinerary.BreakRule;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.DayShift;
import dev.dogleg.itinerary.Prices;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.model.Book;
import dev.dogleg.model.Booking;
import dev.dogleg.model.Business;
import dev.dogleg.model.Client;
import dev.dogleg.model.Groomer;
import dev.dogleg.model.WallSpan;
import dev.dogleg.model.Worth;
import dev.dogleg.time.WorkDay;
import dev.dogleg.travel.BandedTravelTimes;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Makes requests for days out of a book and a map.
 *
 * <p>Made once a run: all doors are found then and all faults are known; afterwards days are asked
 * for, one groomer at a time.
 */
public final class Preparation {
  private final Book book;
  private final Calendar calendar;
  private final RowFinder rows;
  private final Map<String, Client> clients;
  private final StopMinutes minutes;
  private final Learned learned;
  private final Map<String, Doors> doorsOfGroomer = new LinkedHashMap<>();

  private Preparation(Book book, Calendar calendar, GroomTables tables, RowFinder rows) {
    this.book = book;
    this.calendar = calendar;
    this.rows = rows;
    this.clients = book.clientsById();
    this.minutes = new StopMinutes(tables, book);
    this.learned = tables.learned();
  }

  /**
   * Finds every door that the bookings need.
   *
   * @param book the book
   * @param bookings those that may be planned
   * @param calendar which booking belongs to which day
   * @param tables groom tables in force
   * @param map the map
   * @param lookUps its addresses
   * @param rows where things stand
   * @param faults takes what is wrong; a client that cannot be placed is set aside, or stops the
   *     run where a time was told
   * @return the preparation; without doors where a groomer's home cannot be found
   * @throws FaultException where the map cannot be used
   */
  public static Preparation of(
      Book book,
      List<Booking> bookings,
      Calendar calendar,
      GroomTables tables,
      MapInUse map,
      LookUps lookUps,
      RowFinder rows,
      Faults faults) {
    Preparation made = new Preparation(book, calendar, tables, rows);
    made.findDoors(bookings, map, lookUps, faults);
    return made;
  }

  private void findDoors(List<Booking> bookings, MapInUse map, LookUps lookUps, Faults faults) {
    Map<String, Severity> severity = new LinkedHashMap<>();
    for (Booking booking : bookings) {
      Severity one = booking.told().isPresent() ? Severity.STOP : Severity.ASIDE;
      severity.merge(booking.clientId(), one, (a, b) -> a == Severity.STOP ? a : b);
    }
    List<Client> needed =
        book.clients().stream().filter(client -> severity.containsKey(client.id())).toList();
    Map<String, Faults> heard = new LinkedHashMap<>();
    Business business = book.business();
    for (Groomer groomer : business.groomers()) {
      Faults own = new Faults();
      heard.put(groomer.id(), own);
      Doors.find(
              groomer,
              needed,
              lookUps,
              map.roads(VanCards.of(business.vanOf(groomer), business)),
              rows,
              severity,
              own)
          .ifPresent(doors -> doorsOfGroomer.put(groomer.id(), doors));
    }
    tell(heard, faults);
  }

  /** A door that one van cannot reach and another can needs a look, no more. */
  private void tell(Map<String, Faults> heard, Faults faults) {
    List<Fault> told = new ArrayList<>();
    for (Faults own : heard.values()) {
      for (Fault fault : own.all()) {
        Optional<Client> client = clientAt(fault);
        boolean elsewhere =
            client.isPresent()
                && doorsOfGroomer.values().stream()
                    .anyMatch(doors -> doors.placeOf(client.get().id()).isPresent());
        boolean outOfReach = fault.severity().compareTo(Severity.LOOK) < 0;
        Fault said = outOfReach && elsewhere ? fault.as(Severity.LOOK) : fault;
        if (!told.contains(said)) {
          told.add(said);
          faults.add(said);
        }
      }
    }
  }

  private Optional<Client> clientAt(Fault fault) {
    return book.clients().stream()
        .filter(
            client ->
                rows.client(client.id()).file().equals(fault.where().file())
                    && rows.client(client.id()).row() == fault.where().row())
        .findFirst();
  }

  /**
   * Whether any groomer can drive to a client.
   *
   * @param clientId the client
   * @return false where it was set aside
   */
  public boolean placed(String clientId) {
    return doorsOfGroomer.values().stream().anyMatch(doors -> doors.placeOf(clientId).isPresent());
  }

  /**
   * One groomer's day.
   *
   * @param groomer who works that day
   * @param date the day
   * @param bookings bookings possible on it, in the book's order
   * @param seed seed of the run
   * @param effort limit in solver steps
   * @param faults takes bookings that contradict each other
   * @return the request with its labels
   * @throws FaultException where the day has more visits than can be planned
   */
  public PreparedDay day(
      Groomer groomer,
      LocalDate date,
      List<Booking> bookings,
      long seed,
      long effort,
      Faults faults) {
    WorkDay day = new WorkDay(date, book.business().zone());
    Doors doors = doorsOfGroomer.get(groomer.id());
    List<DayStop> stops =
        new DayStops(calendar, clients, rows::booking, faults)
            .of(
                bookings.stream()
                    .filter(booking -> doors.placeOf(booking.clientId()).isPresent())
                    .toList(),
                day);
    if (stops.size() > DayRequest.MOST_VISITS) {
      throw new FaultException(tooMany(date, stops.size()));
    }
    List<Integer> numbers = new ArrayList<>(List.of(0));
    List<Visit> visits = new ArrayList<>();
    Map<String, StopLabel> labels = new LinkedHashMap<>();
    Map<String, List<Booking>> parts = new LinkedHashMap<>();
    for (DayStop stop : stops) {
      int number = doors.placeOf(stop.client().id()).orElseThrow();
      int seconds = minutes.plannedSeconds(minutes.of(groomer, stop, date));
      if (!numbers.contains(number)) {
        numbers.add(number);
      }
      Visit visit = VisitMaker.of(stop, numbers.indexOf(number), seconds, book);
      visits.add(visit);
      labels.put(visit.id(), Labels.of(stop, seconds, doors.place(number), book));
      parts.put(visit.id(), stop.bookings());
    }
    DayRequest request =
        new DayRequest(
            shift(groomer, day),
            visits,
            new BandedTravelTimes(
                doors.matrix().part(numbers.stream().mapToInt(n -> n).toArray()),
                Traffic.bands(day, learned)),
            prices(book.business().worth()),
            seed,
            effort);
    List<PlaceLabel> places =
        numbers.stream()
            .map(doors::place)
            .map(door -> new PlaceLabel(door.address(), door.point()))
            .toList();
    return new PreparedDay(
        groomer, book.business().vanOf(groomer).name(), request, places, labels, parts);
  }

  private static Fault tooMany(LocalDate date, int visits) {
    return new Fault(
        "too-many-visits",
        Severity.STOP,
        Where.NOWHERE,
        Integer.toString(visits),
        "at most " + DayRequest.MOST_VISITS + " visits of one day can be planned, on " + date,
        "give some of them another date");
  }

  private DayShift shift(Groomer groomer, WorkDay day) {
    Business business = book.business();
    WallSpan hours = groomer.hoursOn(day.date()).orElseThrow();
    return new DayShift(
        groomer.id(),
        groomer.vanId(),
        day,
        0,
        0,
        hours.on(day),
        business.overtimeSeconds(),
        business
            .dailyBreak()
            .map(wish -> new BreakRule(wish.lengthSeconds(), wish.startWithin().on(day))));
  }

  private static Prices prices(Worth worth) {
    return new Prices(
        worth.kilometreSeconds(),
        worth.waitingMinuteSeconds(),
        worth.overtimeMinuteSeconds(),
        worth.endMinuteSeconds());
  }
}
