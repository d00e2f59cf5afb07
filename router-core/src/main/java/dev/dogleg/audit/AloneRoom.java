package dev.dogleg.audit;

import dev.dogleg.itinerary.BreakRule;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.DayShift;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WaterUse;
import dev.dogleg.time.TimeWindow;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.IntPredicate;
import java.util.function.Predicate;

/** Whether one visit fits into the day alone, and by how much a rule is missed. */
final class AloneRoom {
  private final DayRequest request;
  private final Visit visit;
  private final RoomTerms terms;
  private final DayShift shift;
  private final Onward onward;
  private final Door door;
  private final boolean roads;
  private final boolean allowed;

  AloneRoom(DayRequest request, Visit visit, RoomTerms terms) {
    this.request = request;
    this.visit = visit;
    this.terms = terms;
    this.shift = request.shift();
    BreakRule none = null;
    this.onward = new Onward(request.travel(), none);
    this.door = Door.of(visit, terms.served(visit, 1, null));
    this.allowed =
        terms.broken(List.of(visit.id())).isEmpty()
            && terms.after(WaterUse.NONE, visit).isPresent();
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

  /** {@return whether dropping one rule makes room: a name as in {@code NoRoom.rule}} */
  boolean blockedBy(String rule) {
    return switch (rule) {
      case "arrive-within" -> fits(door.arriving(Visit.ANY_TIME), 0);
      case "done-by" -> fits(door.doneBy(TimeWindow.DAY_END), 0);
      case "van-within" -> fits(door.staying(Visit.ANY_TIME), 0);
      case "day-end" -> fits(door, 2 * TimeWindow.DAY_END);
      default -> terms.knows(rule) && new AloneRoom(request, visit, terms.without(rule)).exists();
    };
  }

  /**
   * The least move of one limit of a rule that makes room.
   *
   * @param rule a name as in {@code NoRoom.rule}
   * @return seconds, 1 or more; empty where moving one limit is not enough
   */
  OptionalInt missedBy(String rule) {
    return switch (rule) {
      case "arrive-within" -> leastOf(door.arriveWithin(), w -> fits(door.arriving(w), 0));
      case "van-within" -> leastOf(door.vanWithin(), w -> fits(door.staying(w), 0));
      case "done-by" -> least(s -> fits(door.doneBy(door.doneBySeconds() + s), 0));
      case "day-end" -> least(s -> fits(door, s));
      default -> OptionalInt.empty();
    };
  }

  /** The least over the starts and the ends of all windows. */
  private static OptionalInt leastOf(List<TimeWindow> windows, Predicate<List<TimeWindow>> room) {
    OptionalInt best = OptionalInt.empty();
    for (TimeWindow w : windows) {
      int from = w.fromSeconds();
      int to = w.toSeconds();
      best = lesser(best, least(s -> room.test(alone(Math.max(0, from - s), to))));
      best = lesser(best, least(s -> room.test(alone(from, Math.min(TimeWindow.DAY_END, to + s)))));
    }
    return best;
  }

  /** One window moved is enough to ask about: the others made no room as they are. */
  private static List<TimeWindow> alone(int from, int to) {
    return List.of(new TimeWindow(from, to));
  }

  private static OptionalInt lesser(OptionalInt one, OptionalInt other) {
    boolean takeOther = one.isEmpty() || (other.isPresent() && other.getAsInt() < one.getAsInt());
    return takeOther ? other : one;
  }

  private boolean fits(Door at, int laterEndSeconds) {
    if (!allowed) {
      return false;
    }
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
