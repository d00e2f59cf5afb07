package dev.dogleg.plan.week;

import dev.dogleg.itinerary.DayChoice;
import dev.dogleg.itinerary.DayPlan;
import dev.dogleg.itinerary.DayRule;
import dev.dogleg.itinerary.DayShift;
import dev.dogleg.itinerary.DayTerms;
import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.itinerary.Prices;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.itinerary.WeekDay;
import dev.dogleg.itinerary.WeekPlan;
import dev.dogleg.itinerary.WeekRequest;
import dev.dogleg.plan.week.SolomonFile.Node;
import dev.dogleg.time.TimeWindow;
import dev.dogleg.time.WorkDay;
import dev.dogleg.travel.BandedTravelTimes;
import dev.dogleg.travel.TrafficBands;
import dev.dogleg.travel.TravelMatrix;
import dev.dogleg.travel.TravelTimes;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.TreeMap;

/**
 * Solomon's instances as weeks: as many van-days, all alike, as the file has vehicles; a customer
 * is a counted booking that any of them may serve; the capacity is a rule of load points.
 *
 * <p>A second of ours is a tenth of the file's unit. {@link Prices#DRIVE_ONLY}: nothing but drives
 * costs, 60 sixtieths a second, so the cost is 60 times the tenths and nothing is rounded. No
 * break, no traffic. A window of the file bounds the start of the service, ours the arrival: the
 * same, because a van that arrives by the window's end may start by it, and one that starts by it
 * has arrived.
 */
final class SolomonWeeks {
  private static final long SIXTIETHS_A_TENTH = Prices.SIXTIETHS_PER_DRIVE_SECOND;
  private static final ZoneId ZONE = ZoneId.of("Etc/UTC");

  private SolomonWeeks() {}

  /**
   * The week of an instance.
   *
   * @param file the instance
   * @param seed seed of the planner
   */
  static WeekRequest week(SolomonFile file, long seed) {
    TravelTimes travel = travel(file);
    Map<String, Integer> demands = new TreeMap<>();
    for (int c = 1; c <= file.customers(); c++) {
      if (file.nodes().get(c).demand() > 0) {
        demands.put(id(c), file.nodes().get(c).demand());
      }
    }
    DayTerms terms =
        DayTerms.of(
            List.of(
                new DayRule.AtMost("capacity", OptionalLong.empty(), demands, file.capacity())));
    List<WeekDay> days = new ArrayList<>();
    for (int van = 0; van < file.vehicles(); van++) {
      days.add(new WeekDay(shift(file.nodes().get(0), van), travel, terms));
    }
    List<WeekBooking> bookings = new ArrayList<>();
    for (int c = 1; c <= file.customers(); c++) {
      Node node = file.nodes().get(c);
      Visit visit =
          Visit.booked(id(c), c, tenths(node.service()))
              .arriving(List.of(new TimeWindow(tenths(node.ready()), tenths(node.due()))));
      List<DayChoice> choices = new ArrayList<>();
      for (int van = 0; van < file.vehicles(); van++) {
        choices.add(new DayChoice(van, visit, 0));
      }
      bookings.add(new WeekBooking(id(c), true, 0, choices));
    }
    return new WeekRequest(days, bookings, Prices.DRIVE_ONLY, seed, Long.MAX_VALUE / 4);
  }

  private static DayShift shift(Node depot, int van) {
    return new DayShift(
        "g%02d".formatted(van),
        "v%02d".formatted(van),
        new WorkDay(LocalDate.of(2026, 3, 2), ZONE),
        0,
        0,
        new TimeWindow(tenths(depot.ready()), tenths(depot.due())),
        0,
        Optional.empty());
  }

  private static TravelTimes travel(SolomonFile file) {
    int n = file.nodes().size();
    int[][] tenths = new int[n][n];
    for (int from = 0; from < n; from++) {
      for (int to = 0; to < n; to++) {
        tenths[from][to] = file.arcTenths(from, to);
      }
    }
    TravelMatrix matrix = TravelMatrix.of(tenths, new int[n][n]);
    return new BandedTravelTimes(matrix, TrafficBands.none(matrix.roadClasses()));
  }

  private static String id(int customer) {
    return "c%03d".formatted(customer);
  }

  private static int tenths(int units) {
    return units * SolomonFile.TENTHS;
  }

  /**
   * A cost in the file's unit.
   *
   * @param sixtieths cost of a week above
   */
  static double units(long sixtieths) {
    return (double) sixtieths / (SIXTIETHS_A_TENTH * SolomonFile.TENTHS);
  }

  /** {@return who is served by which van in which order, in the file's numbers} */
  static List<List<Integer>> routes(WeekPlan plan) {
    List<List<Integer>> routes = new ArrayList<>();
    for (DayPlan day : plan.days()) {
      routes.add(
          day.stops().stream()
              .filter(stop -> stop.kind() == PlannedStop.Kind.VISIT)
              .map(stop -> Integer.parseInt(stop.visitId().substring(1)))
              .toList());
    }
    return routes;
  }

  /**
   * Length of routes by the file alone.
   *
   * @param file the instance
   * @param routes customers of each van in their order; an empty route is not driven
   * @return tenths
   * @throws IllegalStateException where a window, the capacity, the depot's hours, the number of
   *     vans or "each customer just once" is broken
   */
  static long checkedTenths(SolomonFile file, List<List<Integer>> routes) {
    List<Integer> served = new ArrayList<>();
    long length = 0;
    for (List<Integer> route : routes) {
      length += routeTenths(file, route);
      served.addAll(route);
    }
    Collections.sort(served);
    require(served.size() == file.customers() && routes.size() <= file.vehicles(), "numbers");
    for (int c = 1; c <= file.customers(); c++) {
      require(served.get(c - 1) == c, "customer " + c);
    }
    return length;
  }

  private static long routeTenths(SolomonFile file, List<Integer> route) {
    if (route.isEmpty()) {
      return 0;
    }
    int here = 0;
    int load = 0;
    long length = 0;
    long clock = tenths(file.nodes().get(0).ready());
    for (int c : route) {
      Node node = file.nodes().get(c);
      length += file.arcTenths(here, c);
      clock = Math.max(clock + file.arcTenths(here, c), tenths(node.ready()));
      require(clock <= tenths(node.due()), "window of " + c);
      clock += tenths(node.service());
      load += node.demand();
      here = c;
    }
    require(load <= file.capacity(), "capacity");
    length += file.arcTenths(here, 0);
    require(clock + file.arcTenths(here, 0) <= tenths(file.nodes().get(0).due()), "return");
    return length;
  }

  private static void require(boolean holds, String what) {
    if (!holds) {
      throw new IllegalStateException("the plan breaks: " + what);
    }
  }
}
