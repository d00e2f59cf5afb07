package dev.dogleg.cli.prepare;

import dev.dogleg.groom.GroomTables;
import dev.dogleg.groom.ServiceTime;
import dev.dogleg.itinerary.ServiceSpread;
import dev.dogleg.model.Book;
import dev.dogleg.model.Booking;
import dev.dogleg.model.Client;
import dev.dogleg.model.DayLimits;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** How much the visits of a day vary, by the groom tables. */
public final class Spreads {
  private final StopMinutes minutes;
  private final Map<String, Client> clients;

  /**
   * Spreads of a book.
   *
   * @param tables groom tables in force
   * @param book the book
   */
  public Spreads(GroomTables tables, Book book) {
    this.minutes = new StopMinutes(tables, book);
    this.clients = book.clientsById();
  }

  /**
   * Spreads of a day's visits.
   *
   * @param day the day
   * @return spread by visit id; none for an errand, which lasts as planned
   */
  public Map<String, ServiceSpread> of(PreparedDay day) {
    LocalDate date = day.request().shift().day().date();
    Map<String, ServiceSpread> spreads = new LinkedHashMap<>();
    day.bookings()
        .forEach(
            (visit, bookings) -> {
              if (!bookings.isEmpty()) {
                spreads.put(visit, spread(day, bookings, date));
              }
            });
    return spreads;
  }

  private ServiceSpread spread(PreparedDay day, List<Booking> bookings, LocalDate date) {
    Client client = clients.get(bookings.get(0).clientId());
    DayStop stop = new DayStop(client, bookings, DayLimits.NONE, true);
    ServiceTime time = minutes.of(day.groomer(), stop, date).time();
    return new ServiceSpread(time.fixedSeconds(), time.medianSeconds(), time.logSpread());
  }
}
