package dev.dogleg.plan.week;

import dev.dogleg.itinerary.WaterPlace;
import dev.dogleg.schedule.DayModel;
import dev.dogleg.schedule.StepTerms;
import java.util.Arrays;

/**
 * What orders of visits cost, near the truth and quick, and the best place for one visit more.
 *
 * <p>Maintainers: of an order in hand the partial days after each visit and the last times at which
 * each may be left are kept. One visit more is then timed from its place on, and most places fall
 * at a glance: it would be left too late for the next. Rules are asked step by step as the day
 * engine asks them. One thread.
 */
final class OrderEstimate {
  private final VanKind kind;
  private final DayModel day;
  private final StepTerms terms;
  private final DaySteps steps;

  /** Whether no rule, no changing service and no full day has to be asked for. */
  private final boolean plain;

  private final long[] served;
  private PartialDays[] after = new PartialDays[0];
  private PartialDays now;
  private PartialDays next;
  private int[] service = new int[0];
  private long[] price = new long[0];
  private long endPrice;

  /** What comes after each visit of the order in hand, and after one that is put in. */
  private StepAhead[] ahead = new StepAhead[0];

  private final StepAhead put;

  /** Of the places for one visit more: what a day costs at least, and which were looked at. */
  private long[] floor = new long[0];

  private long[] least = new long[0];
  private int[] earliest = new int[0];

  private int[] inHand;
  private int bestPlace;
  private final int[] need;
  private int room;
  private int stopsWith;
  private int mostFresh;
  private int mostGrey;
  private final int leastFill;
  private long found;
  private long steppedVisits;

  OrderEstimate(VanKind kind, LegTable legs) {
    this.kind = kind;
    day = kind.model();
    terms = day.steps();
    steps = new DaySteps(kind, legs);
    plain = terms.free() && !terms.pricesGroom() && !terms.servicesVary();
    put = new StepAhead(terms.mostStops());
    served = new long[Math.max(1, (kind.size() + Long.SIZE - 1) / Long.SIZE)];
    now = steps.none();
    next = steps.none();
    need = new int[kind.size()];
    needs();
    leastFill =
        kind.day().terms().water().stream()
            .flatMap(water -> water.places().stream())
            .mapToInt(WaterPlace::seconds)
            .min()
            .orElse(0);
    for (int j = 0; j < kind.size(); j++) {
      mostFresh = Math.max(mostFresh, terms.fresh(j));
      mostGrey = Math.max(mostGrey, terms.grey(j));
    }
  }

  /** {@return steps from visit to visit made so far} */
  long steppedVisits() {
    return steppedVisits;
  }

  /** {@return seconds that a visit takes of a day at least: its service and a way to it} */
  int need(int visit) {
    return need[visit];
  }

  /** {@return seconds of a day of several visits for services and the ways to them} */
  int room(long fresh, long grey) {
    int stops = stops(fresh, grey);
    return terms.lasts(fresh, grey, 1 + stops) ? room - stops * leastFill : -1;
  }

  /** {@return what the legs of an order cost at least, and its extra prices} */
  long floor(int[] order) {
    long floor = extra(order);
    int i = day.start();
    for (int visit : order) {
      floor += steps.least(i, visit);
      i = visit;
    }
    return order.length == 0 ? 0 : floor + steps.least(i, day.end());
  }

  /** {@return by how much that rises at least with one visit more} */
  long detour(int[] order, int visit) {
    long least = RelaxedDay.NEVER;
    int i = day.start();
    for (int at = 0; at <= order.length; at++) {
      int j = at == order.length ? day.end() : order[at];
      long detour = steps.least(i, visit) + steps.least(visit, j);
      least = Math.min(least, order.length == 0 ? detour : detour - steps.least(i, j));
      i = j;
    }
    return least + kind.extraSixtieths(visit);
  }

  private void needs() {
    int n = day.size();
    int home = Integer.MAX_VALUE / 4;
    for (int j = 0; j < n; j++) {
      int way = Integer.MAX_VALUE / 4;
      for (int i = 0; i <= n; i++) {
        if (i != j && day.reaches(i, j)) {
          way = Math.min(way, day.leastDrive(i, j));
        }
      }
      need[j] = way + day.service(j);
      if (day.reaches(j, day.end())) {
        home = Math.min(home, day.leastDrive(j, day.end()));
      }
    }
    room = day.latestEnd() - day.from() - home;
    if (day.hasBreak()) {
      room = Math.max(room - day.breakLength(), day.breakFrom() - day.from() - home);
    }
  }

  /** {@return the place that {@link #insert} found, 0 first} */
  int bestPlace() {
    return bestPlace;
  }

  /**
   * Cost of an order, extra prices included.
   *
   * @param order local numbers
   * @param limit a cost of this or more is of no interest
   * @return the cost; {@link RelaxedDay#NEVER} where it is not possible or not below the limit
   */
  long of(int[] order, long limit) {
    room(order.length + 1);
    if (!firstsAllow(order) || !judge(order, false)) {
      return RelaxedDay.NEVER;
    }
    long extra = extra(order) + endPrice;
    limits(order, true);
    inHand = null;
    steps.leaveRoom(0, 0);
    steps.start(latestStart(order), now);
    return finish(order, 0, limit - extra, 0) ? found + extra : RelaxedDay.NEVER;
  }

  /**
   * The best place for one visit more.
   *
   * @param base an order; asked again with the very same array it is not timed again
   * @param visit a visit not in it
   * @param limit a cost of this or more is of no interest
   * @param whole false where more visits are to come, so that groups may still be incomplete
   * @return cost of the longer order; {@link RelaxedDay#NEVER} where there is none below the limit
   */
  long insert(int[] base, int visit, long limit, boolean whole) {
    int n = base.length;
    room(n + 1);
    take(base);
    long extra = extra(base) + kind.extraSixtieths(visit);
    long best = limit;
    stopsWith = stops(base, terms.fresh(visit), terms.grey(visit));
    floors(base, visit);
    steps.leaveRoom(0, 0);
    int[] longer = new int[n + 1];
    for (int at = lowest(n); floor[at] + extra < best; at = lowest(n)) {
      floor[at] = RelaxedDay.NEVER;
      System.arraycopy(base, 0, longer, 0, at);
      longer[at] = visit;
      System.arraycopy(base, at, longer, at + 1, n - at);
      if (firstsAllow(longer) && judge(longer, !whole) && onto(visit, at, best - extra, base)) {
        long below = best - extra - endPrice;
        if (finish(longer, at + 1, below, 1)) {
          best = found + extra + endPrice;
          bestPlace = at;
        }
      }
    }
    return best < limit ? best : RelaxedDay.NEVER;
  }

  /** What a day costs at least with a visit at each of the places. */
  private void floors(int[] base, int visit) {
    int n = base.length;
    for (int at = 0; at <= n; at++) {
      floor[at] = RelaxedDay.NEVER;
      if (after[at].size() > 0) {
        int i = at == 0 ? day.start() : base[at - 1];
        int j = at == n ? day.end() : base[at];
        int there = day.leastDrive(i, visit) + day.service(visit) + day.leastDrive(visit, j);
        if (day.reaches(i, visit)
            && day.reaches(visit, j)
            && terms.leg(i, visit)
            && (at == n || terms.leg(visit, j))
            && earliest[at] + there <= ahead[at].reach()) {
          floor[at] = least[at] + steps.least(i, visit) + steps.least(visit, j) + ahead[at].home[0];
        }
      }
    }
  }

  private int lowest(int n) {
    int lowest = 0;
    for (int at = 1; at <= n; at++) {
      lowest = floor[at] < floor[lowest] ? at : lowest;
    }
    return lowest;
  }

  /** Steps onto the visit that is put in at a place. */
  private boolean onto(int visit, int at, long limit, int[] base) {
    int i = at == 0 ? day.start() : base[at - 1];
    int j = at == base.length ? day.end() : base[at];
    put.visit(steps, visit, service[at], ahead[at], j, stopsWith, at == base.length);
    steppedVisits++;
    steps.visit(after[at], i, visit, service[at], price[at], put, limit - endPrice, now);
    return now.size() > 0;
  }

  /**
   * Goes on from {@link #now} to the visits from a place on and home.
   *
   * @param shift 1 where the order is the one in hand with a visit put in before this place
   */
  private boolean finish(int[] order, int from, long below, int shift) {
    for (int at = from; at < order.length; at++) {
      int i = at == 0 ? day.start() : order[at - 1];
      steppedVisits++;
      steps.visit(now, i, order[at], service[at], price[at], ahead[at - shift], below, next);
      PartialDays swap = now;
      now = next;
      next = swap;
      if (now.size() == 0) {
        return false;
      }
    }
    found = steps.end(now, order[order.length - 1], order.length == 1);
    return found < below;
  }

  /** Takes an order in hand, as the base of longer ones. */
  private void take(int[] base) {
    if (base == inHand) {
      return;
    }
    judge(base, true);
    limits(base, false);
    steps.leaveRoom(mostFresh, mostGrey);
    steps.start(base.length == 0 ? day.latestEnd() : latestStart(base), after[0]);
    least[0] = 0;
    earliest[0] = after[0].earliest();
    for (int k = 0; k < base.length; k++) {
      int i = k == 0 ? day.start() : base[k - 1];
      steppedVisits++;
      steps.visit(
          after[k], i, base[k], service[k], price[k], ahead[k], RelaxedDay.NEVER, after[k + 1]);
      least[k + 1] = after[k + 1].least();
      earliest[k + 1] = after[k + 1].earliest();
    }
    inHand = base;
  }

  /** Reads an order backwards; {@code whole}: it is not to become longer. */
  private void limits(int[] order, boolean whole) {
    int n = order.length;
    int stops = whole ? stops(order, 0, 0) : stops(order, mostFresh, mostGrey);
    ahead[n].end(steps, whole ? n <= 1 : n == 0);
    int j = day.end();
    for (int k = n - 1; k >= 0; k--) {
      int seconds = whole ? service[k] : day.service(order[k]);
      ahead[k].visit(steps, order[k], seconds, ahead[k + 1], j, stops, whole && k == n - 1);
      j = order[k];
    }
  }

  /** Water stops that an order and more need at least, but no more than there may be. */
  private int stops(int[] order, long moreFresh, long moreGrey) {
    long fresh = moreFresh;
    long grey = moreGrey;
    for (int visit : order) {
      fresh += terms.fresh(visit);
      grey += terms.grey(visit);
    }
    return stops(fresh, grey);
  }

  private int stops(long fresh, long grey) {
    int stops = 0;
    while (stops < terms.mostStops() && !terms.lasts(fresh, grey, 1 + stops)) {
      stops++;
    }
    return stops;
  }

  private int latestStart(int[] order) {
    return steps.latestLeave(day.start(), order[0], ahead[0].reachOpen());
  }

  private boolean firstsAllow(int[] order) {
    for (int k = 1; k < order.length; k++) {
      if (day.first(order[k])) {
        return false;
      }
    }
    return true;
  }

  private long extra(int[] order) {
    long extra = 0;
    for (int local : order) {
      extra += kind.extraSixtieths(local);
    }
    return extra;
  }

  /** Services and prices of an order; false where a must rule forbids it. */
  private boolean judge(int[] order, boolean mayBeIncomplete) {
    endPrice = 0;
    if (plain) {
      for (int k = 0; k < order.length; k++) {
        service[k] = day.service(order[k]);
      }
      return true;
    }
    Arrays.fill(served, 0);
    boolean allowed = true;
    int last = day.start();
    long groomed = 0;
    for (int k = 0; k < order.length; k++) {
      int visit = order[k];
      allowed &= terms.may(served, 0, last, visit, k + 1);
      service[k] = terms.service(last, visit, k + 1);
      price[k] = terms.price(served, 0, last, visit, k + 1);
      groomed += service[k];
      served[visit >>> 6] |= 1L << visit;
      last = visit;
    }
    if (order.length > 0 && !mayBeIncomplete) {
      allowed &= terms.mayEnd(served, 0, last);
      endPrice = terms.endPrice(served, 0, last) + terms.groomPrice(groomed);
    }
    return allowed;
  }

  private void room(int visits) {
    if (after.length < visits + 1) {
      int room = 2 * visits + 8;
      after = new PartialDays[room];
      Arrays.setAll(after, k -> steps.none());
      service = new int[room];
      price = new long[room];
      ahead = new StepAhead[room];
      Arrays.setAll(ahead, k -> new StepAhead(terms.mostStops()));
      floor = new long[room];
      least = new long[room];
      earliest = new int[room];
      inHand = null;
    }
  }
}
