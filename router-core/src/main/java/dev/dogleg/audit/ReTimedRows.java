package dev.dogleg.audit;

import dev.dogleg.itinerary.BreakRule;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.itinerary.PlannedStop.Kind;
import dev.dogleg.time.TimeWindow;
import dev.dogleg.travel.TravelTimes;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The events of a given order at their earliest times; figures are filled in later. */
final class ReTimedRows {
  private final TravelTimes travel;
  private final BreakRule rule;
  private final DayRequest request;
  private final List<PlannedStop> stops = new ArrayList<>();

  /** Where the van is, when it may leave, and until when lingering there breaks nothing. */
  private int place;

  private int ready;
  private int mayStayUntil;

  ReTimedRows(DayRequest request, BreakRule rule) {
    this.request = request;
    this.travel = request.travel();
    this.rule = rule;
  }

  /** Times calls that are reachable one after the other. */
  List<PlannedStop> of(List<Call> calls, Optional<BreakSpot> spot) {
    place = request.shift().startPlace();
    ready = request.shift().hours().fromSeconds();
    mayStayUntil = TimeWindow.DAY_END;
    add(Kind.LEAVE, "", ready, ready, ready);
    List<Door> doors = Call.doors(calls, new ServedSeconds(request.terms().rules()));
    for (int k = 0; k < calls.size(); k++) {
      call(calls.get(k), doors.get(k), side(calls.get(k), spot));
    }
    int end = request.shift().endPlace();
    if (travel.reaches(place, end)) {
      int arrive = ready + travel.driveSeconds(place, end, ready);
      place = end;
      add(Kind.HOME, "", arrive, arrive, arrive);
    }
    return stops;
  }

  private static BreakAt side(Call call, Optional<BreakSpot> spot) {
    boolean here = call.visit() != null && spot.isPresent();
    if (!here || !spot.get().visitId().equals(call.visitId())) {
      return BreakAt.NONE;
    }
    return spot.get().afterService() ? BreakAt.AFTER : BreakAt.BEFORE;
  }

  private void call(Call call, Door door, BreakAt at) {
    leaveAt(leaving(door, at));
    int arrive = ready + travel.driveSeconds(place, door.place(), ready);
    Stay stay = Stay.earliest(door, at, rule, arrive);
    place = door.place();
    int breakStart = stay.breakStartSeconds();
    int breakEnd = at == BreakAt.NONE ? 0 : breakStart + rule.lengthSeconds();
    if (at == BreakAt.BEFORE) {
      add(Kind.BREAK, call.visitId(), arrive, breakStart, breakEnd);
    }
    add(
        call.visit() == null ? Kind.WATER : Kind.VISIT,
        call.visitId(),
        arrive,
        stay.startSeconds(),
        stay.endSeconds());
    if (at == BreakAt.AFTER) {
      add(Kind.BREAK, call.visitId(), stay.endSeconds(), breakStart, breakEnd);
    }
    ready = stay.readySeconds();
    mayStayUntil = ready;
    for (TimeWindow van : door.vanWithin()) {
      if (van.holds(arrive)) {
        mayStayUntil = Math.max(ready, van.toSeconds());
      }
    }
  }

  /** The earliest leaving whose stay at the next door fits its van spans, or at once. */
  private int leaving(Door door, BreakAt at) {
    for (TimeWindow van : door.vanWithin()) {
      int leave = firstArrivingFrom(door.place(), van.fromSeconds());
      int arrive = leave + travel.driveSeconds(place, door.place(), leave);
      int until = Stay.earliest(door, at, rule, arrive).readySeconds();
      if (van.holds(arrive) && until <= van.toSeconds()) {
        return leave;
      }
    }
    return ready;
  }

  private int firstArrivingFrom(int to, int notBefore) {
    int low = ready;
    int high = mayStayUntil;
    while (low < high) {
      int middle = low + (high - low) / 2;
      if (middle + travel.driveSeconds(place, to, middle) >= notBefore) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return low;
  }

  /** Moves the leaving of the last event. */
  private void leaveAt(int leave) {
    PlannedStop last = stops.remove(stops.size() - 1);
    boolean home = last.kind() == Kind.LEAVE;
    int arrive = home ? leave : last.arriveSeconds();
    int start = home ? leave : last.startSeconds();
    add(last.kind(), last.visitId(), arrive, start, leave);
    ready = leave;
  }

  private void add(Kind kind, String id, int arrive, int start, int leave) {
    stops.add(new PlannedStop(kind, place, id, arrive, start, leave, 0, 0, 0, 0));
  }
}
