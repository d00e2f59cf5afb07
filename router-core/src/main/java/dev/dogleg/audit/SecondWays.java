package dev.dogleg.audit;

import dev.dogleg.itinerary.DayRule;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.time.TimeWindow;
import java.util.ArrayList;
import java.util.List;

/**
 * One way to keep the clock at a door: one arrival window, one span for the stay, each liked hour
 * kept in one of its windows or paid for.
 *
 * @param latestArrive last second of arrival
 * @param earliestStart first second of the service
 * @param doneBy last second of the service's end
 * @param stayFrom first second of the stay
 * @param stayTo last second of the stay
 * @param price of the liked hours that are paid for, in sixtieths
 */
record SecondWays(
    int latestArrive, int earliestStart, int doneBy, int stayFrom, int stayTo, long price) {
  /** A place without limits. */
  static final SecondWays FREE =
      new SecondWays(TimeWindow.DAY_END, 0, TimeWindow.DAY_END, 0, TimeWindow.DAY_END, 0);

  /** Every way of a visit. */
  static List<SecondWays> of(Visit visit, List<DayRule> rules) {
    List<SecondWays> ways = new ArrayList<>();
    for (TimeWindow door : visit.arriveWithin()) {
      for (TimeWindow stay : visit.vanWithin()) {
        ways.add(
            new SecondWays(
                door.toSeconds(),
                door.fromSeconds(),
                visit.doneBySeconds(),
                stay.fromSeconds(),
                stay.toSeconds(),
                0));
      }
    }
    for (DayRule rule : rules) {
      if (rule instanceof DayRule.Clock clock && clock.visits().contains(visit.id())) {
        List<SecondWays> more = new ArrayList<>();
        for (SecondWays way : ways) {
          more.add(way.paying(clock.ratherSixtieths().orElse(0)));
          clock.windows().forEach(window -> more.add(way.keeping(clock.kind(), window)));
        }
        ways = more;
      }
    }
    return ways;
  }

  private SecondWays paying(long more) {
    return new SecondWays(latestArrive, earliestStart, doneBy, stayFrom, stayTo, price + more);
  }

  private SecondWays keeping(DayRule.ClockKind kind, TimeWindow window) {
    int from = window.fromSeconds();
    int to = window.toSeconds();
    return switch (kind) {
      case ARRIVE ->
          new SecondWays(
              Math.min(latestArrive, to),
              Math.max(earliestStart, from),
              doneBy,
              stayFrom,
              stayTo,
              price);
      case DONE_BY ->
          new SecondWays(
              latestArrive, earliestStart, Math.min(doneBy, to), stayFrom, stayTo, price);
      case VAN ->
          new SecondWays(
              latestArrive,
              earliestStart,
              doneBy,
              Math.max(stayFrom, from),
              Math.min(stayTo, to),
              price);
    };
  }
}
