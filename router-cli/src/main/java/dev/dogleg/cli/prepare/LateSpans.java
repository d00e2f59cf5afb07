package dev.dogleg.cli.prepare;

import dev.dogleg.arrival.CourseTerms;
import dev.dogleg.arrival.SpanTerms;
import dev.dogleg.arrival.TimeToTell;
import dev.dogleg.arrival.TimesToTell;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.OddsTerms;
import dev.dogleg.itinerary.ServiceSpread;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.plan.late.LateChoice;
import dev.dogleg.time.TimeWindow;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** The spans that are told anew to those who are reached late. */
public final class LateSpans {
  private LateSpans() {}

  /**
   * Spans for what a choice breaks.
   *
   * @param choice one way to go on; its request says what varies
   * @param anchor the visit that is done already and with which the rest begins, if there is one
   * @param nowSeconds what time it is; no span begins before its quarter of an hour
   * @return by visit id, broken promises only
   * @throws java.util.NoSuchElementException where the request does not say what varies
   */
  public static Map<String, TimeWindow> of(
      LateChoice choice, Optional<String> anchor, int nowSeconds) {
    Set<String> broken =
        choice.promises().stream()
            .filter(one -> !one.kept())
            .map(one -> one.promise().visitId())
            .collect(Collectors.toSet());
    Map<String, TimeWindow> spans = new HashMap<>();
    if (broken.isEmpty()) {
      return spans;
    }
    OddsTerms odds = choice.request().terms().odds().orElseThrow();
    Map<String, ServiceSpread> services = new HashMap<>(odds.services());
    anchor.ifPresent(services::remove);
    int round = SpanTerms.EVENING_BEFORE.roundSeconds();
    TimeWindow later = new TimeWindow(nowSeconds / round * round, TimeWindow.DAY_END);
    for (TimeToTell time :
        TimesToTell.eveningBefore(
            open(choice.request(), broken, later),
            choice.plan().stops(),
            CourseTerms.fine(services, odds.day()),
            SpanTerms.EVENING_BEFORE.keeping(odds.keptPermille()))) {
      if (broken.contains(time.visitId())) {
        spans.put(time.visitId(), time.arriveWithin());
      }
    }
    return spans;
  }

  /** The same day, broken windows open towards the end. */
  private static DayRequest open(DayRequest day, Set<String> broken, TimeWindow later) {
    List<Visit> visits =
        day.visits().stream()
            .map(visit -> broken.contains(visit.id()) ? visit.arriving(List.of(later)) : visit)
            .toList();
    return day.asking(visits);
  }
}
