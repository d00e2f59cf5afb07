package dev.dogleg.cli.export;

import dev.dogleg.itinerary.DayPlan;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

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
 * @param weekProof what the plan of a whole week says of its proof; empty where the day stands
 *     alone
 */
public record PlannedDay(
    DayPlan plan,
    String groomer,
    String van,
    List<PlaceLabel> places,
    Map<String, StopLabel> stops,
    List<LeftOut> leftOut,
    long seed,
    Optional<String> weekProof) {
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
   * A day that stands alone.
   *
   * @param plan see the record
   * @param groomer see the record
   * @param van see the record
   * @param places see the record
   * @param stops see the record
   * @param leftOut see the record
   * @param seed see the record
   */
  public PlannedDay(
      DayPlan plan,
      String groomer,
      String van,
      List<PlaceLabel> places,
      Map<String, StopLabel> stops,
      List<LeftOut> leftOut,
      long seed) {
    this(plan, groomer, van, places, stops, leftOut, seed, Optional.empty());
  }

  /**
   * A day of a week that was planned as a whole.
   *
   * @param plan see the record
   * @param groomer see the record
   * @param van see the record
   * @param places see the record
   * @param stops see the record
   * @param seed see the record
   * @param proof the week's sentence of proof
   * @return the day
   */
  public static PlannedDay partOfWeek(
      DayPlan plan,
      String groomer,
      String van,
      List<PlaceLabel> places,
      Map<String, StopLabel> stops,
      long seed,
      String proof) {
    return new PlannedDay(plan, groomer, van, places, stops, List.of(), seed, Optional.of(proof));
  }

  /** {@return the sentence of proof, without a full stop} */
  public String proof() {
    return weekProof.orElseGet(() -> ProofText.of(plan));
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
