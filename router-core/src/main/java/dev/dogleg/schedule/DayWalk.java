package dev.dogleg.schedule;

import dev.dogleg.itinerary.PlannedStop;
import java.util.ArrayList;
import java.util.List;

/**
 * Walks one order whose least cost, end and place of the break are known, and states its events.
 *
 * <p>Maintainers: {@code spent} is the scaled cost up to being ready at a door; the rest of the day
 * from a leaving second comes from {@link OrderChain}.
 */
final class DayWalk {
  private final DayModel day;
  private final DayModel tied;
  private final OrderChain chain;
  private final int[] order;
  private final int slot;
  private final long cost;
  private final int end;
  private final SpareTime spare;
  private final List<PlannedStop> stops = new ArrayList<>();

  DayWalk(
      DayModel day, DayModel tied, OrderChain chain, int[] order, int slot, long cost, int end) {
    this.day = day;
    this.tied = tied;
    this.chain = chain;
    this.order = order;
    this.slot = slot;
    this.cost = cost;
    this.end = end;
    this.spare = new SpareTime(day, order, slot);
  }

  List<PlannedStop> stops() {
    int busy = slot == OrderChain.NO_SLOT ? 0 : day.breakLength;
    for (int visit : order) {
      busy += day.doors.service[visit];
    }
    int leave = end - busy - Math.toIntExact(cost % day.tieScale());
    stops.add(
        event(PlannedStop.Kind.LEAVE, -1, leave, leave, leave, -1, 0, spare.ofLeaving(leave)));
    long spent = 0;
    for (int k = 0; k < order.length; k++) {
      int from = k == 0 ? day.start() : order[k - 1];
      int drive = day.drive(from, order[k], leave);
      spent += tied.legPrice(from, order[k]) + tied.drivePrice() * drive;
      Stay stay = new Stay(k, leave + drive);
      spent += tied.waitPrice() * (stay.ready - stay.arrive - stay.busy());
      leave = leaveAt(k, stay.ready, stay.vanTo, spent);
      spent += tied.waitPrice() * (leave - stay.ready);
      stay.state(drive, from, leave);
    }
    int last = order[order.length - 1];
    int drive = day.drive(last, day.end(), leave);
    stops.add(
        event(PlannedStop.Kind.HOME, order.length, end, end, end, last, drive, spare.ofEnd(end)));
    return stops;
  }

  /** The earliest leaving second that still leads to the best cost and end. */
  private int leaveAt(int k, int ready, int vanTo, long spent) {
    boolean last = k == order.length - 1;
    int next = last ? day.end() : order[k + 1];
    boolean taken = slot != OrderChain.NO_SLOT && slot <= 2 * k;
    for (int t = ready; t <= vanTo; t = day.steadyUntil(order[k], next, t) + 1) {
      if (leads(k, t, taken, spent + tied.waitPrice() * (t - ready))) {
        return t;
      }
      int until = Math.min(day.steadyUntil(order[k], next, t), vanTo);
      if (!last) {
        int drive = day.drive(order[k], next, t);
        for (int vanFrom : day.doors.vanFrom[next]) {
          int leave = vanFrom - drive;
          if (leave > t
              && leave <= until
              && leads(k, leave, taken, spent + tied.waitPrice() * (leave - ready))) {
            return leave;
          }
        }
      }
      if (until >= vanTo) {
        break;
      }
    }
    throw new IllegalStateException("no leaving of stop " + k + " keeps the best cost");
  }

  private boolean leads(int k, int t, boolean taken, long spent) {
    return chain.runFrom(k, t, t, t, taken, slot, spent)
        && chain.bestCost() == cost
        && chain.bestEnd() == end;
  }

  private PlannedStop event(
      PlannedStop.Kind kind,
      int k,
      int arrive,
      int start,
      int leave,
      int from,
      int drive,
      int spareSeconds) {
    int node = k < 0 ? day.start() : k == order.length ? day.end() : order[k];
    boolean door = node < day.size();
    return new PlannedStop(
        kind,
        day.doors.place[node],
        door ? day.visit(node).id() : "",
        arrive,
        start,
        leave,
        drive,
        from < 0 ? 0 : day.travel.lengthMetres(day.doors.place[from], day.doors.place[node]),
        0,
        spareSeconds);
  }

  /** One stay at a door: arrival, perhaps the break, service, perhaps the break, ready. */
  private final class Stay {
    private final int k;
    private final int arrive;
    private final int breakStart;
    private final int serviceStart;
    private final int serviceEnd;
    private final int ready;
    private final int vanTo;
    private final boolean breakBefore;
    private final boolean breakAfter;

    Stay(int k, int arrive) {
      int visit = order[k];
      this.k = k;
      this.arrive = arrive;
      breakBefore = slot >= 0 && slot == 2 * k - 1;
      breakAfter = slot >= 0 && slot == 2 * k;
      int w = 0;
      while (day.doors.arriveTo[visit][w] < arrive) {
        w++;
      }
      int v = 0;
      while (day.doors.vanTo[visit][v] < arrive) {
        v++;
      }
      vanTo = day.doors.vanTo[visit][v];
      int free = arrive;
      int breakAt = 0;
      if (breakBefore) {
        breakAt = Math.max(arrive, day.breakFrom);
        free = breakAt + day.breakLength;
      }
      serviceStart = Math.max(free, day.doors.arriveFrom[visit][w]);
      serviceEnd = serviceStart + day.doors.service[visit];
      if (breakAfter) {
        breakAt = Math.max(serviceEnd, day.breakFrom);
        ready = breakAt + day.breakLength;
      } else {
        ready = serviceEnd;
      }
      breakStart = breakAt;
    }

    int busy() {
      return day.doors.service[order[k]] + (breakBefore || breakAfter ? day.breakLength : 0);
    }

    void state(int drive, int from, int leave) {
      int visit = order[k];
      int spareHere = spare.ofArrival(k, arrive);
      int legDrive = drive;
      int legFrom = from;
      int waitFrom = arrive;
      if (breakBefore) {
        int breakEnd = breakStart + day.breakLength;
        stops.add(
            stop(
                PlannedStop.Kind.BREAK,
                arrive,
                breakStart,
                breakEnd,
                drive,
                from,
                breakStart - arrive,
                spareHere));
        legDrive = 0;
        legFrom = visit;
        waitFrom = breakEnd;
      }
      int wait = serviceStart - waitFrom + (breakAfter ? 0 : leave - serviceEnd);
      stops.add(
          stop(
              PlannedStop.Kind.VISIT,
              arrive,
              serviceStart,
              breakAfter ? serviceEnd : leave,
              legDrive,
              legFrom,
              wait,
              spareHere));
      if (breakAfter) {
        int breakWait = breakStart - serviceEnd + leave - ready;
        stops.add(
            stop(
                PlannedStop.Kind.BREAK,
                serviceEnd,
                breakStart,
                leave,
                0,
                visit,
                breakWait,
                spare.ofBreakAfter(k, serviceEnd, vanTo)));
      }
    }

    private PlannedStop stop(
        PlannedStop.Kind kind,
        int arriveSeconds,
        int startSeconds,
        int leaveSeconds,
        int drive,
        int from,
        int wait,
        int spareSeconds) {
      int visit = order[k];
      return new PlannedStop(
          kind,
          day.doors.place[visit],
          day.visit(visit).id(),
          arriveSeconds,
          startSeconds,
          leaveSeconds,
          drive,
          from == visit
              ? 0
              : day.travel.lengthMetres(day.doors.place[from], day.doors.place[visit]),
          wait,
          spareSeconds);
    }
  }
}
