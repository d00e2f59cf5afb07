package dev.dogleg.plan;

import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.DayShift;
import dev.dogleg.itinerary.NoRoom;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.schedule.DayModel;
import dev.dogleg.schedule.DayTiming;
import dev.dogleg.schedule.RuleMiss;
import dev.dogleg.schedule.TimedOrder;
import dev.dogleg.time.TimeWindow;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.IntFunction;

/**
 * Why a visit is impossible alone: the rule of which one limit must move least to make room, found
 * by timing the day again with that limit moved, never guessed from where a try failed.
 *
 * <p>Of each rule every limit (either end of each window, the done-by, the latest end) is moved on
 * its own; room grows with the move, so the least one is found by halving. Of equal moves the rule
 * tried first is named: arrive within, done by, van within, day end. Where no limit of time makes
 * room the tanks and the must rules are dropped, one at a time.
 */
final class AloneReason {
  private static final int FARTHEST_MOVE = TimeWindow.DAY_END;

  private final DayRequest request;
  private final Visit visit;
  private final RoomTerms terms;
  private String bestRule = "";
  private int bestMove = Integer.MAX_VALUE;

  private AloneReason(DayRequest request, Visit visit, RoomTerms terms) {
    this.request = request;
    this.visit = visit;
    this.terms = terms;
  }

  /**
   * The reason, or empty where the visit alone has room but for want of others.
   *
   * @param request the day
   * @param visit one of its visits
   */
  static Optional<NoRoom> of(DayRequest request, Visit visit) {
    AloneReason reason = new AloneReason(request, visit, RoomTerms.passingOverCompany(request));
    TimedOrder alone = reason.timed(visit, 0);
    if (alone.possible()) {
      return Optional.empty();
    }
    boolean roads =
        request.travel().reaches(request.shift().startPlace(), visit.place())
            && request.travel().reaches(visit.place(), request.shift().endPlace());
    return Optional.of(
        roads ? reason.leastMove(alone.miss().orElseThrow()) : reason.named("no-road", 0));
  }

  /**
   * The rule that a day with this visit alone breaks for want of others, where there is one.
   *
   * @param request the day
   * @param visit one of its visits, which has room but for such rules
   */
  static Optional<NoRoom> forWantOfOthers(DayRequest request, Visit visit) {
    AloneReason reason = new AloneReason(request, visit, RoomTerms.must(request));
    return reason.timed(visit, 0).miss().map(miss -> reason.named(miss.rule(), 0));
  }

  private NoRoom leastMove(RuleMiss miss) {
    for (TimeWindow window : visit.arriveWithin()) {
      tryWindow("arrive-within", window, moved -> visit.arriving(List.of(moved)));
    }
    tryMove("done-by", s -> possible(visit.doneBy(later(visit.doneBySeconds(), s)), 0));
    for (TimeWindow window : visit.vanWithin()) {
      tryWindow("van-within", window, moved -> visit.vanOnlyWithin(List.of(moved)));
    }
    tryMove("day-end", s -> possible(visit, s));
    if (!bestRule.isEmpty()) {
      return named(bestRule, bestMove);
    }
    for (String rule : List.of("arrive-within", "done-by", "van-within", "day-end")) {
      if (possibleWithout(rule)) {
        return named(rule, miss.shortBySeconds());
      }
    }
    for (String rule : terms.names()) {
      if (new AloneReason(request, visit, terms.without(rule)).timed(visit, 0).possible()) {
        return named(rule, 0);
      }
    }
    return named(miss.rule(), miss.shortBySeconds());
  }

  private boolean possibleWithout(String rule) {
    return switch (rule) {
      case "arrive-within" -> possible(visit.arriving(Visit.ANY_TIME), 0);
      case "done-by" -> possible(visit.doneBy(TimeWindow.DAY_END), 0);
      case "van-within" -> possible(visit.vanOnlyWithin(Visit.ANY_TIME), 0);
      default -> possible(visit, FARTHEST_MOVE);
    };
  }

  private interface WithWindow {
    Visit of(TimeWindow window);
  }

  private void tryWindow(String rule, TimeWindow window, WithWindow with) {
    int from = window.fromSeconds();
    int to = window.toSeconds();
    tryMove(rule, s -> possible(with.of(new TimeWindow(Math.max(0, from - s), to)), 0));
    tryMove(rule, s -> possible(with.of(new TimeWindow(from, later(to, s))), 0));
  }

  private void tryMove(String rule, IntFunction<Boolean> makesRoom) {
    OptionalInt move = least(makesRoom);
    if (move.isPresent() && move.getAsInt() < bestMove) {
      bestMove = move.getAsInt();
      bestRule = rule;
    }
  }

  private static OptionalInt least(IntFunction<Boolean> makesRoom) {
    if (!makesRoom.apply(FARTHEST_MOVE)) {
      return OptionalInt.empty();
    }
    int low = 1;
    int high = FARTHEST_MOVE;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (makesRoom.apply(middle)) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return OptionalInt.of(low);
  }

  private static int later(int seconds, int by) {
    return Math.min(TimeWindow.DAY_END, seconds + by);
  }

  private boolean possible(Visit changed, int laterEndSeconds) {
    return timed(changed, laterEndSeconds).possible();
  }

  private TimedOrder timed(Visit changed, int laterEndSeconds) {
    DayShift shift = request.shift();
    // A later shift end is as good as more overtime here: only what is possible is asked.
    TimeWindow hours =
        new TimeWindow(
            shift.hours().fromSeconds(), later(shift.hours().toSeconds(), laterEndSeconds));
    DayShift longer = shift.during(hours);
    DayRequest alone =
        new DayRequest(
            longer,
            List.of(changed),
            request.travel(),
            request.prices(),
            terms.terms(),
            request.seed(),
            request.effort());
    return new DayTiming(DayModel.of(alone)).time(new int[] {0});
  }

  private NoRoom named(String rule, int shortBySeconds) {
    return new NoRoom(visit.id(), NoRoom.Why.IMPOSSIBLE_ALONE, rule, shortBySeconds, List.of());
  }
}
