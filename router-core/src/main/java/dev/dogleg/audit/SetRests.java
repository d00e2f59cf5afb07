package dev.dogleg.audit;

import dev.dogleg.itinerary.BreakRule;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.DayShift;
import java.util.Arrays;

/**
 * Of the days that serve one set: what is to come at least after each part of it, the way home
 * included, by {@link LeastDay} and by when each leg can begin in such a day.
 *
 * <p>A part is the visits made, bit k for the k-th of the set, and the last of them. Numbers that
 * are told of a part that no day has are {@link LeastDay#NONE}.
 */
final class SetRests {
  private final DayRequest request;
  private final DayShift shift;
  private final LeastDay day;
  private final int[] visits;
  private final int n;
  private final boolean water;
  private final int[] early;
  private final int[] rested;
  private final int[] seconds;
  private final int[] costs;

  /**
   * Bounds.
   *
   * @param request the van-day
   * @param day its least legs and services
   * @param visits numbers of the visits of the set, 1 to 16
   */
  SetRests(DayRequest request, LeastDay day, int[] visits) {
    this.request = request;
    this.day = day;
    this.visits = visits;
    shift = request.shift();
    n = visits.length;
    water = request.terms().water().filter(w -> w.most() > 0).isPresent();
    int parts = n * (1 << n);
    early = new int[parts];
    rested = new int[parts];
    seconds = new int[parts];
    costs = new int[parts];
    Arrays.fill(early, LeastDay.NONE);
    Arrays.fill(rested, LeastDay.NONE);
    Arrays.fill(seconds, LeastDay.NONE);
    Arrays.fill(costs, LeastDay.NONE);
    for (int made = 1; made < 1 << n; made++) {
      for (int rest = made; rest != 0; rest &= rest - 1) {
        early(made, Integer.numberOfTrailingZeros(rest));
      }
    }
    for (int made = (1 << n) - 1; made > 0; made--) {
      for (int rest = made; rest != 0; rest &= rest - 1) {
        int last = Integer.numberOfTrailingZeros(rest);
        if (early[made * n + last] < LeastDay.NONE) {
          rest(made, last);
        }
      }
    }
  }

  private void early(int made, int last) {
    int before = made & ~(1 << last);
    long arrive = LeastDay.NONE;
    long arriveRested = LeastDay.NONE;
    if (before == 0) {
      arrive = (long) shift.hours().fromSeconds() + day.seconds(day.start(), visits[last]);
    } else if (!request.visits().get(visits[last]).first()) {
      for (int rest = before; rest != 0; rest &= rest - 1) {
        int previous = Integer.numberOfTrailingZeros(rest);
        int leg = day.seconds(visits[previous], visits[last]);
        arrive = Math.min(arrive, (long) early[before * n + previous] + leg);
        arriveRested = Math.min(arriveRested, (long) rested[before * n + previous] + leg);
      }
    }
    if (arrive < LeastDay.NONE) {
      int here = made * n + last;
      early[here] = day.ready(visits[last], arrive);
      int byNow = day.ready(visits[last], arriveRested);
      rested[here] = Math.min(byNow, day.readyRested(visits[last], arrive));
    }
  }

  private void rest(int made, int last) {
    int here = made * n + last;
    if (made == (1 << n) - 1) {
      int end = day.ends(visits[last], early[here], rested[here], n);
      if (end < LeastDay.NONE) {
        int latest = shift.latestEndSeconds() - day.seconds(visits[last], day.end());
        int least = least(visits[last], day.end(), early[here], latest);
        seconds[here] = Math.max(day.seconds(visits[last], day.end()), least);
        long cost = cost(visits[last], day.end(), least) + day.priceOfEnd(end);
        costs[here] = (int) Math.min(LeastDay.NONE - 1, cost);
      }
      return;
    }
    for (int k = 0; k < n; k++) {
      int then = (made | 1 << k) * n + k;
      if ((made >> k & 1) == 0 && seconds[then] < LeastDay.NONE) {
        long rest = (long) seconds[then] + day.service(visits[k]);
        long latest = shift.latestEndSeconds() - rest - day.seconds(visits[last], visits[k]);
        if (early[here] <= latest) {
          int least = least(visits[last], visits[k], early[here], (int) latest);
          rest += Math.max(day.seconds(visits[last], visits[k]), least);
          seconds[here] = (int) Math.min(seconds[here], rest);
          long cost = cost(visits[last], visits[k], least) + costs[then];
          costs[here] = (int) Math.min(costs[here], Math.min(LeastDay.NONE - 1, cost));
        }
      }
    }
  }

  /** Least seconds of a drive begun within a span; 0 where others than direct ones may be. */
  private int least(int a, int b, int earliest, int latest) {
    int from = place(a);
    int to = place(b);
    return water || !request.travel().reaches(from, to)
        ? 0
        : request.travel().leastDriveSeconds(from, to, earliest, latest);
  }

  private int place(int end) {
    if (end < day.visits()) {
      return request.visits().get(end).place();
    }
    return end == day.start() ? shift.startPlace() : shift.endPlace();
  }

  private long cost(int a, int b, int least) {
    return least == 0
        ? day.cost(a, b)
        : Math.max(day.cost(a, b), DaySeconds.driven(least) + day.metres(place(a), place(b)));
  }

  /** {@return least cost of a day of the set, served seconds not priced} */
  long whole() {
    long whole = DaySeconds.NEVER;
    for (int k = 0; k < n; k++) {
      int then = (1 << k) * n + k;
      if (seconds[then] < LeastDay.NONE) {
        int from = shift.hours().fromSeconds();
        int leg = day.seconds(day.start(), visits[k]);
        long latest =
            (long) shift.latestEndSeconds() - seconds[then] - day.service(visits[k]) - leg;
        if (from <= latest) {
          int least = least(day.start(), visits[k], from, (int) latest);
          whole = Math.min(whole, cost(day.start(), visits[k], least) + costs[then]);
        }
      }
    }
    return whole;
  }

  /** {@return least cost that is to come} */
  int cost(int made, int last) {
    return costs[made * n + last];
  }

  /** {@return the last second of the day at which the last door may be left, maybe negative} */
  long latest(int made, int last) {
    return (long) shift.latestEndSeconds() - seconds[made * n + last];
  }

  /** {@return the same where the break was not taken, and may be needed} */
  long latestOpen(int made, int last) {
    BreakRule rule = shift.breakRule().orElse(null);
    long latest = latest(made, last);
    if (rule == null || n < 2) {
      return latest;
    }
    long unneeded = (long) rule.startWithin().fromSeconds() - seconds[made * n + last];
    long taken = Math.min(rule.startWithin().toSeconds(), latest - rule.lengthSeconds());
    return Math.min(latest, Math.max(unneeded, taken));
  }
}
