package dev.dogleg.oracle;

import dev.dogleg.itinerary.DayPlan;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.DayShift;
import dev.dogleg.itinerary.DayTerms;
import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.itinerary.Prices;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.time.TimeWindow;
import dev.dogleg.time.WorkDay;
import dev.dogleg.travel.BandedTravelTimes;
import dev.dogleg.travel.TrafficBands;
import dev.dogleg.travel.TravelMatrix;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A small day on which one rule binds, with the best plan under the rule and the best plan without
 * it, both worked by hand.
 *
 * <p>A second is a tick. Places lie along one road, place k at tick k; the day begins at 0 and ends
 * at 40, so that without a rule a, b, c are made in this order: {@code 0 > 10 a 20 > 30 b 40 > 50 c
 * 60 > 70}. Driving costs 60 a tick, waiting 20.
 *
 * @param name what it is about
 * @param request the day under the rule
 * @param right the best plan under the rule, in one line
 * @param rightCost its cost in sixtieths, with prices of what it leaves out
 * @param wrong the best plan without the rule
 * @param findings what the audit says to the wrong plan under the rule: {@code code@stop
 *     measured/allowed}, joined by commas; empty where the rule is priced only
 */
public record RuleScenario(
    String name, DayRequest request, String right, long rightCost, String wrong, String findings) {

  /** The plan that is best without any rule, where all three are made. */
  static final String FREE = "0 > 10 a 20 > 30 b 40 > 50 c 60 > 70";

  static final Visit A = Visit.booked("a", 10, 10);
  static final Visit B = Visit.booked("b", 20, 10);
  static final Visit C = Visit.booked("c", 30, 10);

  /** A day in this town. */
  static DayRequest day(int end, DayTerms terms, Visit... visits) {
    int places = 41;
    int[][] seconds = new int[places][places];
    for (int i = 0; i < places; i++) {
      for (int j = 0; j < places; j++) {
        seconds[i][j] = Math.abs(i - j);
      }
    }
    DayShift shift =
        new DayShift(
            "g",
            "v",
            new WorkDay(LocalDate.of(2026, 6, 1), ZoneOffset.UTC),
            0,
            40,
            new TimeWindow(0, end),
            0,
            Optional.empty());
    return new DayRequest(
        shift,
        List.of(visits),
        new BandedTravelTimes(
            TravelMatrix.of(seconds, new int[places][places]), TrafficBands.none(List.of("road"))),
        new Prices(0, 20, 120, 0),
        terms,
        1,
        DayRequest.USUAL_EFFORT);
  }

  /**
   * A day in one line.
   *
   * @param plan a plan
   * @return leaving, each event from arrival to leaving, the end
   */
  public static String line(DayPlan plan) {
    return line(plan.stops());
  }

  static String line(List<PlannedStop> stops) {
    return stops.stream().map(RuleScenario::event).collect(Collectors.joining(" > "));
  }

  private static String event(PlannedStop stop) {
    return switch (stop.kind()) {
      case LEAVE -> "" + stop.leaveSeconds();
      case HOME -> "" + stop.arriveSeconds();
      case VISIT -> stop.arriveSeconds() + " " + stop.visitId() + " " + stop.leaveSeconds();
      case BREAK -> stop.startSeconds() + " break " + stop.leaveSeconds();
      case WATER -> stop.arriveSeconds() + " water " + stop.leaveSeconds();
    };
  }

  @Override
  public String toString() {
    return name;
  }
}
