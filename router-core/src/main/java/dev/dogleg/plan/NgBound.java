package dev.dogleg.plan;

import dev.dogleg.schedule.DayModel;
import java.util.Arrays;

/**
 * Bound for days of many visits that serve every booked one: relaxed ends of days, tuned.
 *
 * <p>Maintainers: {@link NgTable} with rewards found by subgradient steps (a visit met twice pays
 * less, one missed pays more; a waiting-list visit never more than its price), then with memories
 * widened along the cycles of the best relaxed day (dynamic ng: Roberti and Mingozzi 2014; Tilk and
 * Irnich 2017). A partial day's bound is the cheapest relaxed end that may still be left in time
 * and remembers none of the visits already served (Baldacci, Mingozzi, Roberti 2012).
 */
final class NgBound implements CompletionBound {
  /** Most visits: a memory is one {@code long}. */
  static final int MOST = 64;

  private static final int FIRST_MEMORY = 3;
  private static final int MOST_MEMORY = 13;
  private static final int FIRST_TUNINGS = 8;
  private static final int TUNINGS = 50;
  private static final int WIDENINGS = 40;

  private final DayModel day;
  private final LeastLegs legs;
  private final DayValue value;
  private final WorkMeter meter;
  private final int n;
  private final int[] ready;
  private final int[][] closed;
  private final int booked;
  private final int[] nearestIn;
  private final int leastHome;
  private final long all;
  private final long tableSteps;
  private long[] near;
  private long[] reward;
  private NgTable table;
  private long bound;

  NgBound(
      DayModel day, LeastLegs legs, DayValue value, long upper, WorkMeter meter, long tableSteps) {
    this.day = day;
    this.legs = legs;
    this.value = value;
    this.meter = meter;
    this.tableSteps = tableSteps;
    n = day.size();
    ready = new int[n];
    near = new long[n];
    reward = new long[n];
    closed = closure();
    int count = 0;
    for (int i = 0; i < n; i++) {
      ready[i] =
          Math.max(day.earliestService(i), day.from() + closed[day.start()][i]) + day.service(i);
      near[i] = nearest(i, FIRST_MEMORY);
      count += day.visit(i).booked() ? 1 : 0;
    }
    booked = count;
    all = n == Long.SIZE ? -1L : (1L << n) - 1;
    nearestIn = new int[n];
    int home = LeastLegs.NO_ROAD;
    for (int j = 0; j < n; j++) {
      nearestIn[j] = LeastLegs.NO_ROAD;
      for (int i = 0; i < n; i++) {
        nearestIn[j] = Math.min(nearestIn[j], legs.seconds(i, j));
      }
      home = Math.min(home, legs.seconds(j, day.end()));
    }
    leastHome = home;
    for (int j = 0; j < n; j++) {
      reward[j] = firstReward(j);
    }
    table = build(near, reward, Long.MAX_VALUE);
    bound = total(table, reward);
    tune(upper, FIRST_TUNINGS);
  }

  /** Tunes on and widens memories: worth it only where a search with the bound as it is fails. */
  void sharpen(long upper) {
    tune(upper, TUNINGS);
    for (int round = 0; round < WIDENINGS && bound < upper && !meter.spent() && widen(); round++) {
      if (round % 4 == 3) {
        tune(upper, 4);
      }
    }
  }

  private NgTable build(long[] memories, long[] rewards, long most) {
    NgTable made =
        new NgTable(day, legs, memories.clone(), rewards.clone(), ready, Math.max(1, booked), most);
    meter.count(made.steps() / 16);
    return made;
  }

  private static long total(NgTable made, long[] rewards) {
    return Math.min(DayValue.NONE, made.best() + Arrays.stream(rewards).sum());
  }

  private void tune(long upper, int rounds) {
    if (bound >= DayValue.BOOKED) {
      return;
    }
    double scale = 1.0;
    long[] at = reward.clone();
    NgTable here = table;
    for (int round = 0; round < rounds && bound < upper && !meter.spent(); round++) {
      int[] seen = new int[n];
      for (int visit : here.bestPath()) {
        seen[visit]++;
      }
      long norm = 0;
      for (int i = 0; i < n; i++) {
        norm += (long) (seen[i] - 1) * (seen[i] - 1);
      }
      if (norm == 0) {
        return;
      }
      long now = total(here, at);
      long known = upper < DayValue.BOOKED ? upper : bound + bound / 5;
      long aim = Math.max(known, bound + bound / 500 + 1);
      double step = scale * (aim - now) / norm;
      for (int i = 0; i < n; i++) {
        at[i] += Math.round(step * (1 - seen[i]));
        if (!day.visit(i).booked()) {
          at[i] = Math.min(at[i], value.leftOut(i));
        }
      }
      here = build(near, at, Long.MAX_VALUE);
      long found = total(here, at);
      if (found > bound && found < DayValue.BOOKED) {
        bound = found;
        reward = at.clone();
        table = here;
      } else {
        scale *= 0.9;
      }
    }
  }

  /** Lets the doors of each cycle of the best relaxed day remember what it repeats. */
  private boolean widen() {
    int[] path = table.bestPath();
    boolean wider = false;
    long[] wide = near.clone();
    for (int k = 0; k < path.length; k++) {
      for (int back = k - 1; back >= 0; back--) {
        if (path[back] == path[k]) {
          for (int at = back + 1; at < k; at++) {
            if (Long.bitCount(wide[path[at]]) < MOST_MEMORY) {
              wide[path[at]] |= 1L << path[k];
              wider = true;
            }
          }
          break;
        }
      }
    }
    if (!wider) {
      return false;
    }
    NgTable made = build(wide, reward, tableSteps);
    if (made.steps() >= tableSteps) {
      return false;
    }
    near = wide;
    table = made;
    bound = Math.max(bound, total(made, reward));
    return true;
  }

  /** Mean of the two cheapest legs to a door and the two cheapest from it. */
  private long firstReward(int j) {
    long[] least = {DayValue.NONE, DayValue.NONE, DayValue.NONE, DayValue.NONE};
    for (int i = 0; i < n; i++) {
      long in = Math.min(DayValue.NONE, legs.price(i, j));
      long out = Math.min(DayValue.NONE, legs.price(j, i));
      least[1] = Math.min(least[1], Math.max(least[0], in));
      least[0] = Math.min(least[0], in);
      least[3] = Math.min(least[3], Math.max(least[2], out));
      least[2] = Math.min(least[2], out);
    }
    long sum = 0;
    for (long each : least) {
      sum += Math.min(each, DayValue.BOOKED / 1024) / 4;
    }
    return day.visit(j).booked() ? sum : Math.min(sum, value.leftOut(j));
  }

  private long nearest(int i, int count) {
    long set = 1L << i;
    while (Long.bitCount(set) < Math.min(n, count)) {
      int best = -1;
      for (int j = 0; j < n; j++) {
        if ((set >>> j & 1) == 0 && (best < 0 || legs.seconds(i, j) + 0L < legs.seconds(i, best))) {
          best = j;
        }
      }
      set |= 1L << best;
    }
    return set;
  }

  /** Least seconds from door to door over any doors between, services between included. */
  private int[][] closure() {
    int[][] least = new int[n + 1][n];
    for (int i = 0; i <= n; i++) {
      for (int j = 0; j < n; j++) {
        least[i][j] = i == j ? 0 : legs.seconds(i, j);
      }
    }
    for (int k = 0; k < n; k++) {
      for (int i = 0; i <= n; i++) {
        for (int j = 0; j < n; j++) {
          least[i][j] = Math.min(least[i][j], least[i][k] + day.service(k) + least[k][j]);
        }
      }
    }
    return least;
  }

  @Override
  public long after(VisitSets sets, int set, int last, boolean taken, int earliest) {
    long bits = sets.bits(set);
    int unserved = 0;
    int unservedBooked = 0;
    long rewards = 0;
    for (int j = 0; j < n; j++) {
      if ((bits >>> j & 1) == 0) {
        unserved++;
        rewards += reward[j];
        if (day.visit(j).booked()) {
          unservedBooked++;
          if (earliest + closed[last][j] > day.latestArrival(j)) {
            return DayValue.NONE;
          }
        }
      }
    }
    long least = DayValue.NONE;
    for (int count = unservedBooked; count <= unserved; count++) {
      NgLabels ends = table.ends(count, last);
      for (int label = 0; label < ends.size && ends.cost[label] < least; label++) {
        if (ends.latest[label] >= earliest && (ends.memory[label] & bits) == 0) {
          least = ends.cost[label];
          break;
        }
      }
    }
    return least >= DayValue.NONE
        ? DayValue.NONE
        : least
            + rewards
            + day.endCost(Math.min(earliestEnd(bits, last, earliest), day.latestEnd()));
  }

  /** No day ends earlier that still serves the booked visits not served yet. */
  private int earliestEnd(long bits, int last, int earliest) {
    int end = earliest + (bits == all ? legs.seconds(last, day.end()) : leastHome);
    int busy = end;
    for (int j = 0; j < n; j++) {
      if ((bits >>> j & 1) == 0 && day.visit(j).booked()) {
        int arrive = Math.max(earliest + closed[last][j], day.earliestService(j));
        end = Math.max(end, arrive + day.service(j) + leastHome);
        busy += day.service(j) + nearestIn[j];
      }
    }
    return Math.max(end, busy);
  }

  @Override
  public int latest(VisitSets sets, int set, int last) {
    return day.latestEnd();
  }

  @Override
  public long ofDay() {
    return bound;
  }
}
