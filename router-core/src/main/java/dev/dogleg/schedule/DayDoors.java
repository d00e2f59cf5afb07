package dev.dogleg.schedule;

import dev.dogleg.itinerary.Visit;
import dev.dogleg.time.TimeWindow;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The doors of one day as plain arrays: for each visit its place, service and limits; places of the
 * start and the end follow those of the visits.
 */
final class DayDoors {
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

  private DayDoors(List<Visit> visits, int[] requestIndex, int startPlace, int endPlace) {
    int n = visits.size();
    this.visits = visits;
    this.requestIndex = requestIndex;
    place = new int[n + 2];
    place[n] = startPlace;
    place[n + 1] = endPlace;
    service = new int[n];
    arriveFrom = new int[n][];
    arriveTo = new int[n][];
    doneBy = new int[n];
    vanFrom = new int[n][];
    vanTo = new int[n][];
    first = new boolean[n];
    for (int i = 0; i < n; i++) {
      place[i] = visits.get(i).place();
      service[i] = visits.get(i).serviceSeconds();
      first[i] = visits.get(i).first();
    }
  }

  /**
   * The doors of a request's visits.
   *
   * @param given the request's visits
   * @param order which of them, in the order of their numbers here
   * @param startPlace place left in the morning
   * @param endPlace place reached at the end
   */
  static DayDoors of(List<Visit> given, int[] order, int startPlace, int endPlace) {
    List<Visit> visits = IntStream.of(order).mapToObj(given::get).toList();
    DayDoors doors = new DayDoors(visits, order, startPlace, endPlace);
    for (int i = 0; i < order.length; i++) {
      Visit visit = visits.get(i);
      doors.arriveFrom[i] = starts(visit.arriveWithin());
      doors.arriveTo[i] = ends(visit.arriveWithin());
      doors.doneBy[i] = visit.doneBySeconds();
      doors.vanFrom[i] = starts(visit.vanWithin());
      doors.vanTo[i] = ends(visit.vanWithin());
    }
    return doors;
  }

  /** {@return the doors of some of the visits, in the order given} */
  DayDoors part(int[] some) {
    List<Visit> chosen = IntStream.of(some).mapToObj(visits::get).toList();
    int[] index = IntStream.of(some).map(visit -> requestIndex[visit]).toArray();
    DayDoors part = new DayDoors(chosen, index, place[place.length - 2], place[place.length - 1]);
    for (int k = 0; k < some.length; k++) {
      part.arriveFrom[k] = arriveFrom[some[k]];
      part.arriveTo[k] = arriveTo[some[k]];
      part.doneBy[k] = doneBy[some[k]];
      part.vanFrom[k] = vanFrom[some[k]];
      part.vanTo[k] = vanTo[some[k]];
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
    DayDoors doors = new DayDoors(visits, IntStream.range(0, n).toArray(), 0, endPlace);
    for (int i = 0; i < n; i++) {
      doors.arriveFrom[i] = new int[] {open[i]};
      doors.arriveTo[i] = new int[] {close[i]};
      doors.vanFrom[i] = new int[] {from};
      doors.vanTo[i] = new int[] {latestEnd};
      doors.doneBy[i] = latestEnd;
    }
    return doors;
  }

  /** Last second at which a door may be reached, and the service begun and ended in time. */
  int latestArrival(int visit) {
    int latest = arriveTo[visit][arriveTo[visit].length - 1];
    int latestDone = Math.min(doneBy[visit], latestLeave(visit));
    return Math.min(latest, latestDone - service[visit]);
  }

  /** First second at which a visit's service may start. */
  int earliestService(int visit) {
    return Math.max(arriveFrom[visit][0], vanFrom[visit][0]);
  }

  /** Last second at which a door may be left. */
  int latestLeave(int visit) {
    return vanTo[visit][vanTo[visit].length - 1];
  }

  private static int[] starts(List<TimeWindow> windows) {
    return windows.stream().mapToInt(TimeWindow::fromSeconds).toArray();
  }

  private static int[] ends(List<TimeWindow> windows) {
    return windows.stream().mapToInt(TimeWindow::toSeconds).toArray();
  }
}
