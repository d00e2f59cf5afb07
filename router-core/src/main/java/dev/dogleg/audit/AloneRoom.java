package dev.dogleg.audit;

import dev.dogleg.itinerary.BreakRule;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.DayShift;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.time.TimeWindow;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.IntPredicate;

/** Whether one visit fits into the day alone, and by how much a rule is missed. */
final class AloneRoom {
  private final DayShift shift;
  private final Onward onward;
  private final Door door;
  private final boolean roads;

  AloneRoom(DayRequest request, Visit visit) {
    this.shift = request.shift();
    BreakRule none = null;
    this.onward = new Onward(request.travel(), none);
    this.door = Door.of(visit);
    this.roads =
        request.travel().reaches(shift.startPlace(), visit.place())
            && request.travel().reaches(visit.place(), shift.endPlace());
  }

  /** {@return whether roads lead there and on to the end place} */
  boolean hasRoads() {
    return roads;
  }

  /** {@return whether a day with this visit alone keeps every limit} */
  boolean exists() {
    return fits(door, 0);
  }

  /**
   * By how much one rule must be loosened so that the visit fits alone.
   *
   * @param rule a name as in {@code NoRoom.rule}
   * @return seconds, 1 or more; empty where loosening that rule alone never makes room
   */
  OptionalInt missedBy(String rule) {
    return switch (rule) {
      case "arrive-within" -> least(s -> fits(arriving(s), 0));
      case "done-by" -> least(s -> fits(doneBy(s), 0));
      case "day-end" -> least(s -> fits(door, s));
      case "van-within" -> vanMissedBy();
      default -> OptionalInt.empty();
    };
  }

  private OptionalInt vanMissedBy() {
    OptionalInt best = OptionalInt.empty();
    for (int w = 0; w < door.vanWithin().size(); w++) {
      int number = w;
      OptionalInt missed = least(s -> fits(staying(number, s), 0));
      if (missed.isPresent() && (best.isEmpty() || missed.getAsInt() < best.getAsInt())) {
        best = missed;
      }
    }
    return best;
  }

  private Door arriving(int seconds) {
    List<TimeWindow> windows = longer(door.arriveWithin(), door.arriveWithin().size() - 1, seconds);
    return new Door(
        door.place(), door.serviceSeconds(), windows, door.doneBySeconds(), door.vanWithin());
  }

  private Door doneBy(int seconds) {
    int by = door.doneBySeconds() + seconds;
    return new Door(door.place(), door.serviceSeconds(), door.arriveWithin(), by, door.vanWithin());
  }

  private Door staying(int window, int seconds) {
    List<TimeWindow> windows = longer(door.vanWithin(), window, seconds);
    return new Door(
        door.place(), door.serviceSeconds(), door.arriveWithin(), door.doneBySeconds(), windows);
  }

  private static List<TimeWindow> longer(List<TimeWindow> windows, int which, int seconds) {
    List<TimeWindow> copy = new ArrayList<>(windows);
    TimeWindow old = copy.get(which);
    int to = Math.min(TimeWindow.DAY_END, old.toSeconds() + seconds);
    copy.set(which, new TimeWindow(old.fromSeconds(), to));
    return copy;
  }

  private boolean fits(Door at, int laterEndSeconds) {
    List<Span> home = List.of(new Span(shift.hours().fromSeconds(), TimeWindow.DAY_END));
    List<Span> left = onward.afterDrive(home, shift.startPlace(), at, BreakAt.NONE);
    long end = onward.earliestArrival(left, at.place(), shift.endPlace(), 0);
    return end != Onward.NEVER && end <= (long) shift.latestEndSeconds() + laterEndSeconds;
  }

  /** The least number of seconds that makes a rising predicate true. */
  private static OptionalInt least(IntPredicate enough) {
    int low = 1;
    int high = 2 * TimeWindow.DAY_END;
    if (!enough.test(high)) {
      return OptionalInt.empty();
    }
    while (low < high) {
      int middle = low + (high - low) / 2;
      if (enough.test(middle)) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return OptionalInt.of(low);
  }
}
