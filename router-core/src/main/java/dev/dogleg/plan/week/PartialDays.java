package dev.dogleg.plan.week;

/**
 * A few partial days that end at one door: each is a stretch {@code a..b} of seconds at which the
 * door may be left, its cost at both ends, straight in between, later for the waiting.
 *
 * <p>Maintainers: what {@code docs/TIMING.md} calls runs, thinned: the straight line stands for the
 * many runs of a start that slides through changing traffic. Where there is no more room the
 * dearest goes. One thread.
 */
final class PartialDays {
  private static final int MOST = 16;

  private final long waited;
  private int size;
  final int[] a = new int[MOST];
  final int[] b = new int[MOST];
  final long[] costA = new long[MOST];
  final long[] costB = new long[MOST];
  final boolean[] taken = new boolean[MOST];
  final int[] fresh = new int[MOST];
  final int[] grey = new int[MOST];
  final int[] fillings = new int[MOST];

  /** None yet; a waiting second costs so many sixtieths. */
  PartialDays(long waited) {
    this.waited = waited;
  }

  int size() {
    return size;
  }

  void clear() {
    size = 0;
  }

  /** {@return the least cost of all; NEVER where there is none} */
  long least() {
    long least = RelaxedDay.NEVER;
    for (int k = 0; k < size; k++) {
      least = Math.min(least, Math.min(costA[k], costB[k]));
    }
    return least;
  }

  /** {@return the earliest leaving of all; late where there is none} */
  int earliest() {
    int earliest = Integer.MAX_VALUE / 4;
    for (int k = 0; k < size; k++) {
      earliest = Math.min(earliest, a[k]);
    }
    return earliest;
  }

  /** {@return cost of leaving at a time, not before {@code a}} */
  long at(int k, int time) {
    return at(a[k], costA[k], b[k], costB[k], time, waited);
  }

  /** {@return cost at a time of a stretch} */
  static long at(int a, long costA, int b, long costB, int time, long waited) {
    if (time >= b) {
      return costB + waited * (time - b);
    }
    return time <= a ? costA : costA + (costB - costA) * (time - a) / (b - a);
  }

  /** Adds a partial day, if no other is as good; those that it is as good as go. */
  void add(
      int newA,
      long newCostA,
      int newB,
      long newCostB,
      boolean newTaken,
      int newFresh,
      int newGrey,
      int newFillings) {
    long endCost = Math.min(newCostB, newCostA + waited * (newB - newA));
    for (int k = 0; k < size; k++) {
      if ((taken[k] || !newTaken)
          && a[k] <= newA
          && fresh[k] <= newFresh
          && grey[k] <= newGrey
          && fillings[k] <= newFillings
          && at(k, newA) <= newCostA
          && at(k, newB) <= endCost) {
        return;
      }
    }
    for (int k = size - 1; k >= 0; k--) {
      if ((newTaken || !taken[k])
          && newA <= a[k]
          && newFresh <= fresh[k]
          && newGrey <= grey[k]
          && newFillings <= fillings[k]
          && at(newA, newCostA, newB, endCost, a[k], waited) <= costA[k]
          && at(newA, newCostA, newB, endCost, b[k], waited) <= costB[k]) {
        size--;
        move(size, k);
      }
    }
    int place = size;
    if (size < MOST) {
      size++;
    } else {
      place = dearest();
      if (costA[place] <= newCostA) {
        return;
      }
    }
    a[place] = newA;
    b[place] = newB;
    costA[place] = newCostA;
    costB[place] = endCost;
    taken[place] = newTaken;
    fresh[place] = newFresh;
    grey[place] = newGrey;
    fillings[place] = newFillings;
  }

  private void move(int from, int to) {
    a[to] = a[from];
    b[to] = b[from];
    costA[to] = costA[from];
    costB[to] = costB[from];
    taken[to] = taken[from];
    fresh[to] = fresh[from];
    grey[to] = grey[from];
    fillings[to] = fillings[from];
  }

  private int dearest() {
    int dearest = 0;
    for (int k = 1; k < size; k++) {
      if (costA[k] > costA[dearest]) {
        dearest = k;
      }
    }
    return dearest;
  }
}
