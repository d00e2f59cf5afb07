package dev.dogleg.oracle;

import dev.dogleg.itinerary.DayRule;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.time.TimeWindow;
import java.util.ArrayList;
import java.util.List;

/**
 * One way to keep, or pay for, everything that the clock says of one stay.
 *
 * @param latestArrive last second of arrival
 * @param earliestStart first second of the service
 * @param doneBy last second of the service's end
 * @param vanFrom first second of the stay
 * @param vanTo last second of the stay
 * @param price of the liked hours that this way does not keep, in sixtieths
 */
record StayLimits(
    int latestArrive, int earliestStart, int doneBy, int vanFrom, int vanTo, long price) {

  /** A water stop: no limits. */
  static final StayLimits NONE =
      new StayLimits(TimeWindow.DAY_END, 0, TimeWindow.DAY_END, 0, TimeWindow.DAY_END, 0);

  /** Every choice of windows and of liked hours kept or paid for. */
  static List<StayLimits> of(Visit visit, List<DayRule> rules) {
    List<StayLimits> ways = new ArrayList<>();
    for (TimeWindow door : visit.arriveWithin()) {
      for (TimeWindow van : visit.vanWithin()) {
        ways.add(
            new StayLimits(
                door.toSeconds(),
                door.fromSeconds(),
                visit.doneBySeconds(),
                van.fromSeconds(),
                van.toSeconds(),
                0));
      }
    }
    for (DayRule rule : rules) {
      if (rule instanceof DayRule.Clock clock && clock.visits().contains(visit.id())) {
        ways = liked(ways, clock);
      }
    }
    return ways;
  }

  private static List<StayLimits> liked(List<StayLimits> ways, DayRule.Clock clock) {
    List<StayLimits> more = new ArrayList<>();
    for (StayLimits way : ways) {
      long price = way.price + clock.ratherSixtieths().orElseThrow();
      more.add(
          new StayLimits(
              way.latestArrive, way.earliestStart, way.doneBy, way.vanFrom, way.vanTo, price));
      for (TimeWindow window : clock.windows()) {
        more.add(way.keeping(clock.kind(), window.fromSeconds(), window.toSeconds()));
      }
    }
    return more;
  }

  private StayLimits keeping(DayRule.ClockKind kind, int from, int to) {
    return switch (kind) {
      case ARRIVE ->
          new StayLimits(
              Math.min(latestArrive, to),
              Math.max(earliestStart, from),
              doneBy,
              vanFrom,
              vanTo,
              price);
      case DONE_BY ->
          new StayLimits(latestArrive, earliestStart, Math.min(doneBy, to), vanFrom, vanTo, price);
      case VAN ->
          new StayLimits(
              latestArrive,
              earliestStart,
              doneBy,
              Math.max(vanFrom, from),
              Math.min(vanTo, to),
              price);
    };
  }
}
