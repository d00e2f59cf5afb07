package dev.dogleg.plan;

import dev.dogleg.itinerary.DayPlan;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.NoRoom;
import dev.dogleg.itinerary.Proof;
import dev.dogleg.schedule.DayModel;
import dev.dogleg.schedule.DayTiming;
import dev.dogleg.schedule.LegMemory;
import dev.dogleg.schedule.TimedOrder;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/**
 * Plans one day, proven best where the effort suffices.
 *
 * <p>First the fewest booked visits left out, then least cost ({@code docs/TIMING.md}). A planner
 * holds no state: any thread may use it, and the answer does not depend on the order of the visits
 * in the request.
 */
public final class DayPlanner {
  private DayPlanner() {}

  /**
   * Plans a day.
   *
   * @param request what to plan, with its effort limit
   * @return the plan, with its proof and the reasons for what has no room
   */
  public static DayPlan plan(DayRequest request) {
    return plan(request, () -> false);
  }

  /**
   * Plans a day until it is proven, the effort is spent or somebody asks to stop.
   *
   * @param request what to plan, with its effort limit
   * @param stop asked every few thousand steps; once true, the best plan so far is returned and
   *     marked {@code CLOCK_LIMIT}
   * @return the plan, with its proof and the reasons for what has no room
   */
  public static DayPlan plan(DayRequest request, BooleanSupplier stop) {
    LegMemory legs = LegMemory.of(request.travel(), request.shift());
    DayModel day = DayModel.of(request, legs);
    WorkMeter meter = new WorkMeter(request.effort(), stop);
    DayAnswer answer = new DayEngine(day).solve(meter);
    TimedOrder timed = timed(day, answer);
    boolean proven = answer.lowerBound() >= answer.value();
    Proof.Kind kind =
        proven
            ? Proof.Kind.PROVEN_BEST
            : meter.signalled() ? Proof.Kind.CLOCK_LIMIT : Proof.Kind.WORK_LIMIT;
    WorkMeter forReasons = new WorkMeter(request.effort(), stop);
    DayModel room = Reasons.room(request, day, legs);
    List<NoRoom> noRoom =
        new Reasons(request, day, room, answer.order(), proven, forReasons).list();
    return new DayPlan(
        request.shift(),
        timed.stops(),
        noRoom,
        DayValue.booked(answer.value()),
        DayValue.cost(answer.value()),
        new Proof(
            kind,
            DayValue.booked(answer.lowerBound()),
            DayValue.cost(answer.lowerBound()),
            meter.steps()));
  }

  /**
   * Why a visit has no room on a day that serves all the others, which {@link #plan} says of a
   * visit on the waiting list; the day itself is not planned.
   *
   * @param request the day; the others are booked and it is known that a day serves just them
   * @param visitId the visit that has no room
   * @param legs what is known of the day's legs
   * @return the reason
   */
  public static NoRoom whyNot(DayRequest request, String visitId, LegMemory legs) {
    DayModel day = DayModel.of(request, legs);
    int[] served =
        IntStream.range(0, day.size()).filter(v -> !day.visit(v).id().equals(visitId)).toArray();
    WorkMeter meter = new WorkMeter(request.effort(), () -> false);
    DayModel room = Reasons.room(request, day, legs);
    return new Reasons(request, day, room, served, true, meter).list().get(0);
  }

  private static TimedOrder timed(DayModel day, DayAnswer answer) {
    DayTiming timing = new DayTiming(day);
    DayValue value = new DayValue(day);
    long leftOut = value.allLeftOut();
    for (int visit : answer.order()) {
      leftOut -= value.leftOut(visit);
    }
    return answer.order().length == 0
        ? timing.time(answer.order())
        : timing.time(answer.order(), answer.value() - leftOut);
  }
}
