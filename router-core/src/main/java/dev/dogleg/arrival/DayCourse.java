package dev.dogleg.arrival;

import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.itinerary.ServiceSpread;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.time.TimeWindow;
import dev.dogleg.travel.TravelTimes;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * Lives through a planned day once for each value of its common factor, door by door.
 *
 * <p>What it holds true: home is left as planned; a door is left as soon as its service is done,
 * and not before the planned second where the plan lingers there; whoever is early waits for the
 * start of the window that the plan uses; the break and water stay at their place in the order, the
 * break not before its window; a day that runs late drops nothing.
 */
final class DayCourse {

  /** Decides at a door, knowing the arrival there, before which second no service starts. */
  interface Door {
    /**
     * @param visitId whose door
     * @param arrival when the van is there
     * @param earliestSeconds start of the window that the plan uses there
     * @return the second before which the service does not start, {@code earliestSeconds} or later
     */
    int serviceNotBefore(String visitId, ArrivalTime arrival, int earliestSeconds);
  }

  private final Map<String, Visit> visits;
  private final TravelTimes travel;
  private final CourseTerms terms;
  private final Optional<TimeWindow> breakStart;
  private final DayFactor factor;
  private final double[] paces;
  private final double[] traffics;

  DayCourse(
      Map<String, Visit> visits,
      TravelTimes travel,
      Optional<TimeWindow> breakStart,
      CourseTerms terms) {
    this.visits = visits;
    this.travel = travel;
    this.breakStart = breakStart;
    this.terms = terms;
    boolean shared = terms.day().paceLogSpread() > 0 || terms.day().trafficLogSpread() > 0;
    this.factor = DayFactor.of(shared ? terms.dayPoints() : 1);
    this.paces = scaled(terms.day().paceLogSpread());
    this.traffics = scaled(terms.day().trafficLogSpread());
  }

  private double[] scaled(double logSpread) {
    double[] scales = new double[factor.count()];
    for (int i = 0; i < scales.length; i++) {
      scales[i] = StrictMath.exp(logSpread * factor.point(i));
    }
    return scales;
  }

  /**
   * Lives through the events.
   *
   * @param stops events of a planned day, from {@code LEAVE} on
   * @param door asked at each visit's door in turn
   */
  void run(List<PlannedStop> stops, Door door) {
    List<TimeMass> ready = new ArrayList<>();
    PlannedStop before = stops.get(0);
    for (int i = 0; i < factor.count(); i++) {
      ready.add(TimeMass.at(before.leaveSeconds(), terms.stepSeconds()));
    }
    int notBefore = 0;
    boolean atDoor = false;
    for (PlannedStop stop : stops.subList(1, stops.size())) {
      if (stop.kind() == PlannedStop.Kind.HOME) {
        return;
      }
      if (stop.place() != before.place()) {
        ready = driven(ready, before.place(), stop.place());
        atDoor = false;
      }
      boolean breakFirst = stop.kind() == PlannedStop.Kind.BREAK && !follows(stop, before);
      if (breakFirst || (stop.kind() == PlannedStop.Kind.VISIT && !atDoor)) {
        notBefore = asked(stop, ready, door);
      }
      atDoor = breakFirst;
      switch (stop.kind()) {
        case VISIT -> ready = afterService(stop, waited(ready, notBefore), before);
        case BREAK -> ready = afterBreak(stop, ready);
        default -> ready = lasting(ready, stop.leaveSeconds() - stop.startSeconds());
      }
      before = stop;
    }
  }

  /** Whether a break follows the service of its own door. */
  private static boolean follows(PlannedStop stop, PlannedStop before) {
    return before.kind() == PlannedStop.Kind.VISIT && before.visitId().equals(stop.visitId());
  }

  private int asked(PlannedStop stop, List<TimeMass> arrivals, Door door) {
    Visit visit =
        Objects.requireNonNull(visits.get(stop.visitId()), "no visit of id " + stop.visitId());
    int earliest = windowStart(visit.arriveWithin(), stop);
    return door.serviceNotBefore(stop.visitId(), new ArrivalTime(arrivals, factor), earliest);
  }

  /** Start of the window that the planned arrival belongs to. */
  private static int windowStart(List<TimeWindow> windows, PlannedStop stop) {
    for (TimeWindow window : windows) {
      if (stop.arriveSeconds() <= window.toSeconds()) {
        return window.fromSeconds();
      }
    }
    return windows.get(windows.size() - 1).fromSeconds();
  }

  private List<TimeMass> driven(List<TimeMass> ready, int from, int to) {
    List<TimeMass> reached = new ArrayList<>(ready.size());
    for (int i = 0; i < ready.size(); i++) {
      double scale = traffics[i];
      reached.add(
          ready
              .get(i)
              .plusDepending(
                  second ->
                      scale * travel.driveSeconds(from, to, (int) Math.max(0, Math.round(second))),
                  5,
                  terms.day().legLogSpread()));
    }
    return reached;
  }

  private List<TimeMass> afterService(PlannedStop stop, List<TimeMass> starts, PlannedStop before) {
    int served = served(stop, before, visits.get(stop.visitId()));
    ServiceSpread spread = terms.services().get(stop.visitId());
    List<TimeMass> done = new ArrayList<>(starts.size());
    if (spread == null) {
      done.addAll(lasting(starts, served));
    } else {
      // What rules add to the plain service does not vary.
      int added = served - visits.get(stop.visitId()).serviceSeconds();
      double own = ownSpread(spread.logSpread());
      for (int i = 0; i < starts.size(); i++) {
        done.add(
            starts
                .get(i)
                .plusLognormal(spread.medianSeconds() * paces[i], own)
                .plus(spread.fixedSeconds() + added));
      }
    }
    boolean lingers = stop.leaveSeconds() - stop.startSeconds() > served;
    return lingers ? waited(done, stop.leaveSeconds()) : done;
  }

  /** Seconds of service as planned: the stay from its start less what the van lingers. */
  private static int served(PlannedStop stop, PlannedStop before, Visit visit) {
    boolean afterBreak =
        before.kind() == PlannedStop.Kind.BREAK && before.visitId().equals(stop.visitId());
    int waitedBefore =
        stop.startSeconds() - (afterBreak ? before.leaveSeconds() : stop.arriveSeconds());
    int lingered = Math.max(0, stop.waitSeconds() - waitedBefore);
    int served = stop.leaveSeconds() - stop.startSeconds() - lingered;
    return served > 0 ? served : visit.serviceSeconds();
  }

  /** A groom's own spread: what is seen over many days less what the day has in common. */
  private double ownSpread(double logSpread) {
    double shared = terms.day().paceLogSpread();
    double rest = logSpread * logSpread - shared * shared;
    return StrictMath.sqrt(Math.max(rest, logSpread * logSpread / 4));
  }

  private List<TimeMass> afterBreak(PlannedStop stop, List<TimeMass> ready) {
    int length = stop.leaveSeconds() - stop.startSeconds();
    int from = breakStart.map(TimeWindow::fromSeconds).orElse(0);
    return lasting(waited(ready, from), length);
  }

  private static List<TimeMass> lasting(List<TimeMass> starts, int seconds) {
    return starts.stream().map(start -> start.plus(seconds)).toList();
  }

  private static List<TimeMass> waited(List<TimeMass> times, int seconds) {
    return times.stream().map(time -> time.notBefore(seconds)).toList();
  }
}
