package dev.dogleg.plan.week;

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
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;

/**
 * Weeks in which a day has room for two doors next to each other on a ring of five, by seed: halves
 * of days serve all five in two and a half, whole days serve four in two.
 *
 * <p>Edges of a graph and its vertices: what pairs can do in halves is a fractional matching, and
 * an odd ring is where it beats a whole one (Edmonds 1965, Canadian Journal of Mathematics
 * 17:449-467). Of three doors of such a ring the halves hold two or more just once, so no cut of
 * three says anything.
 */
final class RingWeeks {
  private static final int RING = 5;
  private static final int HOUR = 3600;
  private static final int HOME = 1200;
  private static final int NEAR = 600;
  private static final int FAR = 1500;
  private static final List<String> ROADS = List.of("street");

  private RingWeeks() {}

  /**
   * A week.
   *
   * @param seed seed
   * @param rings rings of five doors, each door with one booking
   * @param days days of one van, all alike but for the way to its home
   * @param prices prices
   * @return the request
   */
  static WeekRequest week(long seed, int rings, int days, Prices prices) {
    Random random = new Random(seed);
    int n = RING * rings;
    List<Integer> doors = new ArrayList<>(IntStream.range(0, n).boxed().toList());
    Collections.shuffle(doors, random);
    int places = n + 2;
    int[] seconds = new int[places * places];
    boolean[] reaches = new boolean[places * places];
    for (int i = 0; i < places; i++) {
      for (int j = 0; j < places; j++) {
        reaches[i * places + j] = true;
        if (i != j) {
          boolean home = i >= n || j >= n;
          boolean near = !home && beside(doors.get(i), doors.get(j));
          int least = home ? HOME : near ? NEAR : FAR;
          seconds[i * places + j] = least + random.nextInt(60);
        }
      }
    }
    TravelMatrix drives =
        new TravelMatrix(
            places, ROADS, seconds, new int[places * places], new int[places * places], reaches);
    TrafficBands free =
        new TrafficBands(ROADS, List.of(new TrafficBands.Band("free", 0, List.of(1000))));
    BandedTravelTimes travel = new BandedTravelTimes(drives, free);
    // Two grooms of 1.5 hours, both ways home, and a way between neighbours: not one between
    // others.
    int length = 3 * HOUR + 2 * HOME + NEAR + 200;
    List<WeekDay> vanDays = new ArrayList<>();
    for (int d = 0; d < days; d++) {
      int home = n + d % 2;
      WorkDay day = new WorkDay(LocalDate.of(2026, 3, 2).plusDays(d), ZoneId.of("Etc/UTC"));
      TimeWindow hours = new TimeWindow(8 * HOUR, 8 * HOUR + length);
      DayShift shift = new DayShift("g", "v", day, home, home, hours, 0, Optional.empty());
      vanDays.add(new WeekDay(shift, travel, DayTerms.NONE));
    }
    List<WeekBooking> bookings = new ArrayList<>();
    for (int b = 0; b < n; b++) {
      Visit visit = Visit.booked("b%02d".formatted(b), b, 3 * HOUR / 2);
      List<DayChoice> choices = new ArrayList<>();
      for (int d = 0; d < days; d++) {
        choices.add(new DayChoice(d, visit, 0));
      }
      bookings.add(new WeekBooking(visit.id(), true, 0, choices));
    }
    return new WeekRequest(vanDays, bookings, prices, seed, 1_000_000_000L);
  }

  private static boolean beside(int one, int other) {
    int step = Math.floorMod(one - other, RING);
    return one / RING == other / RING && (step == 1 || step == RING - 1);
  }
}
