package dev.dogleg.plan;

import dev.dogleg.itinerary.BreakRule;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.DayShift;
import dev.dogleg.itinerary.Prices;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.time.TimeWindow;
import dev.dogleg.time.WorkDay;
import dev.dogleg.travel.BandedTravelTimes;
import dev.dogleg.travel.TrafficBands;
import dev.dogleg.travel.TravelMatrix;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SplittableRandom;

/**
 * Days as a groomer has them, by seed: doors over 20 by 16 km (12 by 10 where there are more than
 * 12), three classes of road, five traffic bands, starter prices, half an hour of break between
 * 11:30 and 13:30, shift 8 to 17 with an hour of overtime.
 */
public final class CustomaryDays {
  private static final List<String> ROADS = List.of("fast", "main", "street");

  private CustomaryDays() {}

  /**
   * A day.
   *
   * @param seed seed
   * @param n visits, all booked
   * @param windows share of visits with an arrival window, in percent
   * @return the request; services fill about two thirds of the shift
   */
  public static DayRequest day(long seed, int n, int windows) {
    return day(seed, n, windows, OptionalInt.empty());
  }

  /**
   * A day on which every owner was told a span for arrival.
   *
   * @param seed seed
   * @param n visits, all booked
   * @param minutes length of each span, from a whole quarter of an hour: groomers tell one hour,
   *     two where little is certain (common practice, no source)
   * @return the request; services fill about two thirds of the shift
   */
  public static DayRequest told(long seed, int n, int minutes) {
    return day(seed, n, 100, OptionalInt.of(minutes));
  }

  private static DayRequest day(long seed, int n, int windows, OptionalInt told) {
    SplittableRandom random = new SplittableRandom(seed * 1_000_003 + n);
    double size = n <= 12 ? 1 : 0.6;
    double[] x = new double[n + 1];
    double[] y = new double[n + 1];
    for (int i = 0; i <= n; i++) {
      x[i] = size * random.nextDouble() * 20_000;
      y[i] = size * random.nextDouble() * 16_000;
    }
    int service = (n <= 12 ? 380 : 300) * 60 / n;
    int[] promised = promised(x, y, service);
    List<Visit> visits = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      Visit visit =
          Visit.booked("v%02d".formatted(i), i, service * (70 + random.nextInt(60)) / 100);
      visits.add(
          random.nextInt(100) < windows
              ? visit.arriving(
                  List.of(
                      told.isPresent()
                          ? toldSpan(random, promised[i], told.getAsInt())
                          : window(random, promised[i])))
              : visit);
    }
    DayShift shift =
        new DayShift(
            "g",
            "v",
            new WorkDay(LocalDate.of(2026, 3, 3), ZoneId.of("Etc/UTC")),
            n,
            n,
            new TimeWindow(8 * 3600, 17 * 3600),
            3600,
            Optional.of(new BreakRule(1800, new TimeWindow(11 * 3600 + 1800, 13 * 3600 + 1800))));
    return new DayRequest(
        shift,
        visits,
        new BandedTravelTimes(roads(random, x, y), traffic()),
        Prices.STARTER,
        seed,
        DayRequest.USUAL_EFFORT);
  }

  /**
   * A day with more visits than room.
   *
   * @param seed seed
   * @param n visits, all booked, each of 50 minutes and more
   * @return the request
   */
  public static DayRequest crowded(long seed, int n) {
    DayRequest day = day(seed, n, 0);
    List<Visit> visits =
        day.visits().stream()
            .map(visit -> Visit.booked(visit.id(), visit.place(), longer(visit)))
            .toList();
    return new DayRequest(
        day.shift(), visits, day.travel(), day.prices(), day.seed(), day.effort());
  }

  private static int longer(Visit visit) {
    return 3000 + visit.serviceSeconds() % 900;
  }

  /** About when each door would be reached, driving to the nearest next one. */
  private static int[] promised(double[] x, double[] y, int service) {
    int n = x.length - 1;
    int[] at = new int[n];
    int here = n;
    int time = 8 * 3600 + 1800;
    for (int k = 0; k < n; k++) {
      int next = -1;
      for (int j = 0; j < n; j++) {
        if (at[j] == 0 && (next < 0 || far(x, y, here, j) < far(x, y, here, next))) {
          next = j;
        }
      }
      time += 60 + (int) (far(x, y, here, next) * 1.3 / 8);
      if (time > 12 * 3600 && time - service - 1800 < 12 * 3600) {
        time += 1800;
      }
      at[next] = time;
      time += service;
      here = next;
    }
    return at;
  }

  private static double far(double[] x, double[] y, int i, int j) {
    return Math.hypot(x[i] - x[j], y[i] - y[j]);
  }

  /** A span of so many minutes from a whole quarter of an hour that begins before the time. */
  private static TimeWindow toldSpan(SplittableRandom random, int promised, int minutes) {
    int from = promised - random.nextInt(minutes * 60);
    int start = Math.max(8 * 3600, from / 900 * 900);
    return new TimeWindow(start, start + 60 * minutes);
  }

  /** Two to four hours from a whole half hour, about the time promised. */
  private static TimeWindow window(SplittableRandom random, int promised) {
    int hours = 2 + random.nextInt(3);
    int from = promised - 1800 - random.nextInt(3600 * (hours - 1));
    int start = Math.max(8 * 3600, from / 1800 * 1800);
    return new TimeWindow(start, start + 3600 * hours);
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
          double length = 400 + 1.3 * Math.hypot(x[i] - x[j], y[i] - y[j]);
          double fast = random.nextDouble() * 0.3;
          double main = 0.4;
          metres[pair] = (int) length;
          seconds[pair * 3] = (int) (length * fast / 25);
          seconds[pair * 3 + 1] = (int) (length * main / 16);
          seconds[pair * 3 + 2] = (int) (length * (1 - fast - main) / 9);
          turns[pair] = 10 + random.nextInt(40);
        }
      }
    }
    return new TravelMatrix(n, ROADS, seconds, turns, metres, reaches);
  }

  private static TrafficBands traffic() {
    return new TrafficBands(
        ROADS,
        List.of(
            new TrafficBands.Band("night", 0, List.of(1000, 1000, 1000)),
            new TrafficBands.Band("morning", 7 * 3600, List.of(1450, 1350, 1200)),
            new TrafficBands.Band("day", 9 * 3600, List.of(1050, 1100, 1050)),
            new TrafficBands.Band("school", 15 * 3600, List.of(1150, 1250, 1200)),
            new TrafficBands.Band("evening", 16 * 3600 + 1800, List.of(1400, 1350, 1200)),
            new TrafficBands.Band("late", 18 * 3600 + 1800, List.of(1000, 1000, 1000))));
  }
}
