package dev.dogleg.arrival;

import dev.dogleg.itinerary.BreakRule;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.itinerary.Visit;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * When the van is at each door of a planned day, as distributions reckoned on a grid.
 *
 * <p>The day is lived through for a few values of what its grooms and drives have in common; for
 * each the spread of grooms and drives is added up door by door. Nothing is sampled, so the same
 * day gives the same answer.
 */
public final class ArrivalForecast {
  private ArrivalForecast() {}

  /**
   * Arrival at every door.
   *
   * @param request the day as it was planned; its visits and travel times are used
   * @param stops events of the planned day, from {@code LEAVE} to {@code HOME}; may be empty
   * @param terms what varies
   * @return one entry a visit, in the order of the day
   * @throws NullPointerException where an event names a visit that the request has not
   */
  public static List<DoorArrival> of(
      DayRequest request, List<PlannedStop> stops, CourseTerms terms) {
    List<DoorArrival> doors = new ArrayList<>();
    if (!stops.isEmpty()) {
      course(request, terms)
          .run(
              stops,
              (visitId, arrival, earliest) -> {
                doors.add(new DoorArrival(visitId, arrival));
                return earliest;
              });
    }
    return List.copyOf(doors);
  }

  static DayCourse course(DayRequest request, CourseTerms terms) {
    return new DayCourse(
        request.visits().stream().collect(Collectors.toMap(Visit::id, Function.identity())),
        request.travel(),
        request.shift().breakRule().map(BreakRule::startWithin),
        terms);
  }
}
