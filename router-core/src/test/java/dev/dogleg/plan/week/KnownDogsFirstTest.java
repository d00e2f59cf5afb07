package dev.dogleg.plan.week;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.dogleg.audit.WeekAudit;
import dev.dogleg.itinerary.DayChoice;
import dev.dogleg.itinerary.DayShift;
import dev.dogleg.itinerary.DaySpread;
import dev.dogleg.itinerary.DayTerms;
import dev.dogleg.itinerary.OddsTerms;
import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.itinerary.Prices;
import dev.dogleg.itinerary.ServiceSpread;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.itinerary.WeekDay;
import dev.dogleg.itinerary.WeekPlan;
import dev.dogleg.itinerary.WeekRequest;
import dev.dogleg.time.TimeWindow;
import dev.dogleg.time.WorkDay;
import dev.dogleg.travel.BandedTravelTimes;
import dev.dogleg.travel.TrafficBands;
import dev.dogleg.travel.TravelMatrix;
import dev.dogleg.travel.TravelTimes;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * Known dogs early, uncertain ones late: it comes of the price of promises by itself. That jobs of
 * small variance go first is near best in general: de Kemp, Mandjes, Olver, arXiv 1812.01467.
 */
class KnownDogsFirstTest {
  private static final int HOUR = 3_600;

  /** Both doors are ten minutes from home and from each other: either order costs the same. */
  private static WeekPlan plan(DayTerms terms) {
    int[][] seconds = {{0, 600, 600}, {600, 0, 600}, {600, 600, 0}};
    int[][] metres = {{0, 5_000, 5_000}, {5_000, 0, 5_000}, {5_000, 5_000, 0}};
    TravelTimes travel =
        new BandedTravelTimes(
            TravelMatrix.of(seconds, metres),
            new TrafficBands(
                List.of("road"), List.of(new TrafficBands.Band("all day", 0, List.of(1_000)))));
    DayShift shift =
        new DayShift(
            "g",
            "v",
            new WorkDay(LocalDate.of(2027, 3, 2), ZoneId.of("Etc/UTC")),
            0,
            0,
            new TimeWindow(8 * HOUR, 17 * HOUR),
            0,
            Optional.empty());
    // Second at the door about 9:20; both were told to be reached by 9:35.
    TimeWindow told = new TimeWindow(8 * HOUR, 9 * HOUR + 2_100);
    WeekRequest week =
        new WeekRequest(
            List.of(new WeekDay(shift, travel, terms)),
            List.of(booking("a-new", 1, told), booking("b-known", 2, told)),
            Prices.STARTER,
            1,
            WeekPlanner.USUAL_EFFORT);
    WeekPlan plan = WeekPlanner.plan(week);
    assertEquals(List.of(), WeekAudit.check(week, plan));
    return plan;
  }

  private static WeekBooking booking(String id, int place, TimeWindow told) {
    Visit visit = Visit.booked(id, place, HOUR).arriving(List.of(told));
    return new WeekBooking(id, true, 0, List.of(new DayChoice(0, visit, 0)));
  }

  private static List<String> order(WeekPlan plan) {
    return plan.days().get(0).stops().stream()
        .filter(stop -> stop.kind() == PlannedStop.Kind.VISIT)
        .map(PlannedStop::visitId)
        .toList();
  }

  @Test
  void theKnownDogGoesFirstWhereTheOrdersCostTheSame() {
    assertEquals(List.of("a-new", "b-known"), order(plan(DayTerms.NONE)), "least ids first");
    OddsTerms odds =
        new OddsTerms(
            Map.of(
                "a-new", new ServiceSpread(600, 3_000, 0.40),
                "b-known", new ServiceSpread(600, 3_000, 0.10)),
            DaySpread.STARTER,
            Set.of("a-new", "b-known"),
            950,
            60L * HOUR);
    assertEquals(List.of("b-known", "a-new"), order(plan(DayTerms.NONE.with(odds))));
  }
}
