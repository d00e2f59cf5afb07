package dev.dogleg.cli.prepare;

import dev.dogleg.cli.export.PlaceLabel;
import dev.dogleg.fault.Fault;
import dev.dogleg.fault.Faults;
import dev.dogleg.fault.Severity;
import dev.dogleg.model.Business;
import dev.dogleg.model.Place;
import dev.dogleg.model.Van;
import dev.dogleg.roads.RoadNetwork;
import dev.dogleg.roads.RoadPoint;
import dev.dogleg.travel.TravelMatrix;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * All places of a run, numbered alike for every van, and each van's drives between them. A place
 * that one van cannot be put at keeps its number; nobody may be sent there with that van.
 */
final class WeekPlaces {
  private final Map<Place, Integer> numbers = new LinkedHashMap<>();
  private final List<Door> doors = new ArrayList<>();
  private final Map<String, boolean[]> known = new LinkedHashMap<>();
  private final Map<String, TravelMatrix> matrices = new LinkedHashMap<>();

  private WeekPlaces() {}

  /** A place that is needed, and what it does to the run where it cannot be found. */
  record Need(Place place, DoorSource source, Severity severity) {
    // Written out: what a record brings along spins classes at its first call, anew in each start.

    @Override
    public boolean equals(Object other) {
      return other instanceof Need need
          && place.equals(need.place)
          && source.equals(need.source)
          && severity == need.severity;
    }

    @Override
    public int hashCode() {
      return 31 * place.hashCode() + source.hashCode();
    }
  }

  /**
   * Finds places.
   *
   * @param needs places in order; the same place may be needed twice
   * @param vans vans in use
   * @param business whose
   * @param map the map
   * @param lookUps its addresses
   * @param faults takes what is wrong: one that a van finds and another does not needs a look only
   * @return the places that some van finds
   */
  static WeekPlaces find(
      List<Need> needs,
      List<Van> vans,
      Business business,
      MapInUse map,
      LookUps lookUps,
      Faults faults) {
    WeekPlaces places = new WeekPlaces();
    if (!vans.isEmpty()) {
      map.roads(VanCards.of(vans.get(0), business));
      lookUps.prepare(needs.stream().map(Need::place).toList());
    }
    Map<String, Map<Place, RoadPoint>> roadPoints = new LinkedHashMap<>();
    Map<Need, List<Fault>> heard = new LinkedHashMap<>();
    for (Van van : vans) {
      RoadNetwork roads = map.roads(VanCards.of(van, business));
      Map<Place, RoadPoint> found = new LinkedHashMap<>();
      for (Need need : needs) {
        Faults own = new Faults();
        new DoorFinder(lookUps, roads, own)
            .find(need.place(), need.source(), need.severity())
            .ifPresent(
                door -> {
                  places.add(need.place(), door);
                  found.putIfAbsent(need.place(), door.road());
                });
        heard.computeIfAbsent(need, key -> new ArrayList<>()).addAll(own.all());
      }
      roadPoints.put(van.id(), found);
    }
    places.tell(heard, faults);
    for (Van van : vans) {
      places.drives(van, roadPoints.get(van.id()), map.roads(VanCards.of(van, business)));
    }
    return places;
  }

  private void add(Place place, Door door) {
    if (numbers.putIfAbsent(place, doors.size()) == null) {
      doors.add(door);
    }
  }

  private void tell(Map<Need, List<Fault>> heard, Faults faults) {
    heard.forEach(
        (need, all) ->
            all.stream()
                .map(
                    fault ->
                        numbers.containsKey(need.place())
                                && fault.severity().compareTo(Severity.LOOK) < 0
                            ? fault.as(Severity.LOOK)
                            : fault)
                .distinct()
                .forEach(faults::add));
  }

  private void drives(Van van, Map<Place, RoadPoint> found, RoadNetwork roads) {
    boolean[] has = new boolean[doors.size()];
    List<RoadPoint> points = new ArrayList<>();
    for (Map.Entry<Place, Integer> entry : numbers.entrySet()) {
      RoadPoint point = found.get(entry.getKey());
      has[entry.getValue()] = point != null;
      // A place this van cannot be put at gets a number all the same; it is never used.
      points.add(point == null ? doors.get(entry.getValue()).road() : point);
    }
    known.put(van.id(), has);
    if (!points.isEmpty()) {
      matrices.put(van.id(), roads.matrix(points));
    }
  }

  /** Number of a place; empty where no van finds it. */
  OptionalInt number(Place place) {
    Integer number = numbers.get(place);
    return number == null ? OptionalInt.empty() : OptionalInt.of(number);
  }

  Optional<Door> door(Place place) {
    return Optional.ofNullable(numbers.get(place)).map(doors::get);
  }

  /** Whether a van can be put at a place, can be driven there from one place and on to another. */
  boolean reaches(Van van, int from, int place, int to) {
    boolean[] has = known.get(van.id());
    TravelMatrix matrix = matrices.get(van.id());
    return has[from]
        && has[place]
        && has[to]
        && matrix.reaches(from, place)
        && matrix.reaches(place, to);
  }

  TravelMatrix matrix(Van van) {
    return matrices.get(van.id());
  }

  /** Labels by number. */
  List<PlaceLabel> labels() {
    return doors.stream().map(door -> new PlaceLabel(door.address(), door.point())).toList();
  }
}
