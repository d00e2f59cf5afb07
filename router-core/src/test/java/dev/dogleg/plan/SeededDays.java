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
import dev.dogleg.travel.TravelTimes;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

/**
 * Random days with every rule there is, by seed; in whole ticks of a minute or of a second.
 *
 * <p>A tick of a second makes a tiny day (services of seconds) in which a search by seconds is
 * exact whatever the traffic does.
 */
public final class SeededDays {
  private static final WorkDay DAY = new WorkDay(LocalDate.of(2026, 3, 3), ZoneId.of("Etc/UTC"));
  private static final int OPENS = 8 * 60;

  private final SplittableRandom random;
  private final int n;
  private final int tick;
  private final int shiftMinutes;

  private SeededDays(long seed, int n, int tick) {
    random = new SplittableRandom(seed * 7919 + n);
    this.tick = tick;
    this.n = n;
    this.shiftMinutes = 60 + random.nextInt(45 * n + 120);
  }

  /**
   * A day.
   *
   * @param seed seed
   * @param n number of visits
   * @param tick 60 or 1: of how many seconds everything is a multiple
   * @param bands whether durations follow traffic bands; otherwise they fall once at a whole tick
   * @return the request
   */
  public static DayRequest day(long seed, int n, int tick, boolean bands) {
    return new SeededDays(seed, n, tick).build(bands);
  }

  /**
   * A day of whole minutes without traffic.
   *
   * @param seed seed
   * @param n number of visits
   * @return the request
   */
  public static DayRequest steady(long seed, int n) {
    DayRequest day = day(seed, n, 60, false);
    TravelTimes travel = ((StepTravel) day.travel()).steady();
    return new DayRequest(
        day.shift(), day.visits(), travel, day.prices(), day.seed(), day.effort());
  }

  private DayRequest build(boolean bands) {
    int places = n + 2;
    int[][] before = minutes(places);
    TravelTimes travel = bands ? banded(before) : stepped(before);
    List<Visit> visits = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      visits.add(visit(i));
    }
    Optional<BreakRule> breakRule = Optional.empty();
    if (chance(60)) {
      int from = OPENS + random.nextInt(shiftMinutes);
      breakRule =
          Optional.of(
              new BreakRule(
                  tick * (5 + random.nextInt(40)), window(from, from + random.nextInt(90))));
    }
    DayShift shift =
        new DayShift(
            "g",
            "v",
            DAY,
            n,
            chance(70) ? n : n + 1,
            window(OPENS, OPENS + shiftMinutes),
            chance(50) ? tick * random.nextInt(60) : 0,
            breakRule);
    return new DayRequest(shift, visits, travel, prices(), 1, DayRequest.USUAL_EFFORT);
  }

  private Prices prices() {
    int kind = random.nextInt(5);
    if (kind == 0) {
      return Prices.DRIVE_ONLY;
    }
    if (kind < 3) {
      return Prices.STARTER;
    }
    return new Prices(
        random.nextInt(50), random.nextInt(90), random.nextInt(200), random.nextInt(30));
  }

  private Visit visit(int i) {
    List<TimeWindow> arrive = chance(50) ? windows(1 + random.nextInt(2), 20) : Visit.ANY_TIME;
    List<TimeWindow> van = chance(20) ? windows(1 + random.nextInt(2), 90) : Visit.ANY_TIME;
    int doneBy =
        chance(20) ? tick * (OPENS + 20 + random.nextInt(shiftMinutes + 30)) : TimeWindow.DAY_END;
    boolean booked = chance(75);
    int service = tick * random.nextInt(70);
    return new Visit(
        "v" + (char) ('a' + i),
        chance(15) ? random.nextInt(n) : i,
        service,
        booked,
        booked ? 0 : random.nextInt(tick * 60 * 40),
        arrive,
        doneBy,
        van,
        chance(6));
  }

  private List<TimeWindow> windows(int count, int least) {
    List<TimeWindow> windows = new ArrayList<>();
    int at = OPENS - 30;
    for (int w = 0; w < count; w++) {
      int from = at + random.nextInt(shiftMinutes);
      int to = from + least + random.nextInt(90);
      windows.add(window(from, to));
      at = to + 1;
    }
    return windows;
  }

  private int[][] minutes(int places) {
    int[][] seconds = new int[places][places];
    for (int i = 0; i < places; i++) {
      for (int j = 0; j < places; j++) {
        if (i != j) {
          seconds[i][j] = chance(3) ? -1 : tick * random.nextInt(chance(20) ? 60 : 25);
        }
      }
    }
    return seconds;
  }

  private TravelTimes stepped(int[][] before) {
    int[][] after = new int[before.length][];
    for (int i = 0; i < before.length; i++) {
      after[i] = before[i].clone();
      for (int j = 0; j < before.length; j++) {
        if (i != j && before[i][j] >= 0 && chance(60)) {
          after[i][j] = before[i][j] - tick * random.nextInt(before[i][j] / tick + 1);
        }
      }
    }
    return new StepTravel(before, after, tick * (OPENS + random.nextInt(shiftMinutes)));
  }

  private TravelTimes banded(int[][] before) {
    int[][] metres = new int[before.length][before.length];
    for (int[] row : metres) {
      for (int j = 0; j < row.length; j++) {
        row[j] = random.nextInt(20_000);
      }
    }
    for (int i = 0; i < metres.length; i++) {
      metres[i][i] = 0;
    }
    List<TrafficBands.Band> steps = new ArrayList<>();
    int at = 0;
    for (int b = 0; b < 4; b++) {
      steps.add(new TrafficBands.Band("b" + b, at, List.of(700 + random.nextInt(1500))));
      at = tick * (OPENS + b * 60 + random.nextInt(shiftMinutes)) + (tick > 1 ? b : 0);
      if (at <= steps.get(b).fromSeconds()) {
        break;
      }
    }
    return new BandedTravelTimes(
        TravelMatrix.of(before, metres), new TrafficBands(List.of("road"), steps));
  }

  private boolean chance(int percent) {
    return random.nextInt(100) < percent;
  }

  private TimeWindow window(int from, int to) {
    return new TimeWindow(tick * from, tick * to);
  }
}
