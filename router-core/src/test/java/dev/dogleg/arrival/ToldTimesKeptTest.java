package dev.dogleg.arrival;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.groom.LearnedKind;
import dev.dogleg.groom.ServiceTime;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.DaySpread;
import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.itinerary.ServiceSpread;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.plan.CustomaryDays;
import dev.dogleg.schedule.DayTiming;
import dev.dogleg.schedule.TimedOrder;
import dev.dogleg.time.TimeWindow;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * Told times on days of another kind than the model's: 95 of 100 are kept (the share that 47 CFR
 * 76.309 asks of cable companies; an hour's span is groomers' custom, common practice, no source).
 */
class ToldTimesKeptTest {
  private static final int DAYS = 2_000;
  private static final int YEARS = 4;
  private static final int STOP_SECONDS = 1_080;

  private int told;
  private int kept;
  private int onWayTold;
  private int onWayKept;
  private double waited;
  private double spared;
  private final List<Integer> widths = new ArrayList<>();
  private final List<Integer> firstWidths = new ArrayList<>();
  private final List<Integer> onWayWidths = new ArrayList<>();

  @Test
  void ninetyFiveOfAHundredAreKeptAndTheSpansAreNarrow() {
    for (int year = 1; year <= YEARS; year++) {
      HeavyTailedYear groomer = HeavyTailedYear.of(year);
      DaySpread spread = spread(groomer);
      for (int d = 0; d < DAYS / YEARS; d++) {
        day(groomer, spread, 1_000L * year + d);
      }
    }
    String said =
        "kept %.2f of 100, width %d min, first %d, on the way %.2f and %d; waited %.1f min a day, %.1f without"
            .formatted(
                100.0 * kept / told,
                median(widths) / 60,
                median(firstWidths) / 60,
                100.0 * onWayKept / onWayTold,
                median(onWayWidths) / 60,
                waited / DAYS / 60,
                spared / DAYS / 60);
    System.out.println("told times: " + said);
    assertEquals(95, 100.0 * kept / told, 1.5, said);
    assertTrue(median(widths) <= 3_600, said);
    assertTrue(median(firstWidths) <= 1_800, said);
    assertTrue(median(onWayWidths) <= 1_800, said);
    assertTrue(100.0 * onWayKept / onWayTold >= 93.5, said);
  }

  /** Spreads of the day and its drives as learned. */
  private static DaySpread spread(HeavyTailedYear groomer) {
    return new DaySpread(
        spread(groomer, LearnedKind.DAY),
        spread(groomer, LearnedKind.DRIVE_DAY),
        spread(groomer, LearnedKind.DRIVE_LEG));
  }

  private static double spread(HeavyTailedYear groomer, LearnedKind kind) {
    return groomer.learned().spreadPermille(kind).orElseThrow() / 1000.0;
  }

  private void day(HeavyTailedYear groomer, DaySpread spread, long seed) {
    int doors = 5 + (int) (seed % 3);
    List<String> pets = groomer.pets();
    Map<String, ServiceSpread> services = new HashMap<>();
    Map<String, String> petOf = new HashMap<>();
    DayRequest plain = CustomaryDays.day(seed, doors, 0);
    List<Visit> visits = new ArrayList<>();
    int sum = 0;
    for (Visit visit : plain.visits()) {
      String pet = pets.get(groomer.nextInt(pets.size()));
      ServiceTime time = groomer.estimate(pet).plusFixed(STOP_SECONDS);
      if (sum + time.quantileSeconds(500) > 27_000) {
        break;
      }
      sum += time.quantileSeconds(500);
      petOf.put(visit.id(), pet);
      services.put(
          visit.id(),
          new ServiceSpread(time.fixedSeconds(), time.medianSeconds(), time.logSpread()));
      visits.add(Visit.booked(visit.id(), visit.place(), time.quantileSeconds(500)));
    }
    DayRequest request =
        new DayRequest(plain.shift(), visits, plain.travel(), plain.prices(), 1, 1);
    TimedOrder timed = DayTiming.time(request, IntStream.range(0, visits.size()).boxed().toList());
    if (!timed.possible()) {
      return;
    }
    List<TimeToTell> spans =
        TimesToTell.eveningBefore(
            request, timed.stops(), CourseTerms.fine(services, spread), SpanTerms.EVENING_BEFORE);
    live(groomer, request, timed.stops(), spans, petOf, spread);
  }

  private void live(
      HeavyTailedYear groomer,
      DayRequest request,
      List<PlannedStop> stops,
      List<TimeToTell> spans,
      Map<String, String> petOf,
      DaySpread spread) {
    HeavyTailedYear.DayMood mood = groomer.mood();
    double now = stops.get(0).leaveSeconds();
    double free = now;
    int at = stops.get(0).place();
    int door = 0;
    for (PlannedStop stop : stops) {
      TimeToTell span = door < spans.size() ? spans.get(door) : null;
      if (stop.place() != at && stop.kind() != PlannedStop.Kind.HOME) {
        int planned = request.travel().driveSeconds(at, stop.place(), (int) now);
        TimeToTell way =
            TimesToTell.onMyWay(
                span.visitId(), planned, (int) now, TimeWindow.ALWAYS, spread, SpanTerms.ON_MY_WAY);
        double drive = groomer.driven(planned, mood);
        now += drive;
        free += drive;
        at = stop.place();
        told++;
        kept += now <= span.arriveWithin().toSeconds() ? 1 : 0;
        onWayTold++;
        onWayKept += now <= way.arriveWithin().toSeconds() ? 1 : 0;
        int width = width(span);
        (door == 0 ? firstWidths : widths).add(width);
        onWayWidths.add(width(way));
      }
      if (stop.kind() == PlannedStop.Kind.BREAK) {
        int from = request.shift().breakRule().orElseThrow().startWithin().fromSeconds();
        int length = request.shift().breakRule().orElseThrow().lengthSeconds();
        now = Math.max(now, from) + length;
        spared += Math.max(0, from - free);
        free = Math.max(free, from) + length;
      }
      if (stop.kind() == PlannedStop.Kind.VISIT) {
        waited += Math.max(0, span.arriveWithin().fromSeconds() - now);
        now = Math.max(now, span.arriveWithin().fromSeconds());
        double service =
            groomer.groomed(petOf.get(stop.visitId()), mood)
                + STOP_SECONDS * (0.85 + 0.3 * groomer.nextInt(1000) / 1000.0);
        now += service;
        free += service;
        door++;
      }
    }
  }

  private static int width(TimeToTell span) {
    return span.arriveWithin().toSeconds() - span.arriveWithin().fromSeconds();
  }

  private static int median(List<Integer> values) {
    List<Integer> sorted = new ArrayList<>(values);
    Collections.sort(sorted);
    return sorted.get(sorted.size() / 2);
  }
}
