package dev.dogleg.schedule;

import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.PlannedStop;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The exact timing of one ordered day.
 *
 * <p>Least cost over every leaving second, window and place of the break; among equal ones the
 * earliest end, then the latest leaving of the start place, then the earliest place of the break in
 * the order, then every door in turn left as early as possible ({@code docs/TIMING.md}).
 *
 * <p>Maintainers: one forward pass finds the least cost; one more, on prices {@code cost * scale +
 * driven and waited seconds} gives cost, end and (end less those seconds, service and break) the
 * start. Then the day is walked door by door; at each the earliest leaving second is tried whose
 * rest still reaches that cost and end. Only the earliest second, a change of traffic, or the
 * earliest second that meets a van window can be it, so a handful of passes does. Built per
 * request, then any thread may use it.
 */
public final class DayTiming {
  private final DayModel day;
  private final DayModel tied;
  private final int[] byRequest;

  /**
   * Timing on a model.
   *
   * @param day the day
   */
  public DayTiming(DayModel day) {
    this.day = day;
    this.tied = day.withTies();
    this.byRequest = new int[day.size()];
    for (int visit = 0; visit < day.size(); visit++) {
      byRequest[day.requestIndex(visit)] = visit;
    }
  }

  /**
   * Times an order of the request's visits.
   *
   * @param request the request
   * @param order indices into its visits, each at most once; the others are left out
   * @return the timed day, or the first rule it cannot keep
   * @throws IllegalArgumentException where an index is out of range or stands twice
   */
  public static TimedOrder time(DayRequest request, List<Integer> order) {
    DayTiming timing = new DayTiming(DayModel.of(request));
    return timing.time(
        order.stream()
            .mapToInt(
                index -> {
                  if (index < 0 || index >= timing.byRequest.length) {
                    throw new IllegalArgumentException("no visit " + index);
                  }
                  return timing.byRequest[index];
                })
            .toArray());
  }

  /**
   * Times an order of the model's visits.
   *
   * @param order numbers of the model's visits, each at most once
   * @return the timed day, or the first rule it cannot keep
   * @throws IllegalArgumentException where a visit stands twice
   */
  public TimedOrder time(int[] order) {
    boolean[] seen = new boolean[day.size()];
    for (int k = 0; k < order.length; k++) {
      if (seen[order[k]]) {
        throw new IllegalArgumentException("visit twice: " + day.visit(order[k]).id());
      }
      seen[order[k]] = true;
      if (k > 0 && day.doors.first[order[k]]) {
        return impossible(new RuleMiss("first", day.visit(order[k]).id(), 0));
      }
    }
    if (order.length == 0) {
      return new TimedOrder(List.of(), 0, Optional.empty());
    }
    Optional<RuleMiss> broken = BrokenRule.of(day, order);
    if (broken.isPresent()) {
      return impossible(broken.get());
    }
    long least = new OrderCost(day).of(order, OrderCost.IMPOSSIBLE);
    return least == OrderCost.IMPOSSIBLE ? impossible(order) : time(order, least);
  }

  /**
   * Times an order whose least cost is known.
   *
   * @param order numbers of the model's visits, each once; not empty
   * @param least its least cost, as {@link OrderCost} tells
   * @return the timed day
   */
  public TimedOrder time(int[] order, long least) {
    return timeStops(day.steps().water() ? new OrderCost(day).stops(order, least) : order, least);
  }

  private TimedOrder timeStops(int[] order, long least) {
    OrderChain chain = new OrderChain(tied, day.tieScale());
    chain.choose(order, Math.multiplyExact(least + 1, day.tieScale()));
    chain.runFrom(-1, day.from(), day.latestEnd(), day.latestEnd(), false, OrderChain.ANY_SLOT);
    long cost = chain.bestCost();
    int end = chain.bestEnd();
    int slot = earliestSlot(chain, order.length, cost, end);
    List<PlannedStop> stops = new DayWalk(day, tied, chain, order, slot, cost, end).stops();
    return new TimedOrder(stops, cost / day.tieScale(), Optional.empty());
  }

  private int earliestSlot(OrderChain chain, int length, long cost, int end) {
    for (int slot = -1; slot < 2 * (length - 1); slot++) {
      int place = slot < 0 ? OrderChain.NO_SLOT : slot;
      if (chain.runFrom(-1, day.from(), day.latestEnd(), day.latestEnd(), false, place)
          && chain.bestCost() == cost
          && chain.bestEnd() == end) {
        return place;
      }
    }
    throw new IllegalStateException("no place of the break gives the best cost");
  }

  private TimedOrder impossible(int[] order) {
    OrderChain chain = new OrderChain(day.free(), 1);
    chain.choose(order);
    boolean withoutWater =
        chain.runFrom(-1, day.from(), day.latestEnd(), day.latestEnd(), false, OrderChain.ANY_SLOT);
    return impossible(withoutWater ? new RuleMiss(RuleMiss.WATER, "", 0) : chain.miss());
  }

  private static TimedOrder impossible(RuleMiss miss) {
    return new TimedOrder(new ArrayList<>(), 0, Optional.of(miss));
  }
}
