package dev.dogleg.fit;

import dev.dogleg.arrival.ArrivalForecast;
import dev.dogleg.arrival.CourseTerms;
import dev.dogleg.arrival.DoorArrival;
import dev.dogleg.arrival.PromiseOdds;
import dev.dogleg.arrival.SpanTerms;
import dev.dogleg.arrival.TimeToTell;
import dev.dogleg.arrival.TimesToTell;
import dev.dogleg.itinerary.DayPlan;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.DaySpread;
import dev.dogleg.itinerary.OddsTerms;
import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.itinerary.ServiceSpread;
import dev.dogleg.itinerary.Visit;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/** How sure the times of a planned day are, and which can be told. */
final class DayOdds {
  private DayOdds() {}

  /** Odds of each door by the end of its last arrival window, thousandths, by visit. */
  static Map<String, Integer> kept(DayRequest request, DayPlan plan) {
    return kept(request, plan.stops());
  }

  /** The same of a timed day. */
  static Map<String, Integer> kept(DayRequest request, List<PlannedStop> stops) {
    CourseTerms terms = CourseTerms.coarse(services(request), spread(request));
    Map<String, Integer> last = new HashMap<>();
    for (Visit visit : request.visits()) {
      last.put(visit.id(), visit.latestArrivalSeconds());
    }
    Map<String, Integer> kept = new HashMap<>();
    for (DoorArrival door : ArrivalForecast.of(request, stops, terms)) {
      kept.put(door.visitId(), door.arrival().permilleBy(last.get(door.visitId())));
    }
    return kept;
  }

  /** The span that can be told of one visit, so that the day as planned keeps it. */
  static TimeToTell toTell(DayRequest request, DayPlan plan, String visitId) {
    SpanTerms spans = SpanTerms.EVENING_BEFORE;
    Optional<OddsTerms> odds = request.terms().odds();
    List<PlannedStop> stops = plan.stops();
    int at =
        IntStream.range(0, stops.size())
            .filter(k -> stops.get(k).kind() == PlannedStop.Kind.VISIT)
            .filter(k -> stops.get(k).visitId().equals(visitId))
            .findFirst()
            .orElseThrow();
    List<TimeToTell> times =
        TimesToTell.eveningBefore(
            request,
            stops.subList(0, at + 1),
            CourseTerms.fine(services(request), spread(request)),
            odds.map(terms -> spans.keeping(terms.keptPermille())).orElse(spans));
    TimeToTell time = times.get(times.size() - 1);
    int arrive = stops.get(at).arriveSeconds();
    return new TimeToTell(
        visitId,
        time.holding(arrive, spans.roundSeconds()),
        time.keptPermille(),
        time.meanWaitSeconds(),
        time.atTarget());
  }

  /** Price of a day's odds. */
  static long priceSixtieths(DayRequest request, DayPlan plan) {
    return new PromiseOdds(request).priceSixtieths(plan.stops());
  }

  private static Map<String, ServiceSpread> services(DayRequest request) {
    return request.terms().odds().map(OddsTerms::services).orElse(Map.of());
  }

  private static DaySpread spread(DayRequest request) {
    return request.terms().odds().map(OddsTerms::day).orElse(DaySpread.STARTER);
  }
}
