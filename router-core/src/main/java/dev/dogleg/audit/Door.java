package dev.dogleg.audit;

import dev.dogleg.itinerary.Visit;
import dev.dogleg.time.TimeWindow;
import java.util.List;

/**
 * What binds the van at one door. Its limits may be loosened, to ask by how much a rule is missed.
 *
 * @param place number of the place
 * @param serviceSeconds length of the service
 * @param arriveWithin windows for arrival, sorted and apart
 * @param doneBySeconds last second at which the service may end
 * @param vanWithin spans of which one holds the whole stay
 */
record Door(
    int place,
    int serviceSeconds,
    List<TimeWindow> arriveWithin,
    int doneBySeconds,
    List<TimeWindow> vanWithin) {

  /** The door of a visit or water stop of a plan; the latter has no limits. */
  static Door of(Row row) {
    return row.visit() == null
        ? free(row.place(), row.lengthSeconds())
        : of(row.visit(), row.lengthSeconds());
  }

  /** A place without limits. */
  static Door free(int place, int seconds) {
    return new Door(place, seconds, Visit.ANY_TIME, TimeWindow.DAY_END, Visit.ANY_TIME);
  }

  static Door of(Visit visit, int servedSeconds) {
    return new Door(
        visit.place(),
        servedSeconds,
        visit.arriveWithin(),
        visit.doneBySeconds(),
        visit.vanWithin());
  }

  Door arriving(List<TimeWindow> windows) {
    return new Door(place, serviceSeconds, windows, doneBySeconds, vanWithin);
  }

  Door doneBy(int seconds) {
    return new Door(place, serviceSeconds, arriveWithin, seconds, vanWithin);
  }

  Door staying(List<TimeWindow> windows) {
    return new Door(place, serviceSeconds, arriveWithin, doneBySeconds, windows);
  }

  int latestArrivalSeconds() {
    return arriveWithin.get(arriveWithin.size() - 1).toSeconds();
  }

  /** {@return the start of the first window that is not over at an arrival; late: the arrival} */
  int windowStart(int arriveSeconds) {
    for (TimeWindow window : arriveWithin) {
      if (arriveSeconds <= window.toSeconds()) {
        return window.fromSeconds();
      }
    }
    return arriveSeconds;
  }
}
