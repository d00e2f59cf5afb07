package dev.dogleg.schedule;

import dev.dogleg.itinerary.DayTerms;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WaterPlace;
import dev.dogleg.itinerary.WaterTerms;
import dev.dogleg.time.TimeWindow;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The doors of one day as plain arrays: for each visit its place, service and limits; then the
 * places of the start, of the end, and where water may be fetched, which has a service and no
 * limits.
 *
 * <p>{@link #service} is the least that rules leave; {@link #ways} are all ways to keep or pay for
 * liked hours, the first one keeps none.
 */
final class DayDoors {
  final int size;
  final List<Visit> visits;
  final int[] requestIndex;
  final int[] place;
  final int[] service;
  final int[][] arriveFrom;
  final int[][] arriveTo;
  final int[] doneBy;
  final int[][] vanFrom;
  final int[][] vanTo;
  final boolean[] first;
  final DoorLimits[][] ways;
  final DayRules rules;
  final ServedMinutes minutes;

  private DayDoors(
      List<Visit> visits, int[] requestIndex, int startPlace, int endPlace, DayTerms terms) {
    size = visits.size();
    List<WaterPlace> water = terms.water().map(WaterTerms::places).orElse(List.of());
    int nodes = size + 2 + water.size();
    this.visits = visits;
    this.requestIndex = requestIndex;
    place = new int[nodes];
    place[size] = startPlace;
    place[size + 1] = endPlace;
    service = new int[nodes];
    arriveFrom = new int[nodes][];
    arriveTo = new int[nodes][];
    doneBy = new int[nodes];
    vanFrom = new int[nodes][];
    vanTo = new int[nodes][];
    first = new boolean[nodes];
    ways = new DoorLimits[nodes][];
    for (int i = 0; i < size; i++) {
      place[i] = visits.get(i).place();
      service[i] = visits.get(i).serviceSeconds();
      first[i] = visits.get(i).first();
    }
    List<String> ids = visits.stream().map(Visit::id).toList();
    rules = new DayRules(ids, terms.rules());
    minutes = new ServedMinutes(Arrays.copyOf(service, size), ids, terms.rules());
    for (int i = 0; i < size; i++) {
      service[i] = minutes.least(i);
    }
    for (int w = 0; w < water.size(); w++) {
      int node = size + 2 + w;
      place[node] = water.get(w).place();
      service[node] = water.get(w).seconds();
      limit(node, DoorLimits.none());
    }
  }

  private void limit(int node, DoorLimits limits) {
    arriveFrom[node] = limits.arriveFrom;
    arriveTo[node] = limits.arriveTo;
    doneBy[node] = limits.doneBy;
    vanFrom[node] = limits.vanFrom;
    vanTo[node] = limits.vanTo;
    ways[node] = new DoorLimits[] {limits};
  }

  /**
   * The doors of a request's visits.
   *
   * @param given the request's visits
   * @param order which of them, in the order of their numbers here
   * @param startPlace place left in the morning
   * @param endPlace place reached at the end
   * @param terms liked hours and where water is
   */
  static DayDoors of(List<Visit> given, int[] order, int startPlace, int endPlace, DayTerms terms) {
    List<Visit> visits = IntStream.of(order).mapToObj(given::get).toList();
    DayDoors doors = new DayDoors(visits, order, startPlace, endPlace, terms);
    for (int i = 0; i < order.length; i++) {
      Visit visit = visits.get(i);
      DoorLimits hard =
          new DoorLimits(
              starts(visit.arriveWithin()),
              ends(visit.arriveWithin()),
              visit.doneBySeconds(),
              starts(visit.vanWithin()),
              ends(visit.vanWithin()),
              0);
      doors.limit(i, hard);
      if (!terms.rules().isEmpty()) {
        doors.ways[i] = hard.ways(visit.id(), terms.rules());
      }
    }
    return doors;
  }

  /** A copy with prices of liked hours times a scale; at 0 nobody needs to keep one. */
  private DayDoors(DayDoors doors, long scale) {
    size = doors.size;
    visits = doors.visits;
    requestIndex = doors.requestIndex;
    place = doors.place;
    service = doors.service;
    arriveFrom = doors.arriveFrom;
    arriveTo = doors.arriveTo;
    doneBy = doors.doneBy;
    vanFrom = doors.vanFrom;
    vanTo = doors.vanTo;
    first = doors.first;
    rules = doors.rules;
    minutes = doors.minutes;
    ways = doors.ways.clone();
    for (int i = 0; i < size; i++) {
      int count = scale == 0 ? 1 : ways[i].length;
      ways[i] = new DoorLimits[count];
      for (int w = 0; w < count; w++) {
        ways[i][w] = doors.ways[i][w].priced(scale);
      }
    }
  }

  /** {@return the same doors with liked hours at prices times {@code scale}} */
  DayDoors priced(long scale) {
    return new DayDoors(this, scale);
  }

  /** {@return the doors of some of the visits, in the order given} */
  DayDoors part(int[] some, DayTerms terms) {
    List<Visit> chosen = IntStream.of(some).mapToObj(visits::get).toList();
    int[] index = IntStream.of(some).map(visit -> requestIndex[visit]).toArray();
    DayDoors part = new DayDoors(chosen, index, place[size], place[size + 1], terms);
    for (int k = 0; k < some.length; k++) {
      part.limit(k, ways[some[k]][0]);
      part.ways[k] = ways[some[k]];
    }
    return part;
  }

  /** Visits at places 1..n with one arrival window each, inside a day of any unit of time. */
  static DayDoors plain(int[] open, int[] close, int endPlace, int from, int latestEnd) {
    int n = open.length;
    List<Visit> visits =
        IntStream.range(0, n)
            .mapToObj(i -> Visit.booked("%03d".formatted(i + 1), i + 1, 0))
            .toList();
    DayDoors doors =
        new DayDoors(visits, IntStream.range(0, n).toArray(), 0, endPlace, DayTerms.NONE);
    for (int i = 0; i < n; i++) {
      int[] vanFrom = {from};
      int[] vanTo = {latestEnd};
      doors.limit(
          i,
          new DoorLimits(new int[] {open[i]}, new int[] {close[i]}, latestEnd, vanFrom, vanTo, 0));
    }
    return doors;
  }

  /** Last second at which a door may be reached, and the service begun and ended in time. */
  int latestArrival(int visit) {
    return ways[visit][0].latestArrival(service[visit]);
  }

  /** First second at which a visit's service may start. */
  int earliestService(int visit) {
    return Math.max(arriveFrom[visit][0], vanFrom[visit][0]);
  }

  /** Last second at which a door may be left. */
  int latestLeave(int visit) {
    return ways[visit][0].latestLeave();
  }

  private static int[] starts(List<TimeWindow> windows) {
    return windows.stream().mapToInt(TimeWindow::fromSeconds).toArray();
  }

  private static int[] ends(List<TimeWindow> windows) {
    return windows.stream().mapToInt(TimeWindow::toSeconds).toArray();
  }
}
