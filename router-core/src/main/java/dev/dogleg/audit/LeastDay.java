package dev.dogleg.audit;

import dev.dogleg.itinerary.BalanceTerms;
import dev.dogleg.itinerary.BreakRule;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.DayRule.AtMost;
import dev.dogleg.itinerary.DayRule.NotTogether;
import dev.dogleg.itinerary.DayShift;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WaterPlace;
import dev.dogleg.itinerary.WaterTerms;
import dev.dogleg.travel.TravelTimes;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * What no day of a van-day goes below: each leg at its quickest and at its cheapest, nobody waiting
 * but for a window, each visit served as briefly as its place may make it.
 *
 * <p>Maintainers: the least legs are closed (no way by other places is shorter), so that leaving a
 * visit out of a day never makes a bound of seconds higher. A stop for water lies within a leg. Not
 * for several threads.
 */
final class LeastDay {
  /** Where no road leads, or what no day reaches. */
  static final int NONE = Integer.MAX_VALUE / 4;

  private final DayRequest request;
  private final DayShift shift;
  private final DaySeconds day;
  private final int visits;
  private final int nodes;
  private final int[] legSeconds;
  private final int[] legCosts;
  private final int[] service;
  private final int[][] latestArrive;
  private final int[][] earliestStart;
  private final int[][] earliestArrive;
  private final int[][] latestDone;
  private final BreakRule rule;
  private final List<int[]> points = new ArrayList<>();
  private final List<Integer> mostPoints = new ArrayList<>();

  LeastDay(DayRequest request, RoomTerms terms, DaySeconds day) {
    this.request = request;
    this.day = day;
    shift = request.shift();
    visits = request.visits().size();
    WaterTerms water = request.terms().water().filter(w -> w.most() > 0).orElse(null);
    List<WaterPlace> stops = water == null ? List.of() : water.places();
    nodes = visits + 2 + stops.size();
    legSeconds = new int[nodes * nodes];
    legCosts = new int[nodes * nodes];
    legs(stops);
    close(legSeconds);
    close(legCosts);
    rule = shift.breakRule().orElse(null);
    latestArrive = new int[visits][];
    earliestStart = new int[visits][];
    earliestArrive = new int[visits][];
    latestDone = new int[visits][];
    service = new int[visits];
    for (int i = 0; i < visits; i++) {
      Visit visit = request.visits().get(i);
      List<SecondWays> ways = SecondWays.of(visit, List.of());
      latestArrive[i] = ways.stream().mapToInt(SecondWays::latestArrive).toArray();
      earliestStart[i] = ways.stream().mapToInt(SecondWays::earliestStart).toArray();
      earliestArrive[i] = ways.stream().mapToInt(SecondWays::stayFrom).toArray();
      latestDone[i] = ways.stream().mapToInt(w -> Math.min(w.doneBy(), w.stayTo())).toArray();
      service[i] = terms.served(visit, 1, null);
      for (int place = 2; place <= visits; place++) {
        service[i] = Math.min(service[i], terms.served(visit, place, null));
      }
    }
    company();
  }

  private void legs(List<WaterPlace> stops) {
    int[] places = new int[nodes];
    for (int i = 0; i < visits; i++) {
      places[i] = request.visits().get(i).place();
    }
    places[visits] = shift.startPlace();
    places[visits + 1] = shift.endPlace();
    for (int w = 0; w < stops.size(); w++) {
      places[visits + 2 + w] = stops.get(w).place();
    }
    TravelTimes travel = request.travel();
    for (int a = 0; a < nodes; a++) {
      for (int b = 0; b < nodes; b++) {
        int here = a * nodes + b;
        if (!travel.reaches(places[a], places[b])) {
          legSeconds[here] = NONE;
          legCosts[here] = NONE;
          continue;
        }
        int from = shift.hours().fromSeconds();
        int to = Math.max(from, shift.latestEndSeconds());
        int least = travel.leastDriveSeconds(places[a], places[b], from, to);
        int stop = b < visits + 2 ? 0 : stops.get(b - visits - 2).seconds();
        legSeconds[here] = held((long) least + stop);
        legCosts[here] = held(DaySeconds.driven(least) + day.length(places[a], places[b]));
      }
    }
  }

  /** A bound that is too high for the numbers here is told lower. */
  private static int held(long bound) {
    return (int) Math.min(NONE - 1, bound);
  }

  /** Least sums over ways of several legs: Floyd 1962, "Algorithm 97", CACM 5(6):345. */
  private void close(int[] legs) {
    for (int by = 0; by < nodes; by++) {
      for (int a = 0; a < nodes; a++) {
        int first = legs[a * nodes + by];
        for (int b = 0; first < NONE && b < nodes; b++) {
          legs[a * nodes + b] = Math.min(legs[a * nodes + b], first + legs[by * nodes + b]);
        }
      }
    }
  }

  /** Rules on who must not come together: a larger set breaks them the more. */
  private void company() {
    request.terms().rules().stream()
        .filter(rule -> rule.must())
        .forEach(
            rule -> {
              int[] each = new int[visits];
              for (int i = 0; i < visits; i++) {
                String id = request.visits().get(i).id();
                if (rule instanceof AtMost most) {
                  each[i] = most.points().getOrDefault(id, 0);
                } else if (rule instanceof NotTogether apart) {
                  each[i] = apart.visits().contains(id) ? 1 : 0;
                }
              }
              if (Arrays.stream(each).anyMatch(point -> point > 0)) {
                points.add(each);
                mostPoints.add(rule instanceof AtMost most ? most.most() : 1);
              }
            });
  }

  int visits() {
    return visits;
  }

  /** The number of the start place among the ends of legs; visits have their own numbers. */
  int start() {
    return visits;
  }

  /** The number of the end place among the ends of legs. */
  int end() {
    return visits + 1;
  }

  /** {@return least seconds of a leg, or {@link #NONE}} */
  int seconds(int from, int to) {
    return legSeconds[from * nodes + to];
  }

  /** {@return least cost of a leg, drive and metres, or {@link #NONE}} */
  int cost(int from, int to) {
    return legCosts[from * nodes + to];
  }

  /** {@return what the metres of a leg between two places cost} */
  long metres(int from, int to) {
    return day.length(from, to);
  }

  /** {@return least seconds served} */
  int service(int visit) {
    return service[visit];
  }

  /**
   * The earliest second at which a visit's door can be left, whether the break is open or not.
   *
   * @param visit number of the visit
   * @param arrive no arrival is earlier
   * @return second of the day, or {@link #NONE}
   */
  int ready(int visit, long arrive) {
    return ready(visit, arrive, arrive);
  }

  /**
   * The earliest second at which it can be left with the break taken at this door, before the
   * service or after; where in the day the door stands is not asked.
   *
   * @param visit number of the visit
   * @param arrive no arrival is earlier
   * @return second of the day, or {@link #NONE}
   */
  int readyRested(int visit, long arrive) {
    int before = rested(arrive);
    int after = rested(ready(visit, arrive));
    return before < NONE ? Math.min(after, ready(visit, arrive, before)) : after;
  }

  private int rested(long from) {
    if (rule == null || from > rule.startWithin().toSeconds()) {
      return NONE;
    }
    return (int) Math.max(from, rule.startWithin().fromSeconds()) + rule.lengthSeconds();
  }

  private int ready(int visit, long arrive, long free) {
    int earliest = NONE;
    for (int way = 0; way < latestArrive[visit].length; way++) {
      long at = Math.max(arrive, earliestArrive[visit][way]);
      long ends = Math.max(Math.max(at, free), earliestStart[visit][way]) + service[visit];
      if (at <= latestArrive[visit][way] && ends <= latestDone[visit][way] && ends < earliest) {
        earliest = (int) ends;
      }
    }
    return earliest;
  }

  /**
   * The earliest end of a day.
   *
   * @param last its last visit
   * @param ready the last door is left no earlier
   * @param rested nor earlier than this with the break taken
   * @param many number of its visits
   * @return second of the day, or {@link #NONE} where that is too late
   */
  int ends(int last, int ready, int rested, int many) {
    long end = (long) ready + seconds(last, end());
    if (rule != null && many >= 2 && end > rule.startWithin().fromSeconds()) {
      end = (long) rested + seconds(last, end());
    }
    return end <= shift.latestEndSeconds() ? (int) end : NONE;
  }

  /** {@return whether a rule forbids that all visits of a set come, whoever else does} */
  boolean forbidden(long set) {
    for (int rule = 0; rule < points.size(); rule++) {
      long sum = 0;
      for (long rest = set; rest != 0; rest &= rest - 1) {
        sum += points.get(rule)[Long.numberOfTrailingZeros(rest)];
      }
      if (sum > mostPoints.get(rule)) {
        return true;
      }
    }
    return false;
  }

  /** {@return what so late an end costs at least} */
  long priceOfEnd(int end) {
    return day.atEnd(end);
  }

  /** {@return what serving a set costs at least where long days are priced} */
  long priceOfService(long set) {
    BalanceTerms balance = request.terms().balance().orElse(null);
    if (balance == null) {
      return 0;
    }
    long sum = 0;
    for (long rest = set; rest != 0; rest &= rest - 1) {
      sum += service[Long.numberOfTrailingZeros(rest)];
    }
    return Math.max(0, sum - balance.groomSeconds()) * balance.groomSixtieths();
  }
}
