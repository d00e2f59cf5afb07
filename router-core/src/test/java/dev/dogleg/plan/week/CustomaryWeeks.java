package dev.dogleg.plan.week;

import dev.dogleg.itinerary.BreakRule;
import dev.dogleg.itinerary.DayChoice;
import dev.dogleg.itinerary.DayShift;
import dev.dogleg.itinerary.DayTerms;
import dev.dogleg.itinerary.Prices;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.itinerary.WeekDay;
import dev.dogleg.itinerary.WeekRequest;
import dev.dogleg.time.TimeWindow;
import dev.dogleg.time.WorkDay;
import dev.dogleg.travel.BandedTravelTimes;
import dev.dogleg.travel.TrafficBands;
import dev.dogleg.travel.TravelMatrix;
import dev.dogleg.travel.TravelTimes;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

/**
 * Overloaded weeks as groomers have them, by seed: doors over 20 by 16 km, traffic bands, a break,
 * starter prices; five days a van. The sum of services and 12 minutes of drive each is 1.15 times
 * the shifts less breaks.
 */
public final class CustomaryWeeks {
  private static final List<String> ROADS = List.of("fast", "main", "street");

  private CustomaryWeeks() {}

  /** What a seeded week is like. */
  public record Shape(int bookings, int vans, double fill, boolean real, long effort) {}

  /**
   * A week.
   *
   * @param seed seed
   * @param shape number of bookings and vans, load, and whether traffic and breaks are on
   * @return the request
   */
  public static WeekRequest week(long seed, Shape shape) {
    SplittableRandom random = new SplittableRandom(seed * 1_000_003 + shape.bookings);
    int places = shape.bookings + shape.vans;
    double[] x = new double[places];
    double[] y = new double[places];
    for (int i = 0; i < places; i++) {
      x[i] = random.nextDouble() * 20_000;
      y[i] = random.nextDouble() * 16_000;
    }
    TravelTimes travel =
        new BandedTravelTimes(roads(random, x, y), shape.real ? traffic() : freeFlow());
    List<WeekDay> days = new ArrayList<>();
    for (int d = 0; d < 5; d++) {
      for (int van = 0; van < shape.vans; van++) {
        days.add(new WeekDay(shift(d, van, shape), travel, DayTerms.NONE));
      }
    }
    int shiftSeconds = 9 * 3600 - (shape.real ? 1800 : 0);
    int[] service = services(random, shape, shiftSeconds);
    List<WeekBooking> bookings = new ArrayList<>();
    for (int b = 0; b < shape.bookings; b++) {
      String id = "b%03d".formatted(b);
      Visit visit = Visit.booked(id, b, service[b]);
      if (random.nextInt(100) < 30) {
        int from = 8 * 3600 + 1800 * random.nextInt(11);
        visit =
            visit.arriving(List.of(new TimeWindow(from, from + 3600 * (2 + random.nextInt(3)))));
      }
      List<DayChoice> choices = new ArrayList<>();
      boolean anyDay = random.nextInt(3) == 0;
      boolean[] on = new boolean[5];
      for (int d = 0; d < 5; d++) {
        on[d] = anyDay || random.nextInt(2) == 0;
      }
      on[random.nextInt(5)] = true;
      for (int day = 0; day < days.size(); day++) {
        if (on[day / shape.vans]) {
          choices.add(new DayChoice(day, visit, 0));
        }
      }
      bookings.add(new WeekBooking(id, true, 0, choices));
    }
    return new WeekRequest(days, bookings, Prices.STARTER, seed, shape.effort);
  }

  private static int[] services(SplittableRandom random, Shape shape, int shiftSeconds) {
    double[] weight = new double[shape.bookings];
    double sum = 0;
    for (int i = 0; i < weight.length; i++) {
      weight[i] = 0.6 + random.nextDouble();
      sum += weight[i];
    }
    double all = shape.fill * 5 * shape.vans * shiftSeconds - 720.0 * shape.bookings;
    int[] service = new int[weight.length];
    for (int i = 0; i < weight.length; i++) {
      service[i] = Math.max(900, (int) (weight[i] / sum * all) / 300 * 300);
    }
    return service;
  }

  private static DayShift shift(int d, int van, Shape shape) {
    return new DayShift(
        "g" + van,
        "v" + van,
        new WorkDay(LocalDate.of(2026, 3, 2).plusDays(d), ZoneId.of("Etc/UTC")),
        shape.bookings + van,
        shape.bookings + van,
        new TimeWindow(8 * 3600, 17 * 3600),
        0,
        shape.real
            ? Optional.of(new BreakRule(1800, new TimeWindow(11 * 3600 + 1800, 13 * 3600 + 1800)))
            : Optional.empty());
  }

  private static TravelMatrix roads(SplittableRandom random, double[] x, double[] y) {
    int n = x.length;
    int[] seconds = new int[n * n * ROADS.size()];
    int[] turns = new int[n * n];
    int[] metres = new int[n * n];
    boolean[] reaches = new boolean[n * n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        int pair = i * n + j;
        reaches[pair] = true;
        if (i != j) {
          double far = Math.hypot(x[i] - x[j], y[i] - y[j]) * (1.2 + 0.2 * random.nextDouble());
          metres[pair] = (int) far;
          double fast = far > 6000 ? 0.5 : 0.1;
          seconds[pair * 3] = (int) (far * fast / 22);
          seconds[pair * 3 + 1] = (int) (far * (0.7 - fast * 0.6) / 13);
          seconds[pair * 3 + 2] = (int) (far * (0.3 - fast * 0.4) / 8);
          turns[pair] = 20 + random.nextInt(60);
        }
      }
    }
    return new TravelMatrix(n, ROADS, seconds, turns, metres, reaches);
  }

  private static TrafficBands traffic() {
    return new TrafficBands(
        ROADS,
        List.of(
            band("night", 0, 1000, 1000, 1000),
            band("morning", 7 * 3600, 1350, 1300, 1150),
            band("day", 9 * 3600 + 1800, 1050, 1100, 1050),
            band("noon", 12 * 3600, 1100, 1200, 1100),
            band("afternoon", 13 * 3600 + 1800, 1050, 1100, 1050),
            band("evening", 16 * 3600, 1400, 1400, 1200)));
  }

  private static TrafficBands freeFlow() {
    return new TrafficBands(ROADS, List.of(band("free", 0, 1000, 1000, 1000)));
  }

  private static TrafficBands.Band band(String name, int from, int fast, int main, int street) {
    return new TrafficBands.Band(name, from, List.of(fast, main, street));
  }
}
