package dev.dogleg.plan.week;

import dev.dogleg.arrival.ArrivalForecast;
import dev.dogleg.arrival.CourseTerms;
import dev.dogleg.arrival.DoorArrival;
import dev.dogleg.itinerary.DayChoice;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.DaySpread;
import dev.dogleg.itinerary.DayTerms;
import dev.dogleg.itinerary.OddsTerms;
import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.itinerary.ServiceSpread;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.itinerary.WeekDay;
import dev.dogleg.itinerary.WeekPlan;
import dev.dogleg.itinerary.WeekRequest;
import dev.dogleg.time.TimeWindow;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Collectors;

/**
 * A week on which most owners were told an hour before the last three bookings came in, by seed;
 * and the same week planned with and without a price of odds.
 */
final class PromisedWeeks {
  private static final int LATE_BOOKINGS = 3;

  /** Leaving a promise out breaks it, however odds are priced. */
  private static final long BROKEN_SIXTIETHS = 60L * 3_600;

  private static final int QUARTER = 900;
  private static final int HOUR = 3_600;
  private static final int STOP_SECONDS = 1_080;

  private final WeekRequest plain;
  private final Map<String, ServiceSpread> services = new HashMap<>();
  private final Set<String> told = new HashSet<>();

  /**
   * How a plan does.
   *
   * @param leftOut booked visits left out
   * @param told number of told times
   * @param kept expected number of those kept
   * @param under told times kept less often than 95 of 100
   * @param driveSeconds driving of the week
   */
  record Figures(int leftOut, int told, double kept, int under, int driveSeconds) {}

  PromisedWeeks(long seed, int bookings) {
    SplittableRandom random = new SplittableRandom(seed);
    WeekRequest week =
        CustomaryWeeks.week(
            seed, new CustomaryWeeks.Shape(bookings, 1, 0.85, true, WeekPlanner.USUAL_EFFORT));
    WeekRequest early =
        with(week, week.days(), week.bookings().subList(0, bookings - LATE_BOOKINGS));
    WeekPlan first = WeekPlanner.plan(early);
    Map<String, Integer> dayOf = new HashMap<>();
    Map<String, TimeWindow> spans = new HashMap<>();
    for (int day = 0; day < first.days().size(); day++) {
      for (PlannedStop stop : first.days().get(day).stops()) {
        if (stop.kind() == PlannedStop.Kind.VISIT && random.nextInt(4) > 0) {
          int from = (stop.arriveSeconds() - QUARTER * random.nextInt(4)) / QUARTER * QUARTER;
          spans.put(stop.visitId(), new TimeWindow(from, from + HOUR));
          dayOf.put(stop.visitId(), day);
        }
      }
    }
    List<WeekBooking> bound = new ArrayList<>();
    for (WeekBooking booking : week.bookings()) {
      Integer day = dayOf.get(booking.id());
      List<DayChoice> choices = new ArrayList<>();
      for (DayChoice choice : booking.choices()) {
        Visit visit = choice.visit();
        services.put(
            visit.id(),
            new ServiceSpread(
                STOP_SECONDS,
                Math.max(0, visit.serviceSeconds() - STOP_SECONDS),
                random.nextInt(4) == 0 ? 0.22 : 0.14));
        if (day == null) {
          choices.add(choice);
        } else if (choice.day() == day) {
          Visit promised = visit.arriving(List.of(spans.get(visit.id())));
          choices.add(new DayChoice(day, promised, choice.extraSixtieths()));
          told.add(visit.id());
        }
      }
      long price = day == null ? 0 : BROKEN_SIXTIETHS;
      bound.add(new WeekBooking(booking.id(), true, price, choices));
    }
    plain = with(week, week.days(), bound);
  }

  private static WeekRequest with(
      WeekRequest week, List<WeekDay> days, List<WeekBooking> bookings) {
    return new WeekRequest(days, bookings, week.prices(), week.seed(), week.effort());
  }

  Figures without() {
    return figures(WeekPlanner.plan(plain));
  }

  Figures with(long brokenSixtieths) {
    OddsTerms odds = new OddsTerms(services, DaySpread.STARTER, told, 950, brokenSixtieths);
    List<WeekDay> days =
        plain.days().stream()
            .map(day -> new WeekDay(day.shift(), day.travel(), DayTerms.NONE.with(odds)))
            .toList();
    return figures(WeekPlanner.plan(with(plain, days, plain.bookings())));
  }

  private Figures figures(WeekPlan plan) {
    double kept = 0;
    int count = 0;
    int under = 0;
    int drive = 0;
    for (int day = 0; day < plan.days().size(); day++) {
      DayRequest asked = plain.asking(day);
      Map<String, Integer> ends =
          asked.visits().stream()
              .collect(
                  Collectors.toMap(Visit::id, visit -> visit.arriveWithin().get(0).toSeconds()));
      List<PlannedStop> stops = plan.days().get(day).stops();
      drive += stops.stream().mapToInt(PlannedStop::driveSeconds).sum();
      CourseTerms terms = CourseTerms.fine(services, DaySpread.STARTER);
      for (DoorArrival door : ArrivalForecast.of(asked, stops, terms)) {
        if (told.contains(door.visitId())) {
          double by = door.arrival().by(ends.get(door.visitId()));
          kept += by;
          count++;
          under += by < 0.95 ? 1 : 0;
        }
      }
    }
    return new Figures(plan.leftOutCounted(), count, kept, under, drive);
  }
}
