package dev.dogleg.oracle;

import dev.dogleg.itinerary.BreakRule;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.time.TimeWindow;
import dev.dogleg.travel.TravelTimes;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/**
 * Tries every order of every set of visits and every place of the break, each as early as can be,
 * and keeps what is least late. Plain and slow; knows no sets and shares no code with the planner.
 *
 * <p>For days without water stops, and with drives that are first in, first out.
 */
public final class LateOracle {
  private final DayRequest day;
  private final Map<String, int[]> promises;
  private final int breakUntil;
  private final TravelTimes travel;
  private final BreakRule rule;
  private final List<Visit> order = new ArrayList<>();
  private long[] best;
  private final List<List<String>> orders = new ArrayList<>();

  /**
   * What is least late.
   *
   * @param lateness left out, told broken, told seconds, wishes broken, wish seconds, break seconds
   * @param orders every order that is no later, visits left out missing
   */
  public record Least(List<Long> lateness, List<List<String>> orders) {}

  private LateOracle(DayRequest day, Map<String, int[]> promises, int breakUntil) {
    this.day = day;
    this.promises = promises;
    this.breakUntil = breakUntil;
    travel = day.travel();
    rule = day.shift().breakRule().orElse(null);
  }

  /**
   * Tries everything.
   *
   * @param day a day whose promised windows are open at their end
   * @param promises by visit: last second that keeps the promise (where a door opens only after it,
   *     its opening counts as the arrival), and 0 for told or 1 for wished
   * @param breakUntil last second at which the break may start without being late
   * @param first the visit that must be made first, or null
   * @return the least; no figures where not even the first visit can be made and the end reached
   */
  public static Least least(
      DayRequest day, Map<String, int[]> promises, int breakUntil, String first) {
    LateOracle oracle = new LateOracle(day, promises, breakUntil);
    if (first == null) {
      oracle.offer(new long[6]);
    }
    int from = day.shift().hours().fromSeconds();
    int end = day.shift().latestEndSeconds();
    oracle.grow(first, day.shift().startPlace(), from, end, false, new long[6]);
    List<Long> least =
        oracle.best == null ? List.of() : Arrays.stream(oracle.best).boxed().toList();
    return new Least(least, oracle.orders);
  }

  private void grow(String first, int place, int ready, int leaveBy, boolean taken, long[] broken) {
    for (Visit visit : day.visits()) {
      boolean may = order.isEmpty() ? first == null || visit.id().equals(first) : !visit.first();
      if (!may || order.contains(visit) || !travel.reaches(place, visit.place())) {
        continue;
      }
      order.add(visit);
      int service = OracleRules.service(day, order);
      go(visit, service, place, ready, leaveBy, taken, broken);
      if (order.size() > 1 && rule != null && !taken) {
        int start = Math.max(ready, rule.startWithin().fromSeconds());
        int end = start + rule.lengthSeconds();
        if (end <= leaveBy) {
          go(visit, service, place, end, leaveBy, true, breakLate(broken, start));
        }
      }
      order.remove(order.size() - 1);
    }
  }

  private long[] breakLate(long[] broken, int start) {
    long[] more = broken.clone();
    more[5] += Math.max(0, start - breakUntil);
    return more;
  }

  private void go(
      Visit visit, int service, int place, int ready, int leaveBy, boolean taken, long[] broken) {
    for (TimeWindow van : visit.vanWithin()) {
      int leave = ready;
      while (leave < leaveBy
          && leave + travel.driveSeconds(place, visit.place(), leave) < van.fromSeconds()) {
        leave++;
      }
      int at = leave + travel.driveSeconds(place, visit.place(), leave);
      if (!van.holds(at)) {
        continue;
      }
      for (TimeWindow door : visit.arriveWithin()) {
        if (at > door.toSeconds()) {
          continue;
        }
        long[] late = late(visit, Math.max(at, door.fromSeconds()), broken);
        stay(visit, service, Math.max(at, door.fromSeconds()), van, taken, late);
        if (order.size() > 1 && rule != null && !taken) {
          int start = Math.max(at, rule.startWithin().fromSeconds());
          int rested = Math.max(start + rule.lengthSeconds(), door.fromSeconds());
          stay(visit, service, rested, van, true, breakLate(late, start));
        }
      }
    }
  }

  private long[] late(Visit visit, int at, long[] broken) {
    int[] promise = promises.get(visit.id());
    if (promise == null || at <= promise[0]) {
      return broken;
    }
    long[] more = broken.clone();
    int column = promise[1] == 0 ? 1 : 3;
    more[column]++;
    more[column + 1] += at - promise[0];
    return more;
  }

  private void stay(
      Visit visit, int service, int start, TimeWindow van, boolean taken, long[] broken) {
    int end = start + service;
    if (end > visit.doneBySeconds() || end > van.toSeconds()) {
      return;
    }
    home(visit.place(), end, taken, broken);
    grow(null, visit.place(), end, van.toSeconds(), taken, broken);
  }

  private void home(int place, int ready, boolean taken, long[] broken) {
    if (!travel.reaches(place, day.shift().endPlace())) {
      return;
    }
    int end = ready + travel.driveSeconds(place, day.shift().endPlace(), ready);
    boolean needed =
        rule != null && order.size() > 1 && end > rule.startWithin().fromSeconds() && !taken;
    boolean rules = OracleRules.price(day, order) != OracleRules.BROKEN;
    if (rules && !needed && end <= day.shift().latestEndSeconds()) {
      offer(broken);
    }
  }

  private void offer(long[] broken) {
    long[] all = broken.clone();
    all[0] =
        day.visits().stream().filter(visit -> visit.booked() && !order.contains(visit)).count();
    int better = best == null ? -1 : Arrays.compare(all, best);
    if (better < 0) {
      best = all;
      orders.clear();
    }
    List<String> ids = order.stream().map(Visit::id).toList();
    if (better <= 0 && !orders.contains(ids)) {
      orders.add(ids);
    }
  }
}
