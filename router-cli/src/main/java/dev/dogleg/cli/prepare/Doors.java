package dev.dogleg.cli.prepare;

import dev.dogleg.fault.Fault;
import dev.dogleg.fault.Faults;
import dev.dogleg.fault.Severity;
import dev.dogleg.fault.Where;
import dev.dogleg.model.Client;
import dev.dogleg.model.Groomer;
import dev.dogleg.roads.RoadNetwork;
import dev.dogleg.roads.RoadPoint;
import dev.dogleg.travel.TravelMatrix;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The doors one groomer can drive to from home and back, and the drives between them.
 *
 * <p>Place 0 is home; the others are {@link #placeOf}.
 */
final class Doors {
  private final List<Door> places = new ArrayList<>();
  private final Map<String, Integer> placeOfClient = new LinkedHashMap<>();
  private final TravelMatrix matrix;

  private Doors(Door home, Map<String, Door> found, TravelMatrix matrix) {
    places.add(home);
    found.forEach(
        (client, door) -> {
          placeOfClient.put(client, places.size());
          places.add(door);
        });
    this.matrix = matrix;
  }

  /**
   * Finds the doors of a groomer's clients.
   *
   * @param groomer who drives
   * @param clients whose doors are needed
   * @param lookUps addresses
   * @param roads roads for the groomer's van
   * @param rows where things stand
   * @param severity what a client that cannot be reached does to the run, by client id
   * @param faults takes what is wrong
   * @return the doors; empty where home itself cannot be found (a fault that stops)
   */
  static Optional<Doors> find(
      Groomer groomer,
      List<Client> clients,
      LookUps lookUps,
      RoadNetwork roads,
      RowFinder rows,
      Map<String, Severity> severity,
      Faults faults) {
    DoorFinder finder = new DoorFinder(lookUps, roads, faults);
    Optional<Door> home =
        finder.find(groomer.home(), DoorSource.home(rows.home(groomer.id())), Severity.STOP);
    Map<String, Door> found = new LinkedHashMap<>();
    for (Client client : clients) {
      finder
          .find(
              client.place(),
              DoorSource.client(rows.client(client.id())),
              severity.get(client.id()))
          .ifPresent(door -> found.put(client.id(), door));
    }
    if (home.isEmpty()) {
      return Optional.empty();
    }
    List<RoadPoint> points = new ArrayList<>();
    points.add(home.get().road());
    found.values().forEach(door -> points.add(door.road()));
    TravelMatrix matrix = roads.matrix(points);
    Doors doors = new Doors(home.get(), found, matrix);
    for (Client client : clients) {
      Integer place = doors.placeOfClient.get(client.id());
      if (place != null && !(matrix.reaches(0, place) && matrix.reaches(place, 0))) {
        doors.placeOfClient.remove(client.id());
        faults.add(
            unreachable(
                doors.places.get(place),
                matrix.reaches(0, place),
                DoorSource.client(rows.client(client.id())).cell(client.place().pin().isPresent()),
                severity.get(client.id())));
      }
    }
    return Optional.of(doors);
  }

  private static Fault unreachable(Door door, boolean thereYes, Where cell, Severity severity) {
    return new Fault(
        "unreachable",
        severity,
        cell,
        door.address(),
        thereYes
            ? "the van can drive there but not back home"
            : "no road that the van may use leads there from home",
        "put the pin on the right side of the water, gate or bridge");
  }

  /**
   * Place number of a client.
   *
   * @param clientId the client
   * @return its place; empty where the groomer cannot drive there
   */
  Optional<Integer> placeOf(String clientId) {
    return Optional.ofNullable(placeOfClient.get(clientId));
  }

  /** {@return a place by its number} */
  Door place(int number) {
    return places.get(number);
  }

  /** {@return drives between all places} */
  TravelMatrix matrix() {
    return matrix;
  }
}
