package dev.dogleg.audit;

import dev.dogleg.itinerary.BreakRule;
import dev.dogleg.itinerary.DayPlan;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.itinerary.Prices;
import dev.dogleg.itinerary.Proof;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WaterPlace;
import dev.dogleg.itinerary.WaterTerms;
import dev.dogleg.time.TimeWindow;
import dev.dogleg.travel.BandedTravelTimes;
import dev.dogleg.travel.TrafficBands;
import dev.dogleg.travel.TravelMatrix;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

/** Seeded days of a few minutes, with traffic, several windows and breaks. */
public final class RandomDay {
  private RandomDay() {}

  /** A day on which every visit is booked. */
  public static DayRequest request(SplittableRandom random) {
    return request(random, 1 + random.nextInt(5), false);
  }

  /** A day of n visits; some on the waiting list where asked for. */
  public static DayRequest request(SplittableRandom random, int n, boolean waitingList) {
    List<Visit> visits = new ArrayList<>();
    for (int v = 1; v <= n; v++) {
      Visit visit = visit(random, v);
      boolean waits = waitingList && random.nextInt(3) == 0;
      visits.add(waits ? visit.waiting(random.nextInt(20_000)) : visit);
    }
    Optional<BreakRule> rule = Optional.empty();
    if (random.nextInt(3) > 0) {
      rule = Optional.of(new BreakRule(1 + random.nextInt(20), window(random, 30, 160, 80)));
    }
    TimeWindow hours = new TimeWindow(random.nextInt(20), 150 + random.nextInt(230));
    Prices prices =
        new Prices(random.nextInt(300), random.nextInt(40), random.nextInt(200), random.nextInt(9));
    return new DayRequest(
        SmallDay.shift(hours, random.nextInt(40), rule),
        visits,
        travel(random, n + 1),
        prices,
        1,
        1);
  }

  private static Visit visit(SplittableRandom random, int v) {
    Visit visit = Visit.booked("v" + v, v, random.nextInt(40));
    if (random.nextInt(2) == 0) {
      visit = visit.arriving(windows(random));
    }
    if (random.nextInt(4) == 0) {
      visit = visit.doneBy(80 + random.nextInt(300));
    }
    if (random.nextInt(4) == 0) {
      visit = visit.vanOnlyWithin(windows(random));
    }
    return visit.first(random.nextInt(12) == 0);
  }

  private static TimeWindow window(SplittableRandom random, int from, int spread, int length) {
    int start = from + random.nextInt(spread);
    return new TimeWindow(start, start + random.nextInt(length));
  }

  private static List<TimeWindow> windows(SplittableRandom random) {
    TimeWindow one = window(random, 0, 120, 160);
    TimeWindow two = window(random, one.toSeconds() + 1, 60, 150);
    return random.nextBoolean() ? List.of(one) : List.of(one, two);
  }

  private static BandedTravelTimes travel(SplittableRandom random, int places) {
    int[][] seconds = new int[places][places];
    int[][] metres = new int[places][places];
    for (int from = 0; from < places; from++) {
      for (int to = 0; to < places; to++) {
        seconds[from][to] = from == to ? 0 : 1 + random.nextInt(25);
        metres[from][to] = from == to ? 0 : random.nextInt(900);
      }
    }
    List<TrafficBands.Band> bands = new ArrayList<>();
    int start = 0;
    for (int b = 0; b < 4; b++) {
      bands.add(new TrafficBands.Band("b" + b, start, List.of(500 + random.nextInt(2000))));
      start += 1 + random.nextInt(90);
    }
    return new BandedTravelTimes(
        TravelMatrix.of(seconds, metres), new TrafficBands(List.of("road"), bands));
  }

  /** Some order of the visits with some place of the break, timed, figures as given. */
  static ReTimedDay edited(SplittableRandom random, DayRequest request) {
    List<String> order = new ArrayList<>(request.visits().stream().map(Visit::id).toList());
    for (int i = order.size() - 1; i > 0; i--) {
      order.add(order.remove(random.nextInt(i + 1)));
    }
    Optional<BreakSpot> spot = Optional.empty();
    if (request.shift().breakRule().isPresent() && random.nextInt(4) > 0) {
      String at = order.get(random.nextInt(order.size()));
      spot = Optional.of(new BreakSpot(at, random.nextBoolean()));
    }
    List<WaterSpot> water = new ArrayList<>();
    List<WaterPlace> places = request.terms().water().map(WaterTerms::places).orElse(List.of());
    for (String id : order) {
      if (!places.isEmpty() && random.nextInt(3) == 0) {
        water.add(new WaterSpot(id, places.get(random.nextInt(places.size())).place()));
      }
    }
    return DayReTiming.retime(request, order, spot, water);
  }

  /** The day asked for just the visits that events make. */
  static DayRequest onlyServed(DayRequest request, List<PlannedStop> stops) {
    List<Visit> served = new ArrayList<>();
    for (Visit visit : request.visits()) {
      if (stops.stream().anyMatch(stop -> stop.visitId().equals(visit.id()))) {
        served.add(visit);
      }
    }
    return new DayRequest(
        request.shift(), served, request.travel(), request.prices(), request.terms(), 1, 1);
  }

  /** Price of the visits of one day that another is not asked for. */
  static long leftOutPrice(DayRequest request, DayRequest served) {
    return request.visits().stream().mapToLong(Visit::leftOutSixtieths).sum()
        - served.visits().stream().mapToLong(Visit::leftOutSixtieths).sum();
  }

  static DayPlan plan(DayRequest request, List<PlannedStop> stops, long cost) {
    Proof proof = new Proof(Proof.Kind.PROVEN_BEST, 0, cost, 1);
    return new DayPlan(request.shift(), stops, List.of(), 0, cost, proof);
  }
}
