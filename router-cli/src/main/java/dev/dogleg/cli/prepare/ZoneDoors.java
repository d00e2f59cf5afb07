package dev.dogleg.cli.prepare;

import dev.dogleg.cli.prepare.WeekPlaces.Need;
import dev.dogleg.fault.Faults;
import dev.dogleg.fault.Severity;
import dev.dogleg.model.Book;
import dev.dogleg.model.Business;
import dev.dogleg.model.Client;
import dev.dogleg.model.GeoPoint;
import dev.dogleg.model.Place;
import dev.dogleg.model.Van;
import dev.dogleg.model.Zone;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Which doors of a book's clients lie in which zone: what a zone is, to whoever asks about it
 * before the caller's address is known.
 *
 * <p>All clients count, also those without a booking. Doors are distinct by their point.
 */
public final class ZoneDoors {
  /** Name of the one zone of a book that has none. */
  public static final String EVERYWHERE = "everywhere";

  private final Map<String, List<Place>> doors;
  private final List<Place> outside;

  private ZoneDoors(Map<String, List<Place>> doors, List<Place> outside) {
    this.doors = doors;
    this.outside = List.copyOf(outside);
  }

  /**
   * Finds all clients' doors and sorts them by zone.
   *
   * @param book the book
   * @param map the map
   * @param lookUps its addresses
   * @param rows where things stand
   * @param faults takes what is wrong: a client whose door is not found is left out, a place from
   *     which a zone counts its minutes and or a district that is not found stops the run
   * @return the doors; empty where a fault stops the run
   * @throws dev.dogleg.fault.FaultException where the map cannot be used
   */
  public static Optional<ZoneDoors> of(
      Book book, MapInUse map, LookUps lookUps, RowFinder rows, Faults faults) {
    List<Need> needs = new ArrayList<>();
    for (Client client : book.clients()) {
      needs.add(
          new Need(client.place(), DoorSource.client(rows.client(client.id())), Severity.ASIDE));
    }
    WeekNeeds.zones(needs, book, rows);
    Business business = book.business();
    List<Van> vans = business.groomers().stream().map(business::vanOf).distinct().toList();
    WeekPlaces places = WeekPlaces.find(needs, vans, business, map, lookUps, faults);
    ZoneDistricts districts = ZoneDistricts.of(book.week().zones(), map, rows, faults);
    if (faults.stops()) {
      return Optional.empty();
    }
    List<Place> found = distinct(book.clients(), places);
    List<Zone> zones = book.week().zones();
    Map<String, List<Place>> doors = new LinkedHashMap<>();
    if (zones.isEmpty()) {
      doors.put(EVERYWHERE, found);
      return Optional.of(new ZoneDoors(doors, List.of()));
    }
    InZone in = new InZone(places, districts, vans);
    for (Zone zone : zones) {
      doors.put(zone.name(), found.stream().filter(place -> in.holds(zone, place)).toList());
    }
    List<Place> outside =
        found.stream()
            .filter(place -> doors.values().stream().noneMatch(some -> some.contains(place)))
            .toList();
    return Optional.of(new ZoneDoors(doors, outside));
  }

  private static List<Place> distinct(List<Client> clients, WeekPlaces places) {
    Map<GeoPoint, Place> byPoint = new LinkedHashMap<>();
    for (Client client : clients) {
      places
          .door(client.place())
          .ifPresent(door -> byPoint.putIfAbsent(door.point(), client.place()));
    }
    return List.copyOf(byPoint.values());
  }

  /** {@return names of the zones in the book's order; {@link #EVERYWHERE} alone without zones} */
  public List<String> zones() {
    return List.copyOf(doors.keySet());
  }

  /**
   * The doors of a zone.
   *
   * @param zone its name
   * @return distinct doors in the order of the clients; none where no client lives there
   * @throws IllegalArgumentException where there is no such zone
   */
  public List<Place> doors(String zone) {
    List<Place> some = doors.get(zone);
    if (some == null) {
      throw new IllegalArgumentException("no such zone: " + zone);
    }
    return some;
  }

  /** {@return distinct doors that lie in no zone; none where the book has no zones} */
  public List<Place> outside() {
    return outside;
  }
}
