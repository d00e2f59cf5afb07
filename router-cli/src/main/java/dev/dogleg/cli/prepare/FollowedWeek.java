package dev.dogleg.cli.prepare;

import dev.dogleg.cli.export.StopLabel;
import dev.dogleg.cli.terms.DraftChoice;
import dev.dogleg.cli.terms.StopTagger;
import dev.dogleg.cli.terms.VanDay;
import dev.dogleg.fault.FaultException;
import dev.dogleg.fault.Faults;
import dev.dogleg.groom.GroomTables;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WeekDay;
import dev.dogleg.model.Book;
import dev.dogleg.model.Booking;
import dev.dogleg.model.Client;
import dev.dogleg.model.Errand;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * The days of a plan as a person left it, under everything the book says: each row is a stop of the
 * day in which it stands, whether or not it may be there.
 */
public final class FollowedWeek {

  /**
   * A row of the plan that is a stop.
   *
   * @param day number of its van-day
   * @param bookings ids of its bookings, or of its errand
   */
  public record FollowedStop(int day, List<String> bookings) {
    /** Copies the list. */
    public FollowedStop {
      bookings = List.copyOf(bookings);
    }
  }

  private final List<PreparedDay> days = new ArrayList<>();
  private final List<List<String>> forbidden = new ArrayList<>();

  private FollowedWeek() {}

  /**
   * Makes the days.
   *
   * @param book the book
   * @param days van-days of the plan
   * @param rows rows that are stops; bookings and errands that the book does not have are passed
   *     over
   * @param tables groom tables in force
   * @param map the map
   * @param lookUps its addresses
   * @param where where things stand
   * @return the days
   * @throws FaultException where a start, an end or a water place cannot be found
   */
  public static FollowedWeek of(
      Book book,
      List<VanDay> days,
      List<FollowedStop> rows,
      GroomTables tables,
      MapInUse map,
      LookUps lookUps,
      RowFinder where) {
    Faults faults = new Faults();
    List<WeekStop> stops = stops(book, rows);
    WeekPlaces places =
        WeekPlaces.find(
            WeekNeeds.of(book, days, stops, where),
            VanDay.vans(days),
            book.business(),
            map,
            lookUps,
            faults);
    ZoneDistricts districts = ZoneDistricts.of(book.week().zones(), map, where, faults);
    if (faults.stops()) {
      throw new FaultException(faults.all());
    }
    WeekChoices choices =
        new WeekChoices(
            book,
            new StopMinutes(tables, book),
            new StopTagger(tables, book),
            places,
            EarlierPlan.NONE);
    stops.forEach(stop -> choices.add(stop, days));
    List<WeekStop> reached =
        stops.stream().filter(stop -> !stop.draft().choices().isEmpty()).toList();
    Map<WeekStop, DraftChoice> asked = new HashMap<>();
    reached.forEach(stop -> asked.put(stop, stop.draft().choices().iterator().next()));
    // What the terms have to say besides breaches was said when the plan was made.
    WeekTerms terms =
        new WeekTerms(
            book,
            tables,
            days,
            reached,
            places,
            districts,
            EarlierPlan.NONE,
            where,
            true,
            new Faults());
    List<WeekDay> weekDays = terms.days();
    FollowedWeek week = new FollowedWeek();
    for (VanDay day : days) {
      week.add(day, weekDays.get(day.number()), reached, asked, choices, terms, places, days);
    }
    return week;
  }

  private static List<WeekStop> stops(Book book, List<FollowedStop> rows) {
    Map<String, Client> clients = book.clientsById();
    Map<String, Booking> bookings =
        book.bookings().stream().collect(Collectors.toMap(Booking::id, one -> one));
    Map<String, Errand> errands =
        book.week().errands().stream().collect(Collectors.toMap(Errand::id, one -> one));
    List<WeekStop> stops = new ArrayList<>();
    Map<String, Boolean> seen = new HashMap<>();
    for (FollowedStop row : rows) {
      Map<String, List<Booking>> byClient = new LinkedHashMap<>();
      for (String id : row.bookings()) {
        if (seen.putIfAbsent(row.day() + " " + id, true) != null) {
          continue;
        }
        Booking booking = bookings.get(id);
        if (booking != null) {
          byClient.computeIfAbsent(booking.clientId(), key -> new ArrayList<>()).add(booking);
        } else if (errands.containsKey(id)) {
          stops.add(WeekStop.of(errands.get(id), Map.of(row.day(), 0)));
        }
      }
      byClient.forEach(
          (client, some) ->
              stops.add(WeekStop.of(clients.get(client), some, Map.of(row.day(), 0))));
    }
    return stops;
  }

  private void add(
      VanDay day,
      WeekDay weekDay,
      List<WeekStop> stops,
      Map<WeekStop, DraftChoice> asked,
      WeekChoices choices,
      WeekTerms terms,
      WeekPlaces places,
      List<VanDay> all) {
    List<Visit> visits = new ArrayList<>();
    Map<String, StopLabel> labels = new LinkedHashMap<>();
    Map<String, List<Booking>> parts = new LinkedHashMap<>();
    List<String> breaches = new ArrayList<>();
    for (WeekStop stop : stops) {
      DraftChoice choice = asked.get(stop);
      if (choice.day() != day.number()) {
        continue;
      }
      if (stop.draft().choices().isEmpty()) {
        breaches.add(
            stop.draft().name()
                + ": forbidden on this day by "
                + String.join(", ", stop.draft().removedBy())
                + ". [rule]");
        stop.draft().add(choice);
      }
      visits.add(stop.draft().booking().choices().get(0).visit());
      labels.put(stop.draft().id(), choices.label(stop, choice, all));
      parts.put(stop.draft().id(), stop.bookings());
    }
    DayRequest request =
        new DayRequest(
            weekDay.shift(),
            visits,
            weekDay.travel(),
            terms.prices(),
            weekDay.terms(),
            1,
            DayRequest.USUAL_EFFORT);
    days.add(
        new PreparedDay(day.groomer(), day.van().name(), request, places.labels(), labels, parts));
    forbidden.add(List.copyOf(breaches));
  }

  /**
   * A day.
   *
   * @param number number of the van-day
   * @return the stops that stand in it, under its terms
   */
  public PreparedDay day(int number) {
    return days.get(number);
  }

  /**
   * Stops that a rule or zone forbids on their day, each a sentence.
   *
   * @param number number of the van-day
   * @return what is forbidden
   */
  public List<String> forbidden(int number) {
    return forbidden.get(number);
  }

  /**
   * Whether a booking may be made on a van-day by its dates, its moves and its crew.
   *
   * @param book the book
   * @param days van-days
   * @param booking the booking
   * @param number number of the van-day
   * @return true where it may
   */
  public static boolean mayBeOn(Book book, List<VanDay> days, Booking booking, int number) {
    return new WeekStops(book, days, EarlierPlan.NONE).days(booking).containsKey(number);
  }
}
