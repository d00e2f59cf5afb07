package dev.dogleg.cli.export;

import dev.dogleg.itinerary.DayPlan;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * A planned day with everything a reader is shown about it.
 *
 * @param plan the plan
 * @param groomer name of the groomer
 * @param van name of the van
 * @param places labels of the places, by place number
 * @param stops labels of the visits asked for, by visit id
 * @param leftOut what has no room on this day and was not placed on another day of the run
 * @param seed seed of the run, for the note of the first row
 */
public record PlannedDay(
    DayPlan plan,
    String groomer,
    String van,
    List<PlaceLabel> places,
    Map<String, StopLabel> stops,
    List<LeftOut> leftOut,
    long seed) {
  /** Checks that nothing is null. */
  public PlannedDay {
    Objects.requireNonNull(plan, "plan");
    Objects.requireNonNull(groomer, "groomer");
    Objects.requireNonNull(van, "van");
    places = List.copyOf(places);
    stops = Map.copyOf(stops);
    leftOut = List.copyOf(leftOut);
  }

  /**
   * The label of a visit.
   *
   * @param visitId the visit
   * @return its label
   * @throws IllegalArgumentException where the visit was not asked for
   */
  public StopLabel stop(String visitId) {
    StopLabel label = stops.get(visitId);
    if (label == null) {
      throw new IllegalArgumentException("no label for visit " + visitId);
    }
    return label;
  }

  /** {@return how many doors the van visits} */
  public int doors() {
    return (int)
        plan.stops().stream()
            .filter(stop -> stop.kind() == dev.dogleg.itinerary.PlannedStop.Kind.VISIT)
            .count();
  }
}
