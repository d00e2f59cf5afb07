package dev.dogleg.plan;

import dev.dogleg.schedule.DayModel;
import dev.dogleg.schedule.StepTerms;
import java.util.Arrays;

/**
 * Least value of the rest of a day over all orders, for days of few visits.
 *
 * <p>Maintainers: three passes over all (set, last visit), Held and Karp 1962. Forwards the
 * earliest second at which the last door can be left (least drives of the traffic about that time;
 * first in, first out makes it a bound). Backwards the latest second at which it may still be left,
 * so that no more booked visits are left out than may be; and the least price of the legs to come,
 * each at its least over the seconds between the two; and likewise the least time still needed,
 * which prices overtime (with the break, where that is still to come). Sets of more visits than fit
 * into the day are not looked at. 29 bytes a state.
 */
final class SubsetBound implements CompletionBound {
  /** Most visits for which the table is built. */
  static final int MOST = 16;

  private static final int NEVER = Integer.MAX_VALUE / 4;

  private final int n;
  private final SetStates states;
  private final DayModel model;
  private final LeastLegs legs;
  private final int[] earliest;
  private final int[] latest;
  private final long[] spent;
  private final int[] restSeconds;
  private final long[] rest;
  private final long[] leftOut;
  private final byte[] best;
  private final long day;
  private final CountBound count;
  private final long enough;
  private final StepTerms terms;
  private final boolean free;
  private final long[] served = new long[1];
  private int firstVisit = -1;

  /** Tables of days on which at most some number of booked visits is left out. */
  SubsetBound(DayModel model, DayValue value, LeastLegs legs, int mayLeaveOut, WorkMeter meter) {
    this.model = model;
    this.legs = legs;
    n = model.size();
    terms = model.steps();
    free = terms.free();
    count = mayLeaveOut > 0 ? new CountBound(model, legs) : null;
    int sets = 1 << n;
    states =
        new SetStates(
            n, count == null ? n : Math.min(count.mostServed(), Math.max(1, n - mayLeaveOut)));
    earliest = states.filled(NEVER);
    latest = new int[states.size()];
    spent = new long[states.size()];
    restSeconds = new int[states.size()];
    rest = new long[states.size()];
    best = new byte[states.size()];
    leftOut = new long[sets];
    for (int set = sets - 2; set >= 0; set--) {
      int lowest = Integer.numberOfTrailingZeros(~set);
      leftOut[set] = leftOut[set | 1 << lowest] + value.leftOut(lowest);
    }
    forwards();
    meter.count(states.size());
    enough = DayValue.BOOKED * (mayLeaveOut + 1L);
    for (int set = sets - 1; set > 0; set--) {
      for (int last = states.holds(set) ? set : 0; last != 0; last &= last - 1) {
        backwards(set, Integer.numberOfTrailingZeros(last), leftOut[set] < enough);
      }
    }
    long nobody = leftOut[0] < enough ? leftOut[0] : DayValue.NONE;
    long least = DayValue.NONE;
    int leastTime = NEVER;
    for (int j = 0; j < n; j++) {
      int only = states.of(1 << j, j);
      if (earliest[only] <= latest[only]) {
        int service = terms.service(n, j, 1);
        int until = latest[only] - service - legs.seconds(model.start(), j);
        long there = legs.price(model.start(), j, model.from(), until) + stepPrice(0, n, j);
        leastTime =
            Math.min(
                leastTime,
                model.from() + legs.seconds(model.start(), j) + service + restSeconds[only]);
        if (there + rest[only] < least) {
          least = there + rest[only];
          firstVisit = j;
        }
      }
    }
    day = Math.min(nobody, firstVisit < 0 ? DayValue.NONE : withEnd(least, leastTime, true));
  }

  private void forwards() {
    Arrays.fill(spent, DayValue.NONE);
    for (int j = 0; j < n; j++) {
      if (may(0, n, j)) {
        reach(model.start(), model.from(), stepPrice(0, n, j), j, states.of(1 << j, j), 1);
      }
    }
    int sets = 1 << n;
    for (int set = 1; set < sets; set++) {
      for (int last = states.grows(set) ? set : 0; last != 0; last &= last - 1) {
        int i = Integer.numberOfTrailingZeros(last);
        int state = states.of(set, i);
        int ready = earliest[state];
        if (ready < NEVER) {
          for (int open = sets - 1 & ~set; open != 0; open &= open - 1) {
            int j = Integer.numberOfTrailingZeros(open);
            if (free) {
              reach(i, ready, spent[state], j, states.of(set | 1 << j, j), 0);
            } else if (may(set, i, j)) {
              long cost = spent[state] + stepPrice(set, i, j);
              reach(i, ready, cost, j, states.of(set | 1 << j, j), Integer.bitCount(set) + 1);
            }
          }
        }
      }
    }
  }

  /** {@return whether a set and its last visit may be followed by another visit} */
  boolean may(int set, int i, int j) {
    if (free) {
      return true;
    }
    served[0] = set;
    return terms.may(served, 0, i, j, Integer.bitCount(set) + 1);
  }

  /** {@return price of that step besides driving and waiting} */
  long stepPrice(int set, int i, int j) {
    if (free) {
      return 0;
    }
    served[0] = set;
    return terms.price(served, 0, i, j, Integer.bitCount(set) + 1);
  }

  private void reach(int i, int ready, long cost, int j, int state, int place) {
    int next = readyAt(i, ready, j, place);
    if (next < NEVER) {
      earliest[state] = Math.min(earliest[state], next);
      spent[state] = Math.min(spent[state], cost + legPrice(i, ready, j));
    }
  }

  /** {@return first second at which {@code j} can be left after {@code i}; NEVER if too late} */
  private int readyAt(int i, int ready, int j, int place) {
    int arrive = ready + legs.seconds(i, j, ready);
    if (arrive > model.latestArrival(j)) {
      return NEVER;
    }
    int service = free ? model.service(j) : terms.service(i, j, place);
    return Math.max(arrive, model.earliestService(j)) + service;
  }

  private long legPrice(int i, int ready, int j) {
    int leave = Math.max(ready, model.latestArrival(j) - legs.seconds(i, j));
    return legs.price(i, j, ready, leave);
  }

  /**
   * First second at which a visit can be left that follows a set and its last visit.
   *
   * @param set visits served, as bits; none at the start
   * @param last the last of them; the number of visits at the start
   * @param ready first second at which that door can be left
   * @param j the visit to follow
   * @return the second; above the day's end where it may not follow, or not in time
   */
  int ready(int set, int last, int ready, int j) {
    return may(set, last, j) ? readyAt(last, ready, j, Integer.bitCount(set) + 1) : NEVER;
  }

  /** {@return least price of that step, where it may be made} */
  long price(int set, int last, int ready, int j) {
    return stepPrice(set, last, j) + legPrice(last, ready, j);
  }

  /** {@return least value of the rest after a set and its last visit, whose door is left then} */
  long rest(int set, int last, int ready) {
    int state = states.of(set, last);
    return ready > latest[state]
        ? DayValue.NONE
        : withEnd(rest[state], Math.max(ready, earliest[state]) + restSeconds[state], true);
  }

  /** {@return the states it knows} */
  SetStates states() {
    return states;
  }

  /**
   * Whether a day through a state may be worth less than a limit. A break may lie in the waiting
   * before, so none is counted.
   */
  boolean alive(int set, int last, long limit) {
    int state = states.of(set, last);
    return earliest[state] <= latest[state]
        && spent[state] + withEnd(rest[state], earliest[state] + restSeconds[state], true) < limit;
  }

  private static boolean mayBeSingle(int set) {
    return (set & set - 1) == 0;
  }

  /** {@return least price of the legs up to the last door of a state} */
  long spent(int set, int last) {
    return spent[states.of(set, last)];
  }

  /** {@return first second at which the last door of a state can be left} */
  int earliest(int set, int last) {
    return earliest[states.of(set, last)];
  }

  /** {@return last second at which the last door of a state can be left} */
  int latest(int set, int last) {
    return latest[states.of(set, last)];
  }

  /** {@return value of leaving out all visits that a set does not hold} */
  long leftOut(int set) {
    return leftOut[set];
  }

  /** {@return whether a day may end with a set, as far as it leaves out nobody it must not} */
  boolean mayEnd(int set) {
    return leftOut[set] < enough;
  }

  /** {@return whether a day may end with a set and a last visit} */
  boolean mayEnd(int set, int last) {
    served[0] = set;
    return leftOut[set] < enough && terms.mayEnd(served, 0, last);
  }

  private void backwards(int set, int i, boolean mayEnd) {
    int state = states.of(set, i);
    int from = earliest[state];
    int until = -1;
    long least = DayValue.NONE;
    int leastTime = NEVER;
    int to = -1;
    if (from < NEVER) {
      int home = model.latestEnd() - legs.seconds(i, model.end());
      served[0] = set;
      if (mayEnd && home >= from && terms.mayEnd(served, 0, i)) {
        until = home;
        leastTime = legs.seconds(i, model.end(), from, home);
        least = legs.price(i, model.end(), from, home) + leftOut[set] + endPrice(set, i);
      }
      for (int open = states.grows(set) ? (1 << n) - 1 & ~set : 0; open != 0; open &= open - 1) {
        int j = Integer.numberOfTrailingZeros(open);
        int next = states.of(set | 1 << j, j);
        int service = free ? model.service(j) : terms.service(i, j, Integer.bitCount(set) + 1);
        int leave = Math.min(model.latestArrival(j), latest[next] - service) - legs.seconds(i, j);
        if (leave >= from && may(set, i, j)) {
          until = Math.max(until, leave);
          int time = legs.seconds(i, j, from, leave) + service + restSeconds[next];
          leastTime = Math.min(leastTime, time);
          long through = legs.price(i, j, from, leave) + stepPrice(set, i, j) + rest[next];
          if (through < least) {
            least = through;
            to = j;
          }
        }
      }
      until = Math.min(until, model.latestLeave(i));
    }
    latest[state] = until;
    rest[state] = least;
    restSeconds[state] = leastTime;
    best[state] = (byte) to;
  }

  /** What ending with a set costs at least, besides the hour. */
  long endPrice(int set, int i) {
    served[0] = set;
    long price = terms.endPrice(served, 0, i);
    if (terms.pricesGroom()) {
      long seconds = 0;
      for (int rest = set; rest != 0; rest &= rest - 1) {
        seconds += model.service(Integer.numberOfTrailingZeros(rest));
      }
      price += terms.groomPrice(seconds);
    }
    return price;
  }

  /** Adds what the end must cost where the day cannot end before {@code end}. */
  private long withEnd(long legsToCome, int end, boolean taken) {
    boolean breakToCome = model.hasBreak() && !taken && n > 1 && end > model.breakFrom();
    return legsToCome + model.endCost(breakToCome ? end + model.breakLength() : end);
  }

  @Override
  public long after(VisitSets sets, int set, int last, boolean taken, int earliestLeave) {
    int bits = (int) sets.bits(set);
    if (!states.holds(bits)) {
      return DayValue.NONE;
    }
    int state = states.of(bits, last);
    if (earliestLeave > latest[state]) {
      return DayValue.NONE;
    }
    int leave = Math.max(earliestLeave, earliest[state]);
    boolean maybeSingle = mayBeSingle(bits);
    long found = withEnd(rest[state], leave + restSeconds[state], taken || maybeSingle);
    return count == null
        ? found
        : Math.max(found, count.after(sets, set, taken || maybeSingle, leave));
  }

  @Override
  public int latest(VisitSets sets, int set, int last) {
    int bits = (int) sets.bits(set);
    return states.holds(bits) ? latest[states.of(bits, last)] : -1;
  }

  @Override
  public long ofDay() {
    return day;
  }

  /** {@return the order that the bound follows; a good one to try} */
  int[] order() {
    int[] order = new int[n];
    int length = 0;
    int set = 0;
    for (int j = firstVisit; j >= 0; j = best[states.of(set, j)]) {
      order[length++] = j;
      set |= 1 << j;
    }
    return Arrays.copyOf(order, length);
  }
}
