package dev.dogleg.plan.late;

import dev.dogleg.itinerary.DayPlan;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.NoRoom;
import dev.dogleg.itinerary.PlannedStop;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * One way to go on with a day.
 *
 * @param kind which of the three
 * @param moved id of the visit that goes to another day, for {@link Kind#MOVE}
 * @param recommended whether it is the one to take, by the rule in {@code docs/LATE.md}
 * @param request the rest as a day of its own: it starts now where the van is; its first visit is
 *     the last one done, where there is one; broken windows are as wide as what is said
 * @param plan the plan of {@code request}
 * @param costSixtieths its cost ({@code Prices}), with the prices of waiting-list visits that have
 *     no second left and so do not even stand in the request
 * @param lateness what it breaks
 * @param promises every promise of a visit served, in the order of the day
 * @param leftOut booked visits without room even where promises give way, each with its reason
 * @param beyondOvertimeSeconds seconds by which the day ends after the most overtime, or 0
 * @param proven whether nothing is less, in the order of {@code docs/LATE.md}
 */
public record LateChoice(
    Kind kind,
    Optional<String> moved,
    boolean recommended,
    DayRequest request,
    DayPlan plan,
    long costSixtieths,
    Lateness lateness,
    List<PromiseKept> promises,
    List<NoRoom> leftOut,
    int beyondOvertimeSeconds,
    boolean proven) {

  /** Which of the three. */
  public enum Kind {
    /** The planned order stays. */
    KEEP,
    /** The best order. */
    REORDER,
    /** One visit goes to another day, the others in their best order. */
    MOVE
  }

  /** Copies the lists. */
  public LateChoice {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(request, "request");
    Objects.requireNonNull(plan, "plan");
    Objects.requireNonNull(lateness, "lateness");
    promises = List.copyOf(promises);
    leftOut = List.copyOf(leftOut);
    if (moved.isPresent() != (kind == Kind.MOVE) || beyondOvertimeSeconds < 0) {
      throw new IllegalArgumentException("moved or beyondOvertimeSeconds is wrong");
    }
  }

  /**
   * {@return the end of the day, elapsed seconds; the start of the rest where nothing is driven}
   */
  public int endSeconds() {
    List<PlannedStop> stops = plan.stops();
    return stops.isEmpty()
        ? request.shift().hours().fromSeconds()
        : stops.get(stops.size() - 1).arriveSeconds();
  }

  /** {@return seconds of driving} */
  public int driveSeconds() {
    return plan.stops().stream().mapToInt(PlannedStop::driveSeconds).sum();
  }

  /** {@return ids of the visits in their order} */
  public List<String> order() {
    return plan.stops().stream()
        .filter(stop -> stop.kind() == PlannedStop.Kind.VISIT)
        .map(PlannedStop::visitId)
        .toList();
  }

  LateChoice recommend() {
    return new LateChoice(
        kind,
        moved,
        true,
        request,
        plan,
        costSixtieths,
        lateness,
        promises,
        leftOut,
        beyondOvertimeSeconds,
        proven);
  }
}
