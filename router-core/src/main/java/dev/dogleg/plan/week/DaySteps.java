package dev.dogleg.plan.week;

import dev.dogleg.itinerary.BreakRule;
import dev.dogleg.itinerary.DayShift;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WaterPlace;
import dev.dogleg.schedule.DayModel;
import dev.dogleg.schedule.StepTerms;
import dev.dogleg.time.TimeWindow;
import java.util.List;
import java.util.Optional;

/**
 * Steps of partial days from door to door, near the truth and quick: what a search asks millions of
 * times. What is to be planned is asked of the day engine afterwards.
 *
 * <p>Maintainers: against {@code docs/TIMING.md} durations come from a {@link LegTable}, nobody
 * lingers at a served door, several {@code vanWithin} are one from the first to the last, and liked
 * hours have no price. Waiting, break, overtime, tanks and balance are in. One thread.
 */
final class DaySteps {
  /** Leaving the start place is looked at in stretches of so many seconds. */
  private static final int START_STRETCH = 7200;

  private final DayModel day;
  private final LegTable legs;
  private final int n;
  private final int[] place;
  private final int[][] legOf;
  private final int[][] open;
  private final int[][] close;
  private final int[] doneBy;
  private final int[] leaveBy;
  private final boolean hasBreak;
  private final int breakFrom;
  private final int breakTo;
  private final int breakLength;
  private final long driven;
  private final long waited;
  private final StepTerms terms;
  private final boolean water;
  private final WaterWays ways;

  /** What the step under way leads to. */
  private int node;

  private boolean first;
  private int service;
  private StepAhead ahead;
  private long limit;
  private int stops;
  private int fresh;
  private int grey;
  private int fillings;
  private PartialDays reached;
  private int arrived;
  private int moreFresh;
  private int moreGrey;

  DaySteps(VanKind kind, LegTable legs) {
    this.legs = legs;
    day = kind.model();
    n = kind.size();
    DayShift shift = kind.day().shift();
    List<WaterPlace> wells =
        kind.day().terms().water().map(terms -> terms.places()).orElse(List.of());
    place = new int[n + 2 + wells.size()];
    open = new int[n][];
    close = new int[n][];
    doneBy = new int[n];
    leaveBy = new int[n + 2];
    for (int j = 0; j < n; j++) {
      Visit visit = kind.visit(j);
      place[j] = visit.place();
      int vanFrom = visit.vanWithin().get(0).fromSeconds();
      int vanTo = visit.vanWithin().get(visit.vanWithin().size() - 1).toSeconds();
      List<TimeWindow> windows = visit.arriveWithin();
      open[j] = windows.stream().mapToInt(w -> Math.max(vanFrom, w.fromSeconds())).toArray();
      close[j] = windows.stream().mapToInt(TimeWindow::toSeconds).toArray();
      doneBy[j] = Math.min(visit.doneBySeconds(), vanTo);
      leaveBy[j] = Math.min(day.latestEnd(), vanTo);
    }
    leaveBy[n] = day.latestEnd();
    leaveBy[n + 1] = day.latestEnd();
    place[n] = shift.startPlace();
    place[n + 1] = shift.endPlace();
    for (int w = 0; w < wells.size(); w++) {
      place[n + 2 + w] = wells.get(w).place();
    }
    legOf = new int[place.length * place.length][];
    ways = new WaterWays(day, n, wells.size());
    Optional<BreakRule> rule = shift.breakRule();
    hasBreak = day.hasBreak();
    breakFrom = day.breakFrom();
    breakLength = day.breakLength();
    breakTo = rule.map(r -> r.startWithin().toSeconds()).orElse(0);
    driven = day.drivePrice();
    waited = day.waitPrice();
    terms = day.steps();
    water = terms.water();
  }

  /** {@return no partial days yet} */
  PartialDays none() {
    return new PartialDays(waited);
  }

  private int[] leg(int i, int j) {
    int pair = i * place.length + j;
    if (legOf[pair] == null) {
      legOf[pair] = legs.leg(place[i], place[j]);
    }
    return legOf[pair];
  }

  /** Days about to begin, at the latest at a time. */
  void start(int latest, PartialDays to) {
    to.clear();
    int until = Math.min(latest, day.latestEnd());
    for (int a = day.from(); a <= until; a += START_STRETCH) {
      to.add(a, 0, Math.min(until, a + START_STRETCH - 1), 0, false, 0, 0, 0);
    }
  }

  /** One more visit may still be put in, of so much water at the most. */
  void leaveRoom(int fresh, int grey) {
    moreFresh = fresh;
    moreGrey = grey;
  }

  /**
   * Goes on to a visit and serves it; water stops are made only where they are needed.
   *
   * @param from partial days at node {@code i}
   * @param i node left
   * @param j visit
   * @param serviceSeconds its service
   * @param price price of the step
   * @param toCome what comes after the visit
   * @param costLimit a day of this cost or more is of no interest
   * @param to what is reached, cleared before
   */
  void visit(
      PartialDays from,
      int i,
      int j,
      int serviceSeconds,
      long price,
      StepAhead toCome,
      long costLimit,
      PartialDays to) {
    to.clear();
    node = j;
    first = i == n;
    service = serviceSeconds;
    ahead = toCome;
    limit = costLimit;
    reached = to;
    stops = 0;
    int[] direct = leg(i, j);
    for (int k = 0; k < from.size(); k++) {
      boolean lasts = true;
      boolean enough = true;
      if (water) {
        fresh = from.fresh[k] + terms.fresh(j);
        grey = from.grey[k] + terms.grey(j);
        fillings = from.fillings[k];
        lasts = terms.lasts(fresh, grey);
        enough = enough();
        lasts &= stops <= terms.mostStops() - fillings;
      }
      if (lasts && direct != null) {
        leave(from, k, i, direct, price + day.legPrice(i, j), from.taken[k], -1);
      }
      if (!enough && i < n && from.fillings[k] < terms.mostStops()) {
        fill(from, k, i, price);
      }
    }
  }

  /**
   * Whether the tanks last for all visits to come; then it no longer matters how full they are. If
   * not, it is told how many water stops there must be.
   */
  private boolean enough() {
    long allFresh = (long) fresh + ahead.fresh;
    long allGrey = (long) grey + ahead.grey;
    stops = 0;
    if (terms.lasts(allFresh + moreFresh, allGrey + moreGrey, 1)) {
      fresh = 0;
      grey = 0;
      fillings = 0;
      return true;
    }
    while (stops <= terms.mostStops() && !terms.lasts(allFresh, allGrey, 1 + stops)) {
      stops++;
    }
    return false;
  }

  private void fill(PartialDays from, int k, int i, long price) {
    fresh = terms.fresh(node);
    grey = terms.grey(node);
    fillings = from.fillings[k] + 1;
    if (!terms.lasts(fresh, grey)) {
      return;
    }
    enough();
    if (stops > terms.mostStops() - fillings) {
      return;
    }
    for (int w : ways.wells(i, node)) {
      long prices = price + day.legPrice(i, w) + day.legPrice(w, node);
      leave(from, k, i, leg(i, w), prices, from.taken[k], w);
    }
  }

  /** Leaves a door at once, and after the break where it may be taken there. */
  private void leave(PartialDays from, int k, int i, int[] leg, long price, boolean taken, int by) {
    int a = from.a[k];
    int b = Math.min(from.b[k], leaveBy[i]);
    if (a > leaveBy[i]) {
      return;
    }
    long costA = from.costA[k] + price;
    long costB = from.at(k, b) + price;
    drive(a, costA, b, costB, leg, taken, by);
    // Whoever arrives in time for the break has it there.
    if (hasBreak && !taken && i < n && a <= breakTo && arrived > breakTo) {
      int first = Math.max(a, breakFrom);
      int last = Math.max(first, Math.min(b, breakTo));
      int ready = first + breakLength;
      if (ready <= leaveBy[i]) {
        drive(
            ready,
            from.at(k, first) + price,
            Math.min(last + breakLength, leaveBy[i]),
            from.at(k, last) + price,
            leg,
            true,
            by);
      }
    }
  }

  private void drive(int a, long costA, int b, long costB, int[] leg, boolean taken, int by) {
    int driveA = legs.drive(leg, a);
    int driveB = b == a ? driveA : legs.drive(leg, b);
    int arriveA = a + driveA;
    int arriveB = b + driveB;
    long thereA = costA + driven * driveA;
    long thereB = costB + driven * driveB;
    if (by >= 0) {
      int stop = day.service(by);
      drive(arriveA + stop, thereA, arriveB + stop, thereB, leg(by, node), taken, -1);
      return;
    }
    arrived = arriveB;
    arrive(arriveA, thereA, arriveB, thereB, taken, false);
    if (hasBreak && !taken && arriveA <= breakTo && !first) {
      arrive(arriveA, thereA, arriveB, thereB, true, true);
    }
  }

  private void arrive(int a, long costA, int b, long costB, boolean taken, boolean breakThere) {
    int[] opens = open[node];
    int[] closes = close[node];
    int low = a;
    for (int w = 0; w < closes.length && !(breakThere && low > breakTo); w++) {
      if (low > closes[w]) {
        continue;
      }
      int high = Math.min(b, closes[w]);
      if (breakThere) {
        high = Math.min(high, breakTo);
      }
      high = Math.max(low, high);
      long costLow = PartialDays.at(a, costA, b, costB, low, waited);
      long costHigh = PartialDays.at(a, costA, b, costB, high, waited);
      if (breakThere) {
        if (!ahead.last && Math.max(high, opens[w]) + service <= breakFrom) {
          // Served first, it still leaves the break to be had at its door.
          low = closes[w] + 1;
          continue;
        }
        int start = Math.max(low, breakFrom);
        int end = Math.max(high, breakFrom);
        serve(
            start + breakLength,
            PartialDays.at(low, costLow, high, costHigh, start, waited),
            end + breakLength,
            PartialDays.at(low, costLow, high, costHigh, end, waited),
            opens[w],
            taken);
      } else {
        serve(low, costLow, high, costHigh, opens[w], taken);
      }
      low = closes[w] + 1;
      if (low > b) {
        return;
      }
    }
  }

  private void serve(int a, long costA, int b, long costB, int opens, boolean taken) {
    int late = Math.min(doneBy[node], taken ? ahead.leaveTaken[stops] : ahead.leaveOpen[stops]);
    int readyA = Math.max(a, opens) + service;
    if (readyA > late) {
      return;
    }
    int readyB = Math.max(b, opens) + service;
    long firstCost = PartialDays.at(a, costA, b, costB, readyA - service, waited);
    long lastCost = PartialDays.at(a, costA, b, costB, readyB - service, waited);
    if (readyB > late) {
      lastCost = PartialDays.at(readyA, firstCost, readyB, lastCost, late, waited);
      readyB = late;
    }
    if (Math.min(firstCost, lastCost) + ahead.home[stops] < limit) {
      reached.add(readyA, firstCost, readyB, lastCost, taken, fresh, grey, fillings);
    }
  }

  /** {@return least cost of ending the day; {@link RelaxedDay#NEVER} where it cannot end} */
  long end(PartialDays from, int i, boolean single) {
    int[] leg = leg(i, n + 1);
    long least = RelaxedDay.NEVER;
    if (leg == null) {
      return least;
    }
    for (int k = 0; k < from.size(); k++) {
      int by = from.taken[k] || single ? day.latestEnd() : endOpen();
      int a = from.a[k];
      int end = a + legs.drive(leg, a);
      if (end > by || a > leaveBy[i]) {
        continue;
      }
      least = Math.min(least, from.costA[k] + driven * (end - a) + day.endCost(end));
      int b = Math.max(a, Math.min(Math.min(from.b[k], leaveBy[i]), legs.leaveFor(leg, by)));
      end = b + legs.drive(leg, b);
      if (end <= by) {
        least = Math.min(least, from.at(k, b) + driven * (end - b) + day.endCost(end));
      }
    }
    return least >= RelaxedDay.NEVER ? least : least + day.legPrice(i, n + 1);
  }

  /** Last end of a day of several visits whose break was not taken. */
  private int endOpen() {
    return hasBreak ? Math.min(day.latestEnd(), breakFrom) : day.latestEnd();
  }

  /** {@return last arrival at the end place} */
  int latestEnd(boolean taken, boolean single) {
    return taken || single ? day.latestEnd() : endOpen();
  }

  /** {@return last leaving of a door so that another node is reached by a time} */
  int latestLeave(int i, int j, int arrive) {
    int[] leg = leg(i, j);
    return leg == null ? -1 : Math.min(leaveBy[i], legs.leaveFor(leg, arrive) + 1);
  }

  /** {@return the same with a water stop on the way} */
  int latestLeaveByWell(int i, int j, int arrive) {
    int latest = -1;
    if (arrive < 0) {
      return latest;
    }
    for (int w : ways.wells(i, j)) {
      int ready = legs.leaveFor(leg(w, j), arrive) + 1;
      latest = Math.max(latest, legs.leaveFor(leg(i, w), ready - day.service(w)) + 1);
    }
    return Math.min(leaveBy[i], latest);
  }

  /** {@return least price of a leg with a water stop on the way; NEVER where there is none} */
  long leastByWell(int i, int j) {
    return ways.least(i, j);
  }

  /** {@return fresh water of a visit, in millilitres} */
  int fresh(int j) {
    return terms.fresh(j);
  }

  /** {@return grey water of a visit, in millilitres} */
  int grey(int j) {
    return terms.grey(j);
  }

  /** {@return last leaving of a door with the break taken there first} */
  int latestBeforeBreak(int latestLeave) {
    return hasBreak ? Math.min(breakTo, latestLeave - breakLength) : -1;
  }

  /** {@return last arrival at a visit so that it is left by a time} */
  int latestArrival(int j, int serviceSeconds, int ready) {
    int start = Math.min(doneBy[j], ready) - serviceSeconds;
    for (int w = close[j].length - 1; w >= 0; w--) {
      if (open[j][w] <= start) {
        return Math.min(close[j][w], start);
      }
    }
    return -1;
  }

  /** {@return last arrival at a visit with a break there before it} */
  int latestArrivalForBreak(int j, int serviceSeconds, int ready) {
    if (!hasBreak) {
      return -1;
    }
    int start = Math.min(doneBy[j], ready) - serviceSeconds;
    for (int w = close[j].length - 1; w >= 0; w--) {
      if (open[j][w] <= start) {
        return Math.min(breakTo, Math.min(close[j][w], start - breakLength));
      }
    }
    return -1;
  }

  /** {@return a leg's least price: driving and kilometres} */
  long least(int i, int j) {
    return driven * day.leastDrive(i, j) + day.legPrice(i, j);
  }
}
