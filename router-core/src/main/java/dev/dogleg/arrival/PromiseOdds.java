package dev.dogleg.arrival;

import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.itinerary.Visit;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Prices a planned day by the promises that it is likely to break.
 *
 * <p>The price is {@code brokenSixtieths} times the expected number of promised visits whose door
 * is reached after the end of its last window. It is 0 or more and depends on the order and timing
 * of the day alone, so it can be added to a finished day without touching any bound.
 */
public final class PromiseOdds {
  private final DayCourse course;
  private final Set<String> promised;
  private final Map<String, Integer> lastSeconds;
  private final long brokenSixtieths;

  /**
   * Odds for days of a request.
   *
   * @param request the request
   * @param terms what varies
   * @param promised ids of visits whose windows are promises
   * @param brokenSixtieths price of one broken promise, 0 or more
   */
  public PromiseOdds(
      DayRequest request, CourseTerms terms, Set<String> promised, long brokenSixtieths) {
    if (brokenSixtieths < 0) {
      throw new IllegalArgumentException("brokenSixtieths is 0 or more, was " + brokenSixtieths);
    }
    this.course = ArrivalForecast.course(request, terms);
    this.promised = Set.copyOf(promised);
    this.lastSeconds =
        request.visits().stream()
            .collect(
                Collectors.toMap(
                    Visit::id,
                    visit ->
                        visit.arriveWithin().get(visit.arriveWithin().size() - 1).toSeconds()));
    this.brokenSixtieths = brokenSixtieths;
  }

  /**
   * Expected number of broken promises.
   *
   * @param stops events of a planned day
   * @return 0 or more
   */
  public double expectedBroken(List<PlannedStop> stops) {
    if (stops.isEmpty()) {
      return 0;
    }
    double[] broken = new double[1];
    course.run(
        stops,
        (visitId, arrival, earliest) -> {
          if (promised.contains(visitId)) {
            broken[0] += 1 - arrival.by(lastSeconds.get(visitId));
          }
          return earliest;
        });
    return broken[0];
  }

  /**
   * Price of the day's odds.
   *
   * @param stops events of a planned day
   * @return sixtieths of a second of driving, 0 or more
   */
  public long priceSixtieths(List<PlannedStop> stops) {
    return Math.round(brokenSixtieths * Math.max(0, expectedBroken(stops)));
  }
}
