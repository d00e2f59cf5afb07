package dev.dogleg.arrival;

import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.OddsTerms;
import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.itinerary.Visit;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Prices a planned day by the promises that it does not keep often enough.
 *
 * <p>The price is {@code brokenSixtieths} times what the day's promises fall short of the share to
 * be kept: all of them together, or those that fall short by more than five hundredths by
 * themselves, whichever is more. (A later door may make up for an earlier one, as the spans of
 * {@link TimesToTell} do.) It is 0 or more and depends on the order and timing of the day alone, so
 * it can be added to a finished day without touching any bound.
 */
public final class PromiseOdds {
  private static final double PERMILLE = 1000;

  /** The coarse grid may be so far from the fine one by which times are told. */
  private static final double GRID_ERROR = 0.01;

  private final DayCourse course;
  private final OddsTerms terms;
  private final Map<String, Integer> lastSeconds;

  /**
   * Odds for days of a request.
   *
   * @param request the request; its terms price odds
   * @throws java.util.NoSuchElementException where they do not
   */
  public PromiseOdds(DayRequest request) {
    terms = request.terms().odds().orElseThrow();
    CourseTerms coarse = CourseTerms.coarse(terms.services(), terms.day());
    course = ArrivalForecast.course(request, coarse);
    lastSeconds =
        request.visits().stream().collect(Collectors.toMap(Visit::id, Visit::latestArrivalSeconds));
  }

  /**
   * Price of the day's odds.
   *
   * @param stops events of a planned day; may be empty
   * @return sixtieths of a second of driving, 0 or more
   */
  public long priceSixtieths(List<PlannedStop> stops) {
    // All together, and single ones beyond what a day may balance.
    double[] shortBy = new double[2];
    if (!stops.isEmpty()) {
      double wanted = terms.keptPermille() / PERMILLE - GRID_ERROR;
      double least = wanted - SpanChoice.MOST_SHORT / PERMILLE;
      course.run(
          stops,
          (visitId, arrival, earliest) -> {
            if (terms.promised().contains(visitId)) {
              double kept = arrival.by(lastSeconds.get(visitId));
              shortBy[0] += wanted - kept;
              shortBy[1] += Math.max(0, least - kept);
            }
            return earliest;
          });
    }
    double pays = Math.max(0, Math.max(shortBy[0], shortBy[1]));
    return Math.round(terms.brokenSixtieths() * pays);
  }
}
