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
  private static final int NEVER = Integer.MAX_VALUE;

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
    int busy = slot == OrderChain.NO_SLOT ? 0 : day.breakLength();
    for (int k = 0; k < order.length; k++) {
      busy += chain.terms().service(k);
    }
    int leave = end - busy - Math.toIntExact(cost % day.tieScale());
    stops.add(
        event(PlannedStop.Kind.LEAVE, -1, leave, leave, leave, -1, 0, spare.ofLeaving(leave)));
    long spent = 0;
    for (int k = 0; k < order.length; k++) {
      int from = k == 0 ? day.start() : order[k - 1];
      int drive = day.drive(from, order[k], leave);
      spent += tied.legPrice(from, order[k]) + tied.drivePrice() * drive;
      spent += chain.terms().price(k);
      Stay stay = stay(k, leave + drive, spent);
      leave = stay.leave;
      spent += stay.cost(leave);
      stay.state(drive, from, leave);
    }
    int last = order[order.length - 1];
    int drive = day.drive(last, day.end(), leave);
    stops.add(
        event(PlannedStop.Kind.HOME, order.length, end, end, end, last, drive, spare.ofEnd(end)));
    return stops;
  }

  /** The stay that may be left earliest, then served earliest, on the way to the best cost. */
  private Stay stay(int k, int arrive, long spent) {
    Stay best = null;
    for (DoorLimits way : tied.doors.ways[order[k]]) {
      Stay stay = new Stay(k, arrive, way);
      if (stay.possible()) {
        stay.leave = leaveAt(k, stay.ready, stay.vanTo, spent + stay.cost(stay.ready));
        boolean better =
            best == null
                || stay.leave < best.leave
                || (stay.leave == best.leave && stay.serviceStart < best.serviceStart);
        best = better ? stay : best;
      }
    }
    if (best == null || best.leave == NEVER) {
      throw new IllegalStateException("no leaving of stop " + k + " keeps the best cost");
    }
    return best;
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
        int earliest = NEVER;
        for (DoorLimits way : tied.doors.ways[next]) {
          for (int vanFrom : way.vanFrom) {
            int leave = vanFrom - drive;
            if (leave > t
                && leave <= until
                && leave < earliest
                && leads(k, leave, taken, spent + tied.waitPrice() * (leave - ready))) {
              earliest = leave;
            }
          }
        }
        if (earliest < NEVER) {
          return earliest;
        }
      }
      if (until >= vanTo) {
        break;
      }
    }
    return NEVER;
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
    private final DoorLimits door;
    private final int vanFrom;
    private int leave = NEVER;

    Stay(int k, int arrive, DoorLimits door) {
      this.k = k;
      this.arrive = arrive;
      this.door = door;
      breakBefore = slot >= 0 && slot == 2 * k - 1;
      breakAfter = slot >= 0 && slot == 2 * k;
      int w = 0;
      while (w + 1 < door.arriveTo.length && door.arriveTo[w] < arrive) {
        w++;
      }
      int v = 0;
      while (v + 1 < door.vanTo.length && door.vanTo[v] < arrive) {
        v++;
      }
      vanFrom = door.vanFrom[v];
      vanTo = door.vanTo[v];
      int free = arrive;
      int breakAt = 0;
      if (breakBefore) {
        breakAt = Math.max(arrive, day.breakFrom());
        free = breakAt + day.breakLength();
      }
      serviceStart = Math.max(free, door.arriveFrom[w]);
      serviceEnd = serviceStart + chain.terms().service(k);
      if (breakAfter) {
        breakAt = Math.max(serviceEnd, day.breakFrom());
        ready = breakAt + day.breakLength();
      } else {
        ready = serviceEnd;
      }
      breakStart = breakAt;
    }

    boolean possible() {
      return arrive >= vanFrom
          && ready <= vanTo
          && arrive <= door.arriveTo[door.arriveTo.length - 1]
          && serviceEnd <= door.doneBy
          && (!(breakBefore || breakAfter) || breakStart <= day.breakTo());
    }

    /** What staying until a second costs. */
    long cost(int until) {
      int pause = breakBefore || breakAfter ? day.breakLength() : 0;
      return door.price + tied.waitPrice() * (until - arrive - pause - chain.terms().service(k));
    }

    /** End of the van window without liked hours. */
    int hardVanTo() {
      int v = 0;
      while (day.doors.vanTo[order[k]][v] < arrive) {
        v++;
      }
      return day.doors.vanTo[order[k]][v];
    }

    void state(int drive, int from, int leave) {
      int visit = order[k];
      int spareHere = spare.ofArrival(k, arrive);
      int legDrive = drive;
      int legFrom = from;
      int waitFrom = arrive;
      if (breakBefore) {
        int breakEnd = breakStart + day.breakLength();
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
              visit < day.size() ? PlannedStop.Kind.VISIT : PlannedStop.Kind.WATER,
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
                spare.ofBreakAfter(k, serviceEnd, hardVanTo())));
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
          visit < day.size() ? day.visit(visit).id() : "",
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
