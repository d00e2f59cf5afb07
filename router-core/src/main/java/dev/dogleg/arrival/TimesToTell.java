package dev.dogleg.arrival;

import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.DaySpread;
import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.time.TimeWindow;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * Spans for arrival at the door that can be told to owners.
 *
 * <p>A told span binds the van: whoever is early waits for its start. So the spans of a day are
 * chosen door by door, each knowing what waiting the earlier ones cause.
 */
public final class TimesToTell {
  private TimesToTell() {}

  /**
   * Spans for a whole day, told before it begins.
   *
   * @param request the day as it was planned; told times are its visits' arrival windows
   * @param stops events of the planned day, from {@code LEAVE} to {@code HOME} or to an earlier
   *     event, for a door's span hangs on nothing after it; may be empty
   * @param terms what varies
   * @param spans how spans are chosen
   * @return one span a visit of these events, in the order of the day, each within the window that
   *     the plan uses
   */
  public static List<TimeToTell> eveningBefore(
      DayRequest request, List<PlannedStop> stops, CourseTerms terms, SpanTerms spans) {
    List<TimeToTell> told = new ArrayList<>();
    if (stops.isEmpty()) {
      return told;
    }
    Map<String, List<TimeWindow>> windows = new HashMap<>();
    for (Visit visit : request.visits()) {
      windows.put(visit.id(), visit.arriveWithin());
    }
    SpanChoice choice = new SpanChoice(spans);
    ArrivalForecast.course(request, terms)
        .run(
            stops,
            (visitId, arrival, earliest) -> {
              TimeWindow within =
                  startingAt(Objects.requireNonNull(windows.get(visitId)), earliest);
              TimeToTell span = choice.of(visitId, arrival, within);
              told.add(span);
              return Math.max(earliest, span.arriveWithin().fromSeconds());
            });
    return List.copyOf(told);
  }

  private static TimeWindow startingAt(List<TimeWindow> windows, int seconds) {
    return windows.stream()
        .filter(window -> window.fromSeconds() == seconds)
        .findFirst()
        .orElseThrow();
  }

  /**
   * The span for the next door, told when the van leaves for it.
   *
   * @param visitId whose door
   * @param driveSeconds the drive from here at this hour
   * @param leaveSeconds when the van left, elapsed seconds
   * @param within what was told before; the span stays inside
   * @param day spread of the day and of its drives
   * @param spans how spans are chosen
   * @return the span
   */
  public static TimeToTell onMyWay(
      String visitId,
      int driveSeconds,
      int leaveSeconds,
      TimeWindow within,
      DaySpread day,
      SpanTerms spans) {
    // One drive, one lognormal: what the day and the drive have in common and alone adds up.
    double both = StrictMath.hypot(day.legLogSpread(), day.trafficLogSpread());
    TimeMass arrival = TimeMass.at(leaveSeconds, 20).plusLognormal(driveSeconds, both);
    // Nobody is told a time that is past.
    int earliest = leaveSeconds / spans.roundSeconds() * spans.roundSeconds();
    TimeWindow ahead =
        within.toSeconds() <= earliest
            ? within
            : new TimeWindow(Math.max(within.fromSeconds(), earliest), within.toSeconds());
    return new SpanChoice(spans)
        .of(visitId, new ArrivalTime(List.of(arrival), DayFactor.of(1)), ahead);
  }
}
