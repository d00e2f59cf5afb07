package dev.dogleg.fit;

import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WeekDay;
import dev.dogleg.itinerary.WeekRequest;
import dev.dogleg.plan.SetDays;
import dev.dogleg.schedule.DayModel;
import dev.dogleg.schedule.DayTiming;
import dev.dogleg.schedule.LegMemory;
import dev.dogleg.schedule.OrderCost;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;

/**
 * At which times of a grid one more visit has room on a van-day that keeps all it has.
 *
 * <p>Maintainers: all times still open are asked at once, as one visit that may come in any of
 * them. A no settles them all. A yes is a timed day; with its spare minutes it settles a stretch of
 * them, for the van may linger at a door: whatever a later start leaves possible, an earlier one
 * does. Orders that made room before are tried first, for nearby doors mostly fit in at the same
 * place; the engine is asked without prices, since only what is possible matters. One thread.
 */
final class DoorRoom {
  /** Orders kept to be tried first. */
  private static final int MOST_ORDERS = 24;

  private final WeekRequest week;
  private final PlannedVanDay before;
  private final RoomGrid grid;
  private final LegMemory legs;
  private final long effort;
  private final List<List<Integer>> orders = new ArrayList<>();

  /**
   * For one van-day.
   *
   * @param before what it serves, and in which order
   */
  DoorRoom(WeekRequest week, PlannedVanDay before, RoomGrid grid, LegMemory legs, long effort) {
    this.week = week;
    this.before = before;
    this.grid = grid;
    this.legs = legs;
    this.effort = effort;
    insertions();
  }

  /** The day as it is with one more at any place of its order: what is most often right. */
  private void insertions() {
    List<String> ids = before.visits().stream().map(Visit::id).toList();
    List<Integer> order =
        before.plan().stops().stream()
            .filter(stop -> stop.kind() == PlannedStop.Kind.VISIT)
            .map(stop -> ids.indexOf(stop.visitId()))
            .toList();
    for (int place = 0; place <= order.size(); place++) {
      List<Integer> one = new ArrayList<>(order);
      one.add(place, ids.size());
      orders.add(one);
    }
  }

  /**
   * What was found.
   *
   * @param starts times that hold
   * @param proven whether none of the other times asked for holds
   */
  record Found(BitSet starts, boolean proven) {}

  /** Which of some times hold for a visit. */
  Found of(WeekDay day, Visit visit, BitSet asked) {
    BitSet open = (BitSet) asked.clone();
    BitSet holds = new BitSet();
    while (!open.isEmpty()) {
      DayRequest request = request(day, visit, open);
      Day found = day(request);
      if (found.stops().isEmpty()) {
        return new Found(holds, found.neverFits());
      }
      settle(found.stops(), visit, open, holds);
    }
    return new Found(holds, true);
  }

  /** Events of a day that serves all, none where none was found; or whether there is none. */
  private record Day(List<PlannedStop> stops, boolean neverFits) {}

  private Day day(DayRequest request) {
    int size = request.visits().size();
    if (size > SetDays.MOST) {
      SolvedDay.Outcome outcome = SolvedDay.of(request, legs);
      return new Day(
          outcome.day().map(day -> day.plan().stops()).orElse(List.of()), outcome.neverFits());
    }
    DayModel free = DayModel.of(request, legs).free();
    OrderCost costs = new OrderCost(free);
    for (int k = 0; k < orders.size(); k++) {
      int[] order = numbered(orders.get(k), free);
      if (costs.of(order, OrderCost.IMPOSSIBLE) != OrderCost.IMPOSSIBLE) {
        orders.add(0, orders.remove(k));
        return new Day(timed(free, order), false);
      }
    }
    SetDays.Some some = new SetDays(free).some(IntStream.range(0, size).toArray(), effort);
    if (some.order().isEmpty()) {
      return new Day(List.of(), some.neverFits());
    }
    List<Integer> order = some.order().get();
    remember(order.stream().map(free::requestIndex).toList());
    return new Day(timed(free, order.stream().mapToInt(visit -> visit).toArray()), false);
  }

  /** An order of the request's visits in the numbering of its day. */
  private static int[] numbered(List<Integer> order, DayModel day) {
    int[] byRequest = new int[day.size()];
    for (int visit = 0; visit < byRequest.length; visit++) {
      byRequest[day.requestIndex(visit)] = visit;
    }
    return order.stream().mapToInt(index -> byRequest[index]).toArray();
  }

  /**
   * Of times that hold those for which some order that made room keeps its told times often enough:
   * timed as a planner would, who rather leaves late than waits, or else with the van at the door
   * as the span begins.
   */
  BitSet likely(WeekDay day, Visit visit, BitSet holds, RoomOdds odds) {
    BitSet likely = new BitSet();
    for (int start = holds.nextSetBit(0); start >= 0; start = holds.nextSetBit(start + 1)) {
      DayRequest told = request(day, visit.arriving(List.of(grid.told(start))));
      likely.set(
          start,
          isLikely(day, visit.arriving(List.of(grid.planned(start))), told, odds)
              || isLikely(day, visit.arriving(List.of(grid.early(start))), told, odds));
    }
    return likely;
  }

  private boolean isLikely(WeekDay day, Visit visit, DayRequest told, RoomOdds odds) {
    DayModel model = DayModel.of(request(day, visit), legs);
    // Whether an order can be driven at all is quickly told without prices.
    OrderCost possible = new OrderCost(model.free());
    OrderCost costs = new OrderCost(model);
    for (int k = 0; k < orders.size(); k++) {
      int[] order = numbered(orders.get(k), model);
      if (possible.of(order, OrderCost.IMPOSSIBLE) == OrderCost.IMPOSSIBLE) {
        continue;
      }
      long cost = costs.of(order, OrderCost.IMPOSSIBLE);
      if (odds.kept(told, visit.id(), new DayTiming(model).time(order, cost).stops())) {
        orders.add(0, orders.remove(k));
        return true;
      }
    }
    return false;
  }

  private static List<PlannedStop> timed(DayModel day, int[] order) {
    List<PlannedStop> stops = new DayTiming(day).time(order).stops();
    if (stops.isEmpty()) {
      throw new IllegalStateException("an order that has room cannot be timed");
    }
    return stops;
  }

  private void remember(List<Integer> order) {
    orders.add(0, order);
    if (orders.size() > MOST_ORDERS) {
      orders.remove(MOST_ORDERS);
    }
  }

  /** Moves what a timed day shows to hold from the open times to those that hold. */
  private void settle(List<PlannedStop> stops, Visit visit, BitSet open, BitSet holds) {
    PlannedStop stop =
        stops.stream()
            .filter(one -> one.kind() == PlannedStop.Kind.VISIT)
            .filter(one -> one.visitId().equals(visit.id()))
            .findFirst()
            .orElseThrow();
    // Lingering needs a stay that no closed hours cut.
    int delay = visit.vanWithin().size() == 1 ? stop.spareSeconds() : 0;
    int latest = Math.max(stop.startSeconds(), stop.arriveSeconds() + delay);
    boolean any = false;
    for (int start = open.nextSetBit(0); start >= 0; start = open.nextSetBit(start + 1)) {
      if (grid.from(start) <= latest && stop.arriveSeconds() <= grid.latestArrival(start)) {
        open.clear(start);
        holds.set(start);
        any = true;
      }
    }
    if (!any) {
      throw new IllegalStateException("a day that has room holds none of the times asked for");
    }
  }

  private DayRequest request(WeekDay day, Visit visit, BitSet open) {
    return request(day, visit.arriving(grid.windows(open)));
  }

  private DayRequest request(WeekDay day, Visit visit) {
    List<Visit> all = new ArrayList<>(before.visits());
    all.add(visit);
    return new DayRequest(
        day.shift(), all, day.travel(), week.prices(), day.terms(), week.seed(), effort);
  }
}
