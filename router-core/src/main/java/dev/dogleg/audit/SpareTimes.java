package dev.dogleg.audit;

import dev.dogleg.itinerary.BreakRule;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.time.TimeWindow;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/**
 * The spare of each event: how late it may be reached so that the rest of the day still holds.
 *
 * <p>Maintainers: whether the rest holds with an arrival at or after t can only turn from yes to no
 * as t rises, so the last yes is found by halving. Needs a plan of sound structure.
 */
final class SpareTimes {
  private final DayRows rows;
  private final DayRequest request;
  private final Onward onward;

  /** Visits and water stops. */
  private final List<Row> calls;

  private final List<BreakAt> breaks = new ArrayList<>();

  SpareTimes(DayRows rows) {
    this.rows = rows;
    this.request = rows.request();
    BreakRule rule = request.shift().breakRule().orElse(null);
    this.onward = new Onward(request.travel(), rule);
    this.calls = rows.calls();
    for (Row call : calls) {
      breaks.add(breakOf(call));
    }
  }

  private BreakAt breakOf(Row call) {
    if (rows.lastOfStay(call).index() != call.index()) {
      return BreakAt.AFTER;
    }
    return call.atDoorOfRowBefore() ? BreakAt.BEFORE : BreakAt.NONE;
  }

  /**
   * Spare of one event.
   *
   * @return seconds, 0 or more; empty where even the arrival of the plan breaks a limit
   */
  OptionalInt of(Row row) {
    int arrive = row.stop().arriveSeconds();
    if (arrive < 0 || arrive > TimeWindow.DAY_END || !holds(row, arrive)) {
      return OptionalInt.empty();
    }
    int low = arrive;
    int high = TimeWindow.DAY_END;
    while (low < high) {
      int middle = low + (high - low + 1) / 2;
      if (holds(row, middle)) {
        low = middle;
      } else {
        high = middle - 1;
      }
    }
    return OptionalInt.of(low - arrive);
  }

  /** Whether the day holds from an event on that is reached at or after a second. */
  private boolean holds(Row row, int arrive) {
    return switch (row.stop().kind()) {
      case LEAVE -> restHolds(-1, List.of(new Span(arrive, TimeWindow.DAY_END)));
      case VISIT, WATER -> callHolds(number(row), arrive);
      case BREAK -> breakHolds(row, arrive);
      case HOME -> arrive <= request.shift().latestEndSeconds();
    };
  }

  /** Number of a call; -1 where the event is none. */
  private int number(Row event) {
    int number = calls.size() - 1;
    while (number >= 0 && calls.get(number).index() != event.index()) {
      number--;
    }
    return number;
  }

  private boolean callHolds(int number, int arrive) {
    Door door = Door.of(calls.get(number));
    return restHolds(number, onward.afterArrival(door, breaks.get(number), arrive));
  }

  private boolean breakHolds(Row row, int arrive) {
    if (row.breakAt() == BreakAt.BEFORE) {
      return callHolds(number(rows.get(row.index() + 1)), arrive);
    }
    Row visit = rows.get(row.index() - 1);
    for (TimeWindow stay : visit.visit().vanWithin()) {
      if (stay.holds(visit.stop().arriveSeconds())) {
        return restHolds(number(visit), onward.afterBreak(arrive, stay));
      }
    }
    return false;
  }

  private boolean restHolds(int number, List<Span> leaving) {
    List<Span> left = leaving;
    int place = placeAfter(number);
    for (int next = number + 1; next < calls.size() && !left.isEmpty(); next++) {
      left = onward.afterDrive(left, place, Door.of(calls.get(next)), breaks.get(next));
      place = placeAfter(next);
    }
    long end = onward.earliestArrival(left, place, request.shift().endPlace(), 0);
    return end <= request.shift().latestEndSeconds();
  }

  private int placeAfter(int number) {
    return number < 0 ? request.shift().startPlace() : calls.get(number).place();
  }
}
