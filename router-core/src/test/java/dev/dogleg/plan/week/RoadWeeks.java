package dev.dogleg.plan.week;

import dev.dogleg.itinerary.BreakRule;
import dev.dogleg.itinerary.DayChoice;
import dev.dogleg.itinerary.DayRule;
import dev.dogleg.itinerary.DayShift;
import dev.dogleg.itinerary.DayTerms;
import dev.dogleg.itinerary.Prices;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WaterPlace;
import dev.dogleg.itinerary.WaterTerms;
import dev.dogleg.itinerary.WaterUse;
import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.itinerary.WeekDay;
import dev.dogleg.itinerary.WeekRequest;
import dev.dogleg.plan.week.SeededPets.Pet;
import dev.dogleg.time.TimeWindow;
import dev.dogleg.time.WorkDay;
import dev.dogleg.travel.TravelTimes;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeMap;

/**
 * Overloaded weeks over given drives, by seed: five days a van from 8 to 17 without overtime, half
 * an hour of break from 11:30 to 13:30, invented pets, starter prices, starter rules, tanks.
 *
 * <p>The sum of grooms, of 18 minutes at each door, and of 12 minutes of drive each is the given
 * part of the shifts less breaks: grooms are the starter table's minutes, all times one factor.
 * Places: the bookings' doors, then the vans' homes, then one where tanks are filled.
 */
public final class RoadWeeks {
  private static final int DAYS = 5;
  private static final int HOUR = 3600;
  private static final int DRIVE_SECONDS = 720;
  private static final int STOP_SECONDS = 18 * 60;
  private static final int LEAST_GROOM_SECONDS = 300;
  private static final int CONTAGIOUS_SECONDS = 15 * 60;
  private static final int WATER_SECONDS = 20 * 60;
  private static final BreakRule BREAK =
      new BreakRule(1800, new TimeWindow(11 * HOUR + 1800, 13 * HOUR + 1800));
  private static final TimeWindow SHIFT = new TimeWindow(8 * HOUR, 17 * HOUR);

  private final Shape shape;
  private final TravelTimes travel;
  private final SplittableRandom random;
  private final List<Pet> pets;

  /**
   * What a seeded week is like.
   *
   * @param bookings number of bookings
   * @param vans number of vans, each with a home of its own
   * @param fill what is asked, in parts of the shifts less breaks
   * @param rules whether the starter rules hold
   * @param water whether water is planned
   * @param effort limit in solver steps
   */
  public record Shape(
      int bookings, int vans, double fill, boolean rules, boolean water, long effort) {

    /** {@return number of places that the drives must have} */
    public int places() {
      return bookings + vans + 1;
    }
  }

  private RoadWeeks(long seed, Shape shape, TravelTimes travel) {
    this.shape = shape;
    this.travel = travel;
    random = new SplittableRandom(seed * 1_000_003 + shape.bookings);
    pets = SeededPets.draw(random, shape.bookings);
  }

  /**
   * A week.
   *
   * @param seed seed
   * @param shape what it is like
   * @param travel drives among {@link Shape#places()} places that all reach each other
   * @return the request
   */
  public static WeekRequest week(long seed, Shape shape, TravelTimes travel) {
    return new RoadWeeks(seed, shape, travel).request(seed);
  }

  private WeekRequest request(long seed) {
    List<WeekBooking> bookings = bookings();
    Map<String, Pet> byId = new TreeMap<>();
    for (int b = 0; b < shape.bookings; b++) {
      byId.put(bookings.get(b).id(), pets.get(b));
    }
    List<DayRule> rules =
        shape.rules ? StarterRules.of(byId, neighbours()) : Collections.emptyList();
    WaterUse tank = new WaterUse(litres(), litres());
    List<WeekDay> days = new ArrayList<>();
    for (int d = 0; d < DAYS; d++) {
      for (int van = 0; van < shape.vans; van++) {
        int home = shape.bookings + van;
        days.add(
            new WeekDay(
                new DayShift(
                    "g" + van,
                    "v" + van,
                    new WorkDay(LocalDate.of(2026, 3, 2).plusDays(d), ZoneId.of("Etc/UTC")),
                    home,
                    home,
                    SHIFT,
                    0,
                    Optional.of(BREAK)),
                travel,
                new DayTerms(rules, water(byId, tank, home), Optional.empty())));
      }
    }
    return new WeekRequest(days, bookings, Prices.STARTER, seed, shape.effort);
  }

  /** Tanks of 80 to 130 litres, as small vans have (from memory): most days fill up once. */
  private int litres() {
    return 80_000 + 10_000 * random.nextInt(6);
  }

  private Optional<WaterTerms> water(Map<String, Pet> byId, WaterUse tank, int home) {
    if (!shape.water) {
      return Optional.empty();
    }
    Map<String, WaterUse> uses = new TreeMap<>();
    byId.forEach((id, pet) -> uses.put(id, pet.water()));
    return Optional.of(
        new WaterTerms(
            tank,
            uses,
            List.of(
                new WaterPlace(home, WATER_SECONDS),
                new WaterPlace(shape.bookings + shape.vans, WATER_SECONDS)),
            2));
  }

  private List<WeekBooking> bookings() {
    int[] service = services();
    boolean[][] on = new boolean[shape.bookings][];
    for (int b = 0; b < shape.bookings; b++) {
      on[b] = days();
    }
    for (int[] pair : pairs()) {
      on[pair[1]] = on[pair[0]];
    }
    List<WeekBooking> bookings = new ArrayList<>();
    for (int b = 0; b < shape.bookings; b++) {
      Visit visit = visit(b, service[b]);
      List<DayChoice> choices = new ArrayList<>();
      for (int day = 0; day < DAYS * shape.vans; day++) {
        if (on[b][day / shape.vans]) {
          choices.add(new DayChoice(day, visit, 0));
        }
      }
      bookings.add(new WeekBooking(id(b), true, 0, choices));
    }
    return bookings;
  }

  private static String id(int booking) {
    return "b%03d".formatted(booking);
  }

  /** A third may come on any day, the others on about half of them. */
  private boolean[] days() {
    boolean[] on = new boolean[DAYS];
    boolean any = random.nextInt(3) == 0;
    for (int d = 0; d < DAYS; d++) {
      on[d] = any || random.nextInt(2) == 0;
    }
    on[random.nextInt(DAYS)] = true;
    return on;
  }

  /** Three in ten have a window of two to four hours. */
  private Visit visit(int b, int serviceSeconds) {
    Pet pet = pets.get(b);
    boolean longer = shape.rules && pet.contagious();
    Visit visit = Visit.booked(id(b), b, serviceSeconds + (longer ? CONTAGIOUS_SECONDS : 0));
    if (random.nextInt(100) < 30) {
      int from = 8 * HOUR + 1800 * random.nextInt(11);
      visit = visit.arriving(List.of(new TimeWindow(from, from + HOUR * (2 + random.nextInt(3)))));
    }
    if (shape.rules && pet.pillMorning()) {
      visit = visit.arriving(List.of(new TimeWindow(8 * HOUR, 10 * HOUR)));
    }
    if (shape.rules && pet.quietHours()) {
      visit = visit.vanOnlyWithin(List.of(new TimeWindow(9 * HOUR, 17 * HOUR)));
    }
    return visit;
  }

  /** Whole minutes; what rounding takes from one groom the next one gets. */
  private int[] services() {
    long shifts = (long) DAYS * shape.vans * (9 * HOUR - BREAK.lengthSeconds());
    double grooms = shape.fill * shifts - (double) (DRIVE_SECONDS + STOP_SECONDS) * shape.bookings;
    int table = pets.stream().mapToInt(Pet::groomMinutes).sum();
    int[] seconds = new int[shape.bookings];
    double due = 0;
    for (int b = 0; b < seconds.length; b++) {
      due += grooms * pets.get(b).groomMinutes() / table;
      int groom = Math.max(LEAST_GROOM_SECONDS, (int) Math.round(due / 60) * 60);
      due -= groom;
      seconds[b] = STOP_SECONDS + groom;
    }
    return seconds;
  }

  private List<Set<String>> neighbours() {
    return pairs().stream().map(pair -> Set.of(id(pair[0]), id(pair[1]))).toList();
  }

  /** The nearest doors, two by two, one pair for each ten bookings. */
  private List<int[]> pairs() {
    List<int[]> pairs = new ArrayList<>();
    boolean[] taken = new boolean[shape.bookings];
    for (int k = 0; k < shape.bookings / 10; k++) {
      int[] nearest = new int[0];
      for (int i = 0; i < shape.bookings; i++) {
        for (int j = i + 1; j < shape.bookings; j++) {
          if (!taken[i]
              && !taken[j]
              && (nearest.length == 0 || far(i, j) < far(nearest[0], nearest[1]))) {
            nearest = new int[] {i, j};
          }
        }
      }
      pairs.add(nearest);
      Arrays.stream(nearest).forEach(one -> taken[one] = true);
    }
    return pairs;
  }

  private int far(int i, int j) {
    return travel.leastDriveSeconds(i, j) + travel.leastDriveSeconds(j, i);
  }
}
