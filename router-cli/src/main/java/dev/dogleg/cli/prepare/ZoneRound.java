package dev.dogleg.cli.prepare;

import dev.dogleg.cli.prepare.WeekPlaces.Need;
import dev.dogleg.fault.Faults;
import dev.dogleg.fault.Severity;
import dev.dogleg.model.Book;
import dev.dogleg.model.Client;
import dev.dogleg.model.GeoPoint;
import dev.dogleg.model.Van;
import dev.dogleg.model.Zone;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * The round as its zones cut it: every client of the book with the zones that hold its door, and
 * what area each zone covers.
 *
 * @param clients clients whose door was found, in the book's order
 * @param areas polygons of each zone, in the order of the zones; empty for one that is said by
 *     postcodes or minutes alone
 */
public record ZoneRound(List<ZonedClient> clients, List<Optional<Geometry>> areas) {

  /**
   * A client with the zones that hold its door.
   *
   * @param client the client
   * @param point the door
   * @param zones numbers of the zones, ascending
   */
  public record ZonedClient(Client client, GeoPoint point, List<Integer> zones) {
    /** Copies the list. */
    public ZonedClient {
      zones = List.copyOf(zones);
    }
  }

  /** Copies the lists. */
  public ZoneRound {
    clients = List.copyOf(clients);
    areas = List.copyOf(areas);
  }

  /**
   * Finds all clients' doors and their zones.
   *
   * @param book a book with zones
   * @param map the map
   * @param lookUps its addresses
   * @param rows where things stand
   * @param faults takes what is wrong: a client whose door is not found is left out; a place or a
   *     district of a zone that is not found stops the run
   * @return the round; empty where a fault stops the run
   * @throws dev.dogleg.fault.FaultException where the map cannot be used
   */
  public static Optional<ZoneRound> of(
      Book book, MapInUse map, LookUps lookUps, RowFinder rows, Faults faults) {
    List<Need> needs = new ArrayList<>();
    for (Client client : book.clients()) {
      needs.add(
          new Need(client.place(), DoorSource.client(rows.client(client.id())), Severity.ASIDE));
    }
    WeekNeeds.zones(needs, book, rows);
    List<Van> vans =
        book.business().groomers().stream().map(book.business()::vanOf).distinct().toList();
    List<Zone> zones = book.week().zones();
    WeekPlaces places = WeekPlaces.find(needs, vans, book.business(), map, lookUps, faults);
    ZoneDistricts districts = ZoneDistricts.of(zones, map, rows, faults);
    if (faults.stops()) {
      return Optional.empty();
    }
    InZone in = new InZone(places, districts, vans);
    List<ZonedClient> clients = new ArrayList<>();
    for (Client client : book.clients()) {
      places
          .door(client.place())
          .ifPresent(door -> clients.add(zoned(client, door.point(), zones, in)));
    }
    return Optional.of(
        new ZoneRound(clients, zones.stream().map(zone -> area(zone, districts)).toList()));
  }

  private static ZonedClient zoned(Client client, GeoPoint point, List<Zone> zones, InZone in) {
    List<Integer> numbers = new ArrayList<>();
    for (int zone = 0; zone < zones.size(); zone++) {
      if (in.holds(zones.get(zone), client.place())) {
        numbers.add(zone);
      }
    }
    return new ZonedClient(client, point, numbers);
  }

  private static Optional<Geometry> area(Zone zone, ZoneDistricts districts) {
    List<Geometry> parts = new ArrayList<>(districts.areas(zone));
    zone.area().ifPresent(parts::add);
    return parts.isEmpty() ? Optional.empty() : Optional.of(OverlayNGRobust.union(parts));
  }

  /** {@return clients by id} */
  public Map<String, ZonedClient> byId() {
    Map<String, ZonedClient> byId = new LinkedHashMap<>();
    clients.forEach(one -> byId.put(one.client().id(), one));
    return byId;
  }
}
