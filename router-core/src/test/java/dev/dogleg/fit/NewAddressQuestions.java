package dev.dogleg.fit;

import dev.dogleg.fit.FitQuestion.OtherDays;
import dev.dogleg.itinerary.DayChoice;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.itinerary.WeekDay;
import dev.dogleg.itinerary.WeekRequest;
import dev.dogleg.plan.week.RoadWeeks;
import dev.dogleg.plan.week.StarterTraffic;
import dev.dogleg.plan.week.WeekPlanner;
import dev.dogleg.roads.DrawnPlaces;
import dev.dogleg.roads.RoadPoint;
import dev.dogleg.travel.BandedTravelTimes;
import dev.dogleg.travel.TravelMatrix;
import dev.dogleg.travel.TravelTimes;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.LongSupplier;

/**
 * Times questions from doors that no road time is known of yet: drives among the week's places and
 * the new one on the sample map, then tier A.
 */
final class NewAddressQuestions {
  private static final int PLANNED = 30;
  private static final long PLAN_EFFORT = 2_000_000L;
  private static final double FILL = 0.85;
  private static final int SERVICE_SECONDS = 5_400;

  private final DrawnPlaces map;
  private final LongSupplier nanos;
  private final List<Double> millis = new ArrayList<>();

  /**
   * Opens the sample map; the first time it is read, some 20 processor seconds.
   *
   * @param root the project's folder
   * @param nanos clock
   */
  NewAddressQuestions(Path root, LongSupplier nanos) {
    map =
        DrawnPlaces.of(
            root.resolve("maps-sample/brindlewick.osm.pbf"),
            root.resolve("router-core/target/ledger-maps"));
    this.nanos = nanos;
  }

  /** Asks of one week. */
  void ask(long seed, int questions, boolean count) {
    RoadWeeks.Shape shape = new RoadWeeks.Shape(PLANNED, 1, FILL, false, false, PLAN_EFFORT);
    int week = shape.places();
    List<RoadPoint> points = map.points(week + questions, seed);
    WeekRequest request = RoadWeeks.week(seed, shape, travel(map.drives(points.subList(0, week))));
    FitWeek fit = FitWeek.of(request, WeekPlanner.plan(request), Set.of());
    for (int q = 0; q < questions; q++) {
      List<RoadPoint> places = new ArrayList<>(points.subList(0, week));
      places.add(points.get(week + q));
      long start = nanos.getAsLong();
      TravelTimes travel = travel(map.drives(places));
      List<WeekDay> days =
          request.days().stream()
              .map(day -> new WeekDay(day.shift(), travel, day.terms()))
              .toList();
      fit.ask(new FitQuestion(newcomer(request, week), days, 3, OtherDays.NEVER, 1));
      if (count) {
        millis.add((nanos.getAsLong() - start) / 1e6);
      }
    }
  }

  private static TravelTimes travel(TravelMatrix drives) {
    return new BandedTravelTimes(drives, StarterTraffic.bands(drives.roadClasses()));
  }

  private static WeekBooking newcomer(WeekRequest request, int place) {
    List<DayChoice> choices = new ArrayList<>();
    for (int day = 0; day < request.days().size(); day++) {
      choices.add(new DayChoice(day, Visit.booked("newcomer", place, SERVICE_SECONDS), 0));
    }
    return new WeekBooking("newcomer", true, 0, choices);
  }

  /** {@return what each question counted took} */
  List<Double> millis() {
    return millis;
  }
}
