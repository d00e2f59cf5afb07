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

  /** Adds a partial day, if no other is as good. */
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
    int place = size < MOST ? size++ : dearest();
    a[place] = newA;
    b[place] = newB;
    costA[place] = newCostA;
    costB[place] = endCost;
    taken[place] = newTaken;
    fresh[place] = newFresh;
    grey[place] = newGrey;
    fillings[place] = newFillings;
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
