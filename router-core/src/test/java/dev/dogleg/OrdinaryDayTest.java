package dev.dogleg;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.audit.DayAudit;
import dev.dogleg.fault.Faults;
import dev.dogleg.fault.Where;
import dev.dogleg.groom.GroomEstimator;
import dev.dogleg.groom.GroomQuestion;
import dev.dogleg.groom.GroomTables;
import dev.dogleg.groom.Sizes;
import dev.dogleg.groom.StarterTables;
import dev.dogleg.groom.StopQuestion;
import dev.dogleg.itinerary.BreakRule;
import dev.dogleg.itinerary.DayPlan;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.DayShift;
import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.itinerary.Prices;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.model.Species;
import dev.dogleg.plan.DayPlanner;
import dev.dogleg.time.TimeWindow;
import dev.dogleg.time.WorkDay;
import dev.dogleg.travel.BandedTravelTimes;
import dev.dogleg.travel.TrafficBands;
import dev.dogleg.travel.TravelMatrix;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * An ordinary day: five small curly-coated dogs, full groom, quarter-hour drives, half an hour of
 * lunch. Common practice, no source.
 */
class OrdinaryDayTest {
  private static final int LEG_SECONDS = 15 * 60;

  @Test
  void takes585MinutesAndTheStarterShiftHoldsIt() throws Exception {
    TimeWindow shift = onCard("mon: (\\d+):(\\d+)-(\\d+):(\\d+)");
    TimeWindow lunch = onCard("start: (\\d+):(\\d+)-(\\d+):(\\d+)");
    int serviceSeconds = stopSeconds();
    List<Visit> visits =
        IntStream.rangeClosed(1, 5)
            .mapToObj(door -> Visit.booked("dog" + door, door, serviceSeconds))
            .toList();
    WorkDay day = new WorkDay(LocalDate.of(2027, 3, 1), ZoneOffset.UTC);
    BreakRule rest = new BreakRule(30 * 60, lunch);
    DayRequest request =
        new DayRequest(
            new DayShift("robin", "van", day, 0, 0, shift, 0, Optional.of(rest)),
            visits,
            new BandedTravelTimes(everyLegAlike(6), TrafficBands.none(List.of("road"))),
            Prices.STARTER,
            1,
            DayRequest.USUAL_EFFORT);

    DayPlan plan = DayPlanner.plan(request);

    assertEquals(0, plan.leftOutBooked());
    assertEquals(List.of(), DayAudit.check(request, plan));
    PlannedStop leave = plan.stops().get(0);
    PlannedStop home = plan.stops().get(plan.stops().size() - 1);
    // 5 x (75 + 18) + 6 x 15 + 30 = 585; set-up and close-down at home are not in it.
    assertEquals(585 * 60, home.arriveSeconds() - leave.leaveSeconds());
    assertTrue(shift.fromSeconds() <= leave.leaveSeconds(), "leaves within the shift");
    assertTrue(home.arriveSeconds() <= shift.toSeconds(), "is home within the shift");
  }

  private static int stopSeconds() {
    GroomTables tables = StarterTables.load();
    Faults faults = new Faults();
    GroomQuestion dog =
        GroomQuestion.of(
            tables.look(Optional.of(Species.DOG), "Cockapoo").withSize(Sizes.weighed(8_000)),
            tables.order(Species.DOG, "full", Where.NOWHERE, faults).orElseThrow());
    return new GroomEstimator(tables).stop(StopQuestion.of(List.of(dog))).plannedSeconds();
  }

  private static TravelMatrix everyLegAlike(int places) {
    int[][] seconds = new int[places][places];
    int[][] metres = new int[places][places];
    for (int from = 0; from < places; from++) {
      Arrays.fill(seconds[from], LEG_SECONDS);
      Arrays.fill(metres[from], 10_000);
      seconds[from][from] = 0;
      metres[from][from] = 0;
    }
    return TravelMatrix.of(seconds, metres);
  }

  /** A span of the starter card; read as text, because the core knows no card. */
  private static TimeWindow onCard(String line) throws Exception {
    try (InputStream card =
        GroomTables.class.getResourceAsStream("/dev/dogleg/seeds/business.yaml")) {
      Matcher span =
          Pattern.compile(line).matcher(new String(card.readAllBytes(), StandardCharsets.UTF_8));
      assertTrue(span.find(), line);
      int[] numbers =
          IntStream.rangeClosed(1, 4).map(i -> Integer.parseInt(span.group(i))).toArray();
      return new TimeWindow(
          numbers[0] * 3600 + numbers[1] * 60, numbers[2] * 3600 + numbers[3] * 60);
    }
  }
}
