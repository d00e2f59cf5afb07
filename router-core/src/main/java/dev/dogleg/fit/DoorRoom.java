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
  private static final int MOST_ORDERS = 12;

  private final WeekRequest week;
  private final List<Visit> visits;
  private final RoomGrid grid;
  private final LegMemory legs;
  private final long effort;
  private final List<List<Integer>> orders = new ArrayList<>();

  /**
   * For one van-day.
   *
   * @param visits what it serves
   */
  DoorRoom(WeekRequest week, List<Visit> visits, RoomGrid grid, LegMemory legs, long effort) {
    this.week = week;
    this.visits = visits;
    this.grid = grid;
    this.legs = legs;
    this.effort = effort;
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
    int[] byRequest = new int[size];
    for (int visit = 0; visit < size; visit++) {
      byRequest[free.requestIndex(visit)] = visit;
    }
    OrderCost costs = new OrderCost(free);
    for (int k = 0; k < orders.size(); k++) {
      int[] order = orders.get(k).stream().mapToInt(index -> byRequest[index]).toArray();
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
    List<Visit> all = new ArrayList<>(visits);
    all.add(visit.arriving(grid.windows(open)));
    return new DayRequest(
        day.shift(), all, day.travel(), week.prices(), day.terms(), week.seed(), effort);
  }
}
