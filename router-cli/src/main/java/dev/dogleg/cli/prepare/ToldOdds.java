package dev.dogleg.cli.prepare;

import dev.dogleg.arrival.ArrivalForecast;
import dev.dogleg.arrival.CourseTerms;
import dev.dogleg.arrival.DoorArrival;
import dev.dogleg.itinerary.DayPlan;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.OddsTerms;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WeekRequest;
import java.util.Map;
import java.util.TreeMap;

/** How likely the told times of a planned van-day are kept. */
public final class ToldOdds {
  private static final int PERMILLE_PER_PERCENT = 10;

  private ToldOdds() {}

  /**
   * Odds of the told times of a day.
   *
   * @param week the week
   * @param number number of the van-day
   * @param plan its plan
   * @return percent by visit id, rounded down, of the visits whose times were told
   */
  public static Map<String, Integer> percents(WeekRequest week, int number, DayPlan plan) {
    Map<String, Integer> percents = new TreeMap<>();
    OddsTerms odds = week.days().get(number).terms().odds().orElseThrow();
    if (odds.promised().isEmpty()) {
      return percents;
    }
    DayRequest day = week.asking(number);
    CourseTerms terms = CourseTerms.fine(odds.services(), odds.day());
    for (DoorArrival door : ArrivalForecast.of(day, plan.stops(), terms)) {
      if (odds.promised().contains(door.visitId())) {
        Visit visit =
            day.visits().stream()
                .filter(one -> one.id().equals(door.visitId()))
                .findFirst()
                .orElseThrow();
        int end = visit.latestArrivalSeconds();
        percents.put(door.visitId(), door.arrival().permilleBy(end) / PERMILLE_PER_PERCENT);
      }
    }
    return percents;
  }
}
