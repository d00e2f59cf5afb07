package dev.dogleg.peers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.ortools.Loader;
import dev.dogleg.fit.FitAnswer;
import dev.dogleg.fit.FitQuestion;
import dev.dogleg.fit.FitQuestion.OtherDays;
import dev.dogleg.fit.FitWeek;
import dev.dogleg.itinerary.DayChoice;
import dev.dogleg.itinerary.DayPlan;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.itinerary.WeekDay;
import dev.dogleg.itinerary.WeekRequest;
import dev.dogleg.plan.DayPlanner;
import dev.dogleg.plan.SeededDays;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * A hundred proven noes of one day, and every yes met on the way, against an independent constraint
 * model (OR-Tools 9.14 CP-SAT).
 */
class FitNoTest {
  private static final int NOES = 100;

  @BeforeAll
  static void loadTheSolver() {
    Loader.loadNativeLibraries();
  }

  @Test
  void everyNoIsOneOfTheConstraintModelToo() {
    int noes = 0;
    for (int seed = 5000; noes < NOES; seed++) {
      assertTrue(seed < 5600, "only " + noes + " noes in 600 days");
      DayRequest day = SeededDays.steady(seed, 3 + seed % 5);
      DayPlan plan = DayPlanner.plan(day);
      Map<String, Integer> placed = new TreeMap<>();
      plan.stops().stream()
          .filter(stop -> stop.kind() == PlannedStop.Kind.VISIT)
          .forEach(stop -> placed.put(stop.visitId(), 0));
      List<WeekBooking> planned = new ArrayList<>();
      List<Visit> served = new ArrayList<>();
      for (Visit visit : day.visits()) {
        if (placed.containsKey(visit.id())) {
          served.add(booked(visit));
          planned.add(booking(visit));
        }
      }
      WeekRequest week =
          new WeekRequest(
              List.of(new WeekDay(day.shift(), day.travel(), day.terms())),
              planned,
              day.prices(),
              1,
              DayRequest.USUAL_EFFORT);
      FitWeek prepared = FitWeek.of(week, placed, Set.of());
      for (Visit visit : day.visits()) {
        if (!placed.containsKey(visit.id())) {
          noes += ask(seed, day, prepared, served, visit) ? 0 : 1;
        }
      }
    }
  }

  private static boolean ask(
      int seed, DayRequest day, FitWeek prepared, List<Visit> served, Visit newcomer) {
    FitAnswer answer =
        prepared.ask(FitQuestion.of(booking(newcomer)).withOtherDays(OtherDays.NEVER));
    List<Visit> all = new ArrayList<>(served);
    all.add(booked(newcomer));
    ConstraintDay model =
        new ConstraintDay(
            new DayRequest(
                day.shift(), all, day.travel(), day.prices(), day.terms(), 1, day.effort()));
    model.solve();
    boolean fits = !answer.offers().isEmpty();
    String name = "seed " + seed + " " + newcomer.id();
    assertEquals(model.leftOutBooked() == 0, fits, name);
    if (fits) {
      assertEquals(model.cost(), answer.offers().get(0).after().costSixtieths(), name);
    } else {
      assertTrue(answer.noDays().get(0).proven(), name);
    }
    return fits;
  }

  private static WeekBooking booking(Visit visit) {
    return new WeekBooking(visit.id(), true, 0, List.of(new DayChoice(0, booked(visit), 0)));
  }

  private static Visit booked(Visit visit) {
    return Visit.booked(visit.id(), visit.place(), visit.serviceSeconds())
        .arriving(visit.arriveWithin())
        .doneBy(visit.doneBySeconds())
        .vanOnlyWithin(visit.vanWithin())
        .first(visit.first());
  }
}
