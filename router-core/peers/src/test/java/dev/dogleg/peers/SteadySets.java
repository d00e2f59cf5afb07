package dev.dogleg.peers;

import dev.dogleg.itinerary.BreakRule;
import dev.dogleg.itinerary.DayChoice;
import dev.dogleg.itinerary.DayShift;
import dev.dogleg.itinerary.DayTerms;
import dev.dogleg.itinerary.Prices;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WeekDay;
import dev.dogleg.itinerary.WeekRequest;
import dev.dogleg.travel.TravelTimes;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * All sets of bookings that one van-day can serve, grown visit by visit, with their least costs:
 * {@code docs/TIMING.md} once more for days on which no drive depends on the hour, no rule holds
 * and each door has one arrival window. Shares no code with planner or audit.
 *
 * <p>What may follow a partial day needs of it only when the van is ready to leave and at what
 * cost. Ready at second {@code t} costs {@code cost} for {@code t} in {@code from..slack} (the
 * start of the day slides, nobody waits) and a waiting price more for each second after {@code
 * slack}; with one window a door, driving, waiting, service and break keep that shape.
 */
final class SteadySets {
  private static final long NEVER = Long.MAX_VALUE;

  private record Partial(int last, boolean rested, int from, int slack, long cost) {
    /** Whether this one is ready whenever the other is, and never dearer. */
    boolean dominates(Partial other, long waitPrice) {
      return last == other.last
          && rested == other.rested
          && from <= other.from
          && cost - waitPrice * slack <= other.cost - waitPrice * other.slack
          && at(other.from, waitPrice) <= other.at(other.from, waitPrice)
          && at(other.slack, waitPrice) <= other.at(other.slack, waitPrice)
          && (slack < other.from || cost <= other.at(slack, waitPrice));
    }

    long at(int second, long waitPrice) {
      return cost + waitPrice * Math.max(0, second - slack);
    }
  }

  private final WeekRequest week;
  private final DayShift shift;
  private final BreakRule rest;
  private final Visit[] visits;
  private final int[] bookings;
  private final long[] extra;
  private final int[][] drive;
  private final long[][] legCost;
  private final int[] soonestHome;
  private final long waitPrice;

  private SteadySets(WeekRequest week, int day, boolean least) {
    this.week = week;
    WeekDay vanDay = week.days().get(day);
    if (!vanDay.terms().equals(DayTerms.NONE)) {
      throw new IllegalArgumentException("days with rules are not read here");
    }
    shift = vanDay.shift();
    rest = shift.breakRule().orElse(null);
    waitPrice = week.prices().waitingMinuteSeconds();
    List<Visit> asked = new ArrayList<>();
    List<Integer> numbers = new ArrayList<>();
    List<Long> prices = new ArrayList<>();
    for (int b = 0; b < week.bookings().size(); b++) {
      for (DayChoice choice : week.bookings().get(b).choices()) {
        if (choice.day() == day) {
          asked.add(plain(choice.visit()));
          numbers.add(b);
          prices.add(choice.extraSixtieths());
        }
      }
    }
    visits = asked.toArray(new Visit[0]);
    bookings = numbers.stream().mapToInt(Integer::intValue).toArray();
    extra = prices.stream().mapToLong(Long::longValue).toArray();
    int n = visits.length;
    drive = new int[n + 1][n + 1];
    legCost = new long[n + 1][n + 1];
    for (int i = 0; i <= n; i++) {
      for (int j = 0; j <= n; j++) {
        leg(vanDay.travel(), i, j, least);
      }
    }
    soonestHome = soonestHome();
  }

  /**
   * Every set that the van-day can serve, with its exact cost.
   *
   * @param week a week without traffic, rules, several windows a door and limits on the van's stay
   * @param day number of the van-day
   * @return the sets, the empty one left out
   */
  static DaySets exact(WeekRequest week, int day) {
    return new SteadySets(week, day, false).grow(day);
  }

  /**
   * Every set that the van-day could serve if each drive took its least duration: with traffic, all
   * that can be served are among them and none costs less. A timetable that holds in traffic holds
   * with faster roads too, the van leaving later.
   *
   * @param week a week without rules, several windows a door and limits on the van's stay
   * @param day number of the van-day
   * @return the sets, the empty one left out
   */
  static DaySets atLeast(WeekRequest week, int day) {
    return new SteadySets(week, day, true).grow(day);
  }

  private static Visit plain(Visit visit) {
    if (visit.first()
        || visit.arriveWithin().size() != 1
        || !visit.vanWithin().equals(Visit.ANY_TIME)) {
      throw new IllegalArgumentException("visit " + visit.id() + " has limits not read here");
    }
    return visit;
  }

  /** Node n is the start in the row, the end in the column. */
  private void leg(TravelTimes travel, int i, int j, boolean least) {
    int n = visits.length;
    int from = i == n ? shift.startPlace() : visits[i].place();
    int to = j == n ? shift.endPlace() : visits[j].place();
    if (!travel.reaches(from, to)) {
      throw new IllegalArgumentException("a road is missing");
    }
    if (!least && travel.steadyUntil(from, to, 0) != TravelTimes.FOREVER) {
      throw new IllegalArgumentException("drives depend on the hour");
    }
    drive[i][j] = least ? travel.leastDriveSeconds(from, to) : travel.driveSeconds(from, to, 0);
    long metrePrice = 60L * week.prices().kilometreSeconds() * travel.lengthMetres(from, to);
    legCost[i][j] =
        (long) Prices.SIXTIETHS_PER_DRIVE_SECOND * drive[i][j]
            + Math.floorDiv(metrePrice + 500, 1000);
  }

  /** Least seconds home by way of any doors: a detour may be faster than the direct leg. */
  private int[] soonestHome() {
    int n = visits.length;
    int[] home = new int[n];
    for (int i = 0; i < n; i++) {
      home[i] = drive[i][n];
    }
    for (int round = 0; round < n; round++) {
      for (int i = 0; i < n; i++) {
        for (int j = 0; j < n; j++) {
          home[i] = Math.min(home[i], drive[i][j] + home[j]);
        }
      }
    }
    return home;
  }

  private DaySets grow(int day) {
    long[] sets = new long[1024];
    long[] costs = new long[1024];
    int size = 0;
    Map<Long, List<Partial>> level = new HashMap<>();
    int n = visits.length;
    Partial start =
        new Partial(n, rest == null, shift.hours().fromSeconds(), shift.latestEndSeconds(), 0);
    for (int j = 0; j < n; j++) {
      visit(level, 0, drive(start, j), j, false);
    }
    while (!level.isEmpty()) {
      Map<Long, List<Partial>> next = new HashMap<>();
      for (Map.Entry<Long, List<Partial>> entry : level.entrySet()) {
        long set = entry.getKey();
        long cost = NEVER;
        for (Partial partial : entry.getValue()) {
          cost = Math.min(cost, close(partial, Long.bitCount(set)));
          extend(next, set, partial);
        }
        if (cost < NEVER) {
          if (size == sets.length) {
            sets = Arrays.copyOf(sets, 2 * size);
            costs = Arrays.copyOf(costs, 2 * size);
          }
          sets[size] = inWeek(set);
          costs[size++] = cost + extras(set);
        }
      }
      level = next;
    }
    return new DaySets(day, Arrays.copyOf(sets, size), Arrays.copyOf(costs, size));
  }

  private void extend(Map<Long, List<Partial>> next, long set, Partial partial) {
    Partial after = partial.rested ? null : rested(partial);
    for (int j = 0; j < visits.length; j++) {
      if ((set >>> j & 1) == 0) {
        Partial there = drive(partial, j);
        visit(next, set, there, j, false);
        if (!partial.rested) {
          visit(next, set, there, j, true);
          if (after != null) {
            visit(next, set, drive(after, j), j, false);
          }
        }
      }
    }
  }

  private Partial drive(Partial p, int j) {
    int seconds = drive[p.last][j];
    return new Partial(
        j, p.rested, p.from + seconds, p.slack + seconds, p.cost + legCost[p.last][j]);
  }

  /** Arrival at the door, possibly a break there, service. */
  private void visit(
      Map<Long, List<Partial>> next, long set, Partial there, int j, boolean breakFirst) {
    Visit visit = visits[j];
    int lastArrival = visit.arriveWithin().get(0).toSeconds();
    int lastStart = visit.doneBySeconds() - visit.serviceSeconds();
    Partial arrived = within(there, Integer.MIN_VALUE, lastArrival);
    if (arrived != null && breakFirst) {
      arrived = rested(arrived);
    }
    if (arrived != null) {
      arrived = within(arrived, visit.arriveWithin().get(0).fromSeconds(), lastStart);
    }
    if (arrived == null) {
      return;
    }
    int service = visit.serviceSeconds();
    Partial done =
        new Partial(
            j, arrived.rested, arrived.from + service, arrived.slack + service, arrived.cost);
    if (done.from + soonestHome[j] <= shift.latestEndSeconds()) {
      keep(next.computeIfAbsent(set | 1L << j, key -> new ArrayList<>()), done);
    }
  }

  /** Whatever happens next happens in a span of seconds; whoever is early waits. */
  private Partial within(Partial p, int earliest, int latest) {
    if (Math.max(p.from, earliest) > latest) {
      return null;
    }
    int from = Math.max(p.from, earliest);
    int slack = Math.min(p.slack, latest);
    return slack >= from
        ? new Partial(p.last, p.rested, from, slack, p.cost)
        : new Partial(p.last, p.rested, from, from, p.at(from, waitPrice));
  }

  private Partial rested(Partial p) {
    Partial starts = within(p, rest.startWithin().fromSeconds(), rest.startWithin().toSeconds());
    int length = rest.lengthSeconds();
    return starts == null
        ? null
        : new Partial(p.last, true, starts.from + length, starts.slack + length, starts.cost);
  }

  private void keep(List<Partial> held, Partial one) {
    for (Partial other : held) {
      if (other.dominates(one, waitPrice)) {
        return;
      }
    }
    held.removeIf(other -> one.dominates(other, waitPrice));
    held.add(one);
  }

  private long close(Partial p, int served) {
    int n = visits.length;
    int end = p.from + drive[p.last][n];
    if (end > shift.latestEndSeconds()) {
      return NEVER;
    }
    if (!p.rested && served >= 2 && end > rest.startWithin().fromSeconds()) {
      return NEVER;
    }
    Prices prices = week.prices();
    return p.cost
        + legCost[p.last][n]
        + (long) prices.endMinuteSeconds() * (end - shift.hours().fromSeconds())
        + (long) prices.overtimeMinuteSeconds() * Math.max(0, end - shift.hours().toSeconds());
  }

  private long inWeek(long set) {
    long all = 0;
    for (int k = 0; k < visits.length; k++) {
      all |= (set >>> k & 1) << bookings[k];
    }
    return all;
  }

  private long extras(long set) {
    long sum = 0;
    for (int k = 0; k < visits.length; k++) {
      sum += (set >>> k & 1) * extra[k];
    }
    return sum;
  }
}
