package dev.dogleg.plan.week;

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

  /** Of the order in hand: last seconds at which a visit may be left or reached, least way home. */
  private int[] leaveOpen = new int[0];

  private int[] leaveTaken = new int[0];
  private int[] reachOpen = new int[0];
  private int[] reachTaken = new int[0];
  private long[] home = new long[0];
  private int[] inHand;
  private int bestPlace;
  private final int[] need;
  private int room;
  private long found;
  private long steppedVisits;

  OrderEstimate(VanKind kind, LegTable legs) {
    this.kind = kind;
    day = kind.model();
    terms = day.steps();
    steps = new DaySteps(kind, legs);
    plain = terms.free() && !terms.pricesGroom() && !terms.servicesVary();
    served = new long[Math.max(1, (kind.size() + Long.SIZE - 1) / Long.SIZE)];
    now = steps.none();
    next = steps.none();
    need = new int[kind.size()];
    needs();
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
  int room() {
    return room;
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
    int[] longer = new int[n + 1];
    System.arraycopy(base, 0, longer, 1, n);
    longer[0] = visit;
    for (int at = 0; at <= n && after[at].size() > 0; at++) {
      if (at > 0) {
        longer[at - 1] = longer[at];
        longer[at] = visit;
      }
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

  /** Steps onto the visit that is put in at a place. */
  private boolean onto(int visit, int at, long limit, int[] base) {
    int i = at == 0 ? day.start() : base[at - 1];
    int j = at == base.length ? day.end() : base[at];
    int taken = steps.latestLeave(visit, j, reachTaken[at]);
    int open = steps.latestLeave(visit, j, reachOpen[at]);
    open = Math.max(open, steps.latestBeforeBreak(taken));
    if (terms.servicesVary()) {
      open = DaySteps.ANY_TIME;
      taken = DaySteps.ANY_TIME;
    }
    long below = limit - endPrice - (at == base.length ? 0 : home[at]);
    steppedVisits++;
    steps.visit(after[at], i, visit, service[at], price[at], open, taken, below, now);
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
      int k = at - shift;
      steppedVisits++;
      steps.visit(
          now,
          i,
          order[at],
          service[at],
          price[at],
          leaveOpen[k],
          leaveTaken[k],
          below - home[k],
          next);
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
    steps.start(base.length == 0 ? day.latestEnd() : latestStart(base), after[0]);
    for (int k = 0; k < base.length; k++) {
      int i = k == 0 ? day.start() : base[k - 1];
      steppedVisits++;
      steps.visit(
          after[k],
          i,
          base[k],
          service[k],
          price[k],
          leaveOpen[k],
          leaveTaken[k],
          RelaxedDay.NEVER,
          after[k + 1]);
    }
    inHand = base;
  }

  /** Reads an order backwards; {@code whole}: it is not to become longer. */
  private void limits(int[] order, boolean whole) {
    int n = order.length;
    boolean single = whole ? n <= 1 : n == 0;
    reachTaken[n] = steps.latestEnd(true, single);
    reachOpen[n] = steps.latestEnd(false, single);
    home[n] = 0;
    int j = day.end();
    for (int k = n - 1; k >= 0; k--) {
      int i = order[k];
      home[k] = steps.least(i, j) + (k == n - 1 ? 0 : home[k + 1]);
      if (terms.servicesVary()) {
        leaveTaken[k] = DaySteps.ANY_TIME;
        leaveOpen[k] = DaySteps.ANY_TIME;
        reachTaken[k] = DaySteps.ANY_TIME;
        reachOpen[k] = DaySteps.ANY_TIME;
      } else {
        leaveTaken[k] = steps.latestLeave(i, j, reachTaken[k + 1]);
        leaveOpen[k] =
            Math.max(
                steps.latestLeave(i, j, reachOpen[k + 1]),
                k == n - 1 && whole ? -1 : steps.latestBeforeBreak(leaveTaken[k]));
        reachTaken[k] = steps.latestArrival(i, service[k], leaveTaken[k]);
        reachOpen[k] =
            Math.max(
                steps.latestArrival(i, service[k], leaveOpen[k]),
                steps.latestArrivalForBreak(i, service[k], leaveTaken[k]));
      }
      j = i;
    }
  }

  private int latestStart(int[] order) {
    return terms.servicesVary()
        ? day.latestEnd()
        : steps.latestLeave(day.start(), order[0], reachOpen[0]);
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
      leaveOpen = new int[room];
      leaveTaken = new int[room];
      reachOpen = new int[room];
      reachTaken = new int[room];
      home = new long[room];
      inHand = null;
    }
  }
}
