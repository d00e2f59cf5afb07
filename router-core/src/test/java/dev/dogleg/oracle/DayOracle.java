package dev.dogleg.oracle;

import dev.dogleg.itinerary.BalanceTerms;
import dev.dogleg.itinerary.BreakRule;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.DayShift;
import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.itinerary.PlannedStop.Kind;
import dev.dogleg.itinerary.Prices;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WaterPlace;
import dev.dogleg.itinerary.WaterTerms;
import dev.dogleg.itinerary.WaterUse;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Tries every order, every place of the break, every water stop and every second of leaving of a
 * day with terms.
 *
 * <p>For each order it keeps, second by second, the least cost of standing at the door in each
 * phase, apart for each state of the tanks. Knows no runs and shares no code with planner or audit.
 * For shifts of some hundred seconds and up to seven visits.
 */
public final class DayOracle {
  /** Cost of what no day does. */
  public static final long NEVER = Cells.NEVER;

  private final DayRequest request;
  private final DayShift shift;
  private final int seconds;
  private final Prices prices;
  private final WaterTerms water;
  private final long[] costs;
  private final Lived[] lived;
  private final Map<Integer, int[]> drives = new HashMap<>();

  private final Lateness lateness;

  /** What being late costs, besides everything else. */
  public interface Lateness {
    /** Nothing. */
    Lateness FREE =
        new Lateness() {
          @Override
          public long ofArrival(String visitId, int second) {
            return 0;
          }

          @Override
          public long ofBreak(int second) {
            return 0;
          }
        };

    /**
     * Price of being at a door at a second.
     *
     * @param visitId whose door
     * @param second arrival
     * @return price, 0 or more
     */
    long ofArrival(String visitId, int second);

    /**
     * Price of a break that starts at a second.
     *
     * @param second its start
     * @return price, 0 or more
     */
    long ofBreak(int second);
  }

  /** How full the tanks are, and how many stops were made for them. */
  private record Tanks(int stops, int fresh, int grey) {}

  /**
   * Least costs by state of the tanks; in each: break open, taken, taken just now at the door.
   *
   * <p>Seconds count from the shift's start.
   */
  private record Ready(Map<Tanks, Cells[]> byTanks) {}

  private DayOracle(DayRequest request, Lateness lateness) {
    this.request = request;
    this.lateness = lateness;
    shift = request.shift();
    prices = request.prices();
    water = request.terms().water().orElse(null);
    seconds = Math.max(1, shift.latestEndSeconds() - shift.hours().fromSeconds() + 1);
    costs = new long[1 << request.visits().size()];
    lived = new Lived[costs.length];
    Arrays.fill(costs, NEVER);
    costs[0] = 0;
    Cells[] start = {new Cells(seconds), new Cells(seconds), new Cells(seconds)};
    for (int t = 0; t < seconds; t++) {
      int at = from() + t;
      start[0].lower(
          t, 0, () -> new Lived(null, -1, Kind.LEAVE, shift.startPlace(), "", at, at, at));
    }
    grow(new Ready(Map.of(new Tanks(0, 0, 0), start)), shift.startPlace(), 0, new ArrayList<>());
  }

  /**
   * What a day can do.
   *
   * @param leftOutBooked fewest booked visits left out
   * @param costSixtieths least cost with so many, prices of left-out visits included
   * @param stops events and times of one such day: kind, place, id, arrival, start, leaving
   */
  public record Best(int leftOutBooked, long costSixtieths, List<PlannedStop> stops) {}

  /**
   * The best day.
   *
   * @param request a day of few visits and seconds
   * @return its figures and one plan
   */
  public static Best best(DayRequest request) {
    return best(request, Lateness.FREE);
  }

  /**
   * The best day where being late has a price.
   *
   * @param request a day of few visits and seconds
   * @param lateness what being late costs
   * @return its figures, that price in the cost, and one plan
   */
  public static Best best(DayRequest request, Lateness lateness) {
    DayOracle oracle = new DayOracle(request, lateness);
    Best best = null;
    for (int set = 0; set < oracle.costs.length; set++) {
      if (oracle.costs[set] >= NEVER) {
        continue;
      }
      int leftOut = 0;
      long cost = oracle.costs[set];
      for (int i = 0; i < request.visits().size(); i++) {
        if ((set >> i & 1) == 0) {
          leftOut += request.visits().get(i).booked() ? 1 : 0;
          cost += request.visits().get(i).leftOutSixtieths();
        }
      }
      if (best == null
          || leftOut < best.leftOutBooked
          || (leftOut == best.leftOutBooked && cost < best.costSixtieths)) {
        List<PlannedStop> stops = set == 0 ? List.of() : oracle.lived[set].stops();
        best = new Best(leftOut, cost, stops);
      }
    }
    return best;
  }

  /**
   * Least cost of a day that serves just a set of visits, without prices of what it leaves out.
   *
   * @param request a day of few visits and seconds
   * @return by set, bit i for the i-th visit; {@link #NEVER} where no day does it
   */
  public static long[] costsBySet(DayRequest request) {
    return new DayOracle(request, Lateness.FREE).costs;
  }

  private int from() {
    return shift.hours().fromSeconds();
  }

  private void grow(Ready ready, int place, int served, List<Visit> order) {
    for (int i = 0; i < request.visits().size(); i++) {
      Visit visit = request.visits().get(i);
      if ((served >> i & 1) != 0 || (visit.first() && !order.isEmpty())) {
        continue;
      }
      order.add(visit);
      Ready next = visited(ready, place, order);
      if (!next.byTanks.isEmpty()) {
        goHome(next, served | 1 << i, order);
        grow(next, visit.place(), served | 1 << i, order);
      }
      order.remove(order.size() - 1);
    }
  }

  /** Standing ready at the last visit of an order, reached straight or by a water stop. */
  private Ready visited(Ready ready, int place, List<Visit> order) {
    Visit visit = order.get(order.size() - 1);
    WaterUse use = water == null ? WaterUse.NONE : water.useOf(visit.id());
    WaterUse tank = water == null ? WaterUse.NONE : water.tank();
    Map<Tanks, Cells[]> next = new LinkedHashMap<>();
    ready.byTanks.forEach(
        (tanks, cells) -> {
          Tanks full =
              new Tanks(
                  tanks.stops,
                  tanks.fresh + use.freshMillilitres(),
                  tanks.grey + use.greyMillilitres());
          arrive(cells, place, order, full, tank, next);
          if (water != null && order.size() > 1 && tanks.stops < water.most()) {
            for (WaterPlace stop : water.places()) {
              Cells[] filled = filled(cells, place, stop);
              Tanks fresh =
                  new Tanks(tanks.stops + 1, use.freshMillilitres(), use.greyMillilitres());
              arrive(filled, stop.place(), order, fresh, tank, next);
            }
          }
        });
    return new Ready(next);
  }

  private void arrive(
      Cells[] cells,
      int place,
      List<Visit> order,
      Tanks tanks,
      WaterUse tank,
      Map<Tanks, Cells[]> next) {
    boolean lasts = tanks.fresh <= tank.freshMillilitres() && tanks.grey <= tank.greyMillilitres();
    Visit visit = order.get(order.size() - 1);
    if (!lasts || !request.travel().reaches(place, visit.place())) {
      return;
    }
    int service = OracleRules.service(request, order);
    boolean breaks = order.size() > 1;
    for (StayLimits way : StayLimits.of(visit, request.terms().rules())) {
      Stay stay = new Stay(Kind.VISIT, visit.place(), visit.id(), service, way, breaks);
      Cells[] done = stayed(cells, place, stay);
      if (!done[0].empty() || !done[1].empty() || !done[2].empty()) {
        Cells[] target =
            next.computeIfAbsent(
                tanks,
                key -> new Cells[] {new Cells(seconds), new Cells(seconds), new Cells(seconds)});
        for (int taken = 0; taken < 3; taken++) {
          target[taken].lower(done[taken], way.price());
        }
      }
    }
  }

  private Cells[] filled(Cells[] cells, int place, WaterPlace stop) {
    if (!request.travel().reaches(place, stop.place())) {
      return new Cells[] {new Cells(seconds), new Cells(seconds), new Cells(seconds)};
    }
    Stay stay = new Stay(Kind.WATER, stop.place(), "", stop.seconds(), StayLimits.NONE, false);
    return stayed(cells, place, stay);
  }

  /** A stay to be lived: what happens there and what binds it. */
  private record Stay(
      Kind kind, int place, String id, int service, StayLimits limits, boolean breakBefore) {}

  private Cells[] stayed(Cells[] ready, int place, Stay stay) {
    Cells[] arrived = {new Cells(seconds), new Cells(seconds)};
    Cells[] done = {new Cells(seconds), new Cells(seconds), new Cells(seconds)};
    int first = Math.max(0, stay.limits.vanFrom() - from());
    int last = Math.min(seconds - 1, stay.limits.vanTo() - from());
    for (int t = 0; t < seconds; t++) {
      drive(ready, place, stay, t, arrived, first, last);
    }
    for (int t = first; t <= last; t++) {
      for (int taken = 0; taken < 2; taken++) {
        wait(arrived[taken], t, last);
        serve(arrived[taken], done[taken], stay, t, last);
      }
      if (stay.breakBefore) {
        takeBreak(arrived[0], arrived[1], stay, t, last, true);
      }
    }
    for (int t = first; t <= last; t++) {
      for (int taken = 0; taken < 3; taken++) {
        wait(done[taken], t, last);
      }
      if (stay.kind == Kind.VISIT) {
        takeBreak(done[0], done[2], stay, t, last, false);
      }
    }
    return done;
  }

  private void drive(
      Cells[] ready, int place, Stay stay, int t, Cells[] arrived, int first, int last) {
    boolean never = true;
    for (Cells cells : ready) {
      never &= cells.cost(t) >= NEVER;
    }
    if (never) {
      return;
    }
    int drive = driveSeconds(place, stay.place, t);
    int at = t + drive;
    if (at < first || at > last || from() + at > stay.limits.latestArrive()) {
      return;
    }
    boolean door = stay.kind == Kind.VISIT;
    long price =
        leg(place, stay.place, drive) + (door ? lateness.ofArrival(stay.id, from() + at) : 0);
    for (int taken = 0; taken < 3; taken++) {
      if (ready[taken].cost(t) < NEVER) {
        Lived before = ready[taken].lived(t);
        int now = from() + at;
        arrived[Math.min(1, taken)].lower(
            at,
            ready[taken].cost(t) + price,
            () -> new Lived(before, from() + t, stay.kind, stay.place, stay.id, now, now, now));
      }
    }
  }

  /** Drives are asked for once a second and pair. */
  private int driveSeconds(int a, int b, int t) {
    int[] known = drives.computeIfAbsent(a * request.travel().size() + b, key -> new int[seconds]);
    if (known[t] == 0) {
      known[t] = 1 + request.travel().driveSeconds(a, b, from() + t);
    }
    return known[t] - 1;
  }

  private void wait(Cells cells, int t, int last) {
    if (t < last && cells.cost(t) < NEVER) {
      Lived same = cells.lived(t);
      cells.lower(t + 1, cells.cost(t) + prices.waitingMinuteSeconds(), () -> same);
    }
  }

  private void serve(Cells arrived, Cells done, Stay stay, int t, int last) {
    int start = from() + t;
    int end = start + stay.service;
    if (arrived.cost(t) < NEVER
        && start >= stay.limits.earliestStart()
        && end <= stay.limits.doneBy()
        && end - from() <= last) {
      Lived a = arrived.lived(t);
      done.lower(
          end - from(),
          arrived.cost(t),
          () ->
              new Lived(
                  a.before(),
                  a.leftBefore(),
                  stay.kind,
                  stay.place,
                  stay.id,
                  a.arrive(),
                  start,
                  end));
    }
  }

  private void takeBreak(Cells open, Cells taken, Stay stay, int t, int last, boolean before) {
    BreakRule rule = shift.breakRule().orElse(null);
    if (rule == null
        || open.cost(t) >= NEVER
        || !rule.startWithin().holds(from() + t)
        || t + rule.lengthSeconds() > last) {
      return;
    }
    Lived here = open.lived(t);
    int start = from() + t;
    int end = start + rule.lengthSeconds();
    taken.lower(
        t + rule.lengthSeconds(),
        open.cost(t) + lateness.ofBreak(start),
        () -> before ? breakThenDoor(here, stay, start, end) : breakAfter(here, stay, start, end));
  }

  /**
   * The break at the door before the service: the visit is still to come, as a thing of its own.
   */
  private static Lived breakThenDoor(Lived door, Stay stay, int start, int end) {
    Lived rest =
        new Lived(
            door.before(),
            door.leftBefore(),
            Kind.BREAK,
            stay.place,
            stay.id,
            door.arrive(),
            start,
            end);
    return new Lived(rest, -1, stay.kind, stay.place, stay.id, door.arrive(), end, end);
  }

  private static Lived breakAfter(Lived visit, Stay stay, int start, int end) {
    return new Lived(visit, -1, Kind.BREAK, stay.place, stay.id, visit.end(), start, end);
  }

  private long leg(int a, int b, int drive) {
    long metres = request.travel().lengthMetres(a, b);
    return 60L * drive + (metres * prices.kilometreSeconds() * 60 + 500) / 1000;
  }

  private void goHome(Ready ready, int served, List<Visit> order) {
    int place = order.get(order.size() - 1).place();
    long rules = OracleRules.price(request, order);
    if (rules == OracleRules.BROKEN || !request.travel().reaches(place, shift.endPlace())) {
      return;
    }
    long groom = 0;
    for (int k = 1; k <= order.size(); k++) {
      groom += OracleRules.service(request, order.subList(0, k));
    }
    for (Cells[] cells : ready.byTanks.values()) {
      for (int t = 0; t < seconds; t++) {
        home(cells, t, served, order, rules, groom);
      }
    }
  }

  private void home(Cells[] cells, int t, int served, List<Visit> order, long rules, long groom) {
    int place = order.get(order.size() - 1).place();
    int left = from() + t;
    int drive = driveSeconds(place, shift.endPlace(), t);
    int end = left + drive;
    if (end > shift.latestEndSeconds()) {
      return;
    }
    boolean breakNotNeeded =
        shift.breakRule().isEmpty()
            || order.size() < 2
            || end <= shift.breakRule().get().startWithin().fromSeconds();
    // A break starts after its window opens, and not at the only visit: where it is not needed none
    // can have been taken. One taken just now, at the last door, counts for nothing.
    int which = breakNotNeeded ? 0 : 1;
    if (cells[which].cost(t) >= NEVER) {
      return;
    }
    long cost = cells[which].cost(t) + rules + leg(place, shift.endPlace(), drive) + late(end);
    BalanceTerms balance = request.terms().balance().orElse(null);
    if (balance != null) {
      cost += balance.groomSixtieths() * Math.max(0, groom - balance.groomSeconds());
      cost += (long) balance.endSixtieths() * Math.max(0, end - balance.endSeconds());
    }
    if (cost < costs[served]) {
      costs[served] = cost;
      Lived last = cells[which].lived(t);
      lived[served] = new Lived(last, left, Kind.HOME, shift.endPlace(), "", end, end, end);
    }
  }

  private long late(int end) {
    return (long) prices.overtimeMinuteSeconds() * Math.max(0, end - shift.hours().toSeconds())
        + (long) prices.endMinuteSeconds() * (end - from());
  }
}
