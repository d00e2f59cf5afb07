package dev.dogleg.plan;

import dev.dogleg.schedule.DayModel;

/**
 * Least relaxed ends of a day for every door and number of visits to come.
 *
 * <p>Maintainers: backwards from the end place. A path may come back to a visit once it has been
 * away among doors that do not remember it (ng-paths; Baldacci, Mingozzi, Roberti 2011 and 2012);
 * every visit is rewarded by its multiplier. Time is kept as the latest second of leaving. Waiting,
 * break and the price of the end are not counted, so it is a bound.
 */
final class NgTable {
  private final DayModel day;
  private final LeastLegs legs;
  private final long[] near;
  private final long[] reward;
  private final int n;
  private final NgLabels[][] ends;
  private final int[] ready;
  private long steps;
  private long best = DayValue.NONE;
  private int bestVisit = -1;
  private int bestLabel = -1;
  private int bestCount;

  NgTable(
      DayModel day,
      LeastLegs legs,
      long[] near,
      long[] reward,
      int[] ready,
      int fewest,
      long most) {
    this.day = day;
    this.legs = legs;
    this.near = near;
    this.reward = reward;
    this.ready = ready;
    n = day.size();
    ends = new NgLabels[n][n];
    for (int i = 0; i < n; i++) {
      ends[0][i] = new NgLabels();
      int leave = Math.min(day.latestLeave(i), day.latestEnd() - legs.seconds(i, day.end()));
      if (leave >= ready[i]) {
        long cost = legs.price(i, day.end(), ready[i], leave);
        ends[0][i].add(cost, leave, 0, -1, -1);
      }
    }
    for (int count = 1; count < n && steps < most; count++) {
      for (int i = 0; i < n; i++) {
        ends[count][i] = new NgLabels();
      }
      for (int j = 0; j < n; j++) {
        grow(ends[count - 1][j], count, j);
      }
    }
    for (int count = 0; count < n && steps < most; count++) {
      for (int i = 0; i < n; i++) {
        if (count + 1 >= fewest) {
          start(count, i);
        }
      }
    }
  }

  private void grow(NgLabels from, int count, int j) {
    from.seal();
    steps += (long) from.size * n;
    for (int label = 0; label < from.size; label++) {
      long with = from.memory[label] | 1L << j;
      int arrive = Math.min(day.latestArrival(j), from.latest[label] - day.service(j));
      for (int i = 0; i < n; i++) {
        if ((with >>> i & 1) == 0) {
          int leave = Math.min(day.latestLeave(i), arrive - legs.seconds(i, j));
          if (leave >= ready[i]) {
            long cost = from.cost[label] + legs.price(i, j, ready[i], leave) - reward[j];
            ends[count][i].add(cost, leave, with & near[i], j, label);
          }
        }
      }
    }
  }

  private void start(int count, int i) {
    NgLabels labels = ends[count][i];
    if (count == n - 1) {
      labels.seal();
    }
    for (int label = 0; label < labels.size; label++) {
      int arrive = Math.min(day.latestArrival(i), labels.latest[label] - day.service(i));
      int leave = arrive - legs.seconds(day.start(), i);
      if (leave >= day.from()) {
        long cost = labels.cost[label] + legs.price(day.start(), i, day.from(), leave) - reward[i];
        if (cost < best) {
          best = cost;
          bestVisit = i;
          bestLabel = label;
          bestCount = count;
        }
      }
    }
  }

  /** {@return relaxed ends with a number of visits to come after a door} */
  NgLabels ends(int visitsToCome, int door) {
    return ends[visitsToCome][door];
  }

  /** {@return least value of a whole relaxed day, rewards taken} */
  long best() {
    return best;
  }

  /** {@return visits of that relaxed day in order, perhaps some twice} */
  int[] bestPath() {
    if (bestVisit < 0) {
      return new int[0];
    }
    int[] path = new int[bestCount + 1];
    int visit = bestVisit;
    int label = bestLabel;
    for (int k = 0; k <= bestCount; k++) {
      path[k] = visit;
      NgLabels labels = ends[bestCount - k][visit];
      visit = labels.nextVisit[label];
      label = labels.nextLabel[label];
    }
    return path;
  }

  /** {@return labels made, times the doors tried from each} */
  long steps() {
    return steps;
  }
}
