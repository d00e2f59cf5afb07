package dev.dogleg.plan.week;

import java.util.Arrays;

/**
 * What an order of visits costs on the relaxed day: a quick guess for a search, a bound for just
 * this order. One thread.
 */
final class RelaxedOrder implements RelaxedDay.RunSink {
  private final VanKind kind;
  private final RelaxedDay day;
  private final SetRules rules;
  private long below;
  private int size;
  private int[] a = new int[32];
  private int[] b = new int[32];
  private long[] c = new long[32];
  private boolean[] taken = new boolean[32];
  private int nextSize;
  private int[] nextA = new int[32];
  private int[] nextB = new int[32];
  private long[] nextC = new long[32];
  private boolean[] nextTaken = new boolean[32];

  RelaxedOrder(VanKind kind) {
    this.kind = kind;
    day = kind.relaxed();
    rules = new SetRules(kind);
  }

  /**
   * Cost of an order, extra prices and set rules included.
   *
   * @param order local numbers
   * @param limit a cost of this or more is of no interest
   * @return the cost; {@link RelaxedDay#NEVER} where it is not possible or not below the limit
   */
  long of(int[] order, long limit) {
    long extra = 0;
    for (int local : order) {
      extra += kind.extraSixtieths(local);
    }
    if (rules.never(order) || rules.incomplete(order)) {
      return RelaxedDay.NEVER;
    }
    extra += rules.price(order);
    below = limit - extra;
    size = 1;
    a[0] = day.from;
    b[0] = day.latestEnd;
    c[0] = 0;
    taken[0] = false;
    int i = day.start();
    for (int k = 0; k < order.length; k++) {
      int j = order[k];
      if ((k > 0 && day.first[j]) || day.legs.spanEnds(i, j) == null) {
        return RelaxedDay.NEVER;
      }
      nextSize = 0;
      for (int run = 0; run < size; run++) {
        if (!day.tooLate(i, a[run], j)) {
          day.step(i, a[run], b[run], c[run], taken[run], j, this);
        }
      }
      if (nextSize == 0) {
        return RelaxedDay.NEVER;
      }
      swap();
      i = j;
    }
    long least = RelaxedDay.NEVER;
    for (int run = 0; run < size; run++) {
      least = Math.min(least, day.end(i, a[run], b[run], c[run], taken[run], order.length == 1));
    }
    return least < below ? least + extra : RelaxedDay.NEVER;
  }

  @Override
  public void run(int runA, int runB, long runC, boolean runTaken) {
    if (runC >= below) {
      return;
    }
    for (int k = 0; k < nextSize; k++) {
      if ((nextTaken[k] || !runTaken)
          && day.covers(nextA[k], nextB[k], nextC[k], runA, runB, runC)) {
        return;
      }
    }
    if (nextSize == nextA.length) {
      nextA = Arrays.copyOf(nextA, 2 * nextSize);
      nextB = Arrays.copyOf(nextB, 2 * nextSize);
      nextC = Arrays.copyOf(nextC, 2 * nextSize);
      nextTaken = Arrays.copyOf(nextTaken, 2 * nextSize);
    }
    nextA[nextSize] = runA;
    nextB[nextSize] = runB;
    nextC[nextSize] = runC;
    nextTaken[nextSize++] = runTaken;
  }

  private void swap() {
    int[] oldA = a;
    int[] oldB = b;
    long[] oldC = c;
    boolean[] oldTaken = taken;
    a = nextA;
    b = nextB;
    c = nextC;
    taken = nextTaken;
    size = nextSize;
    nextA = oldA;
    nextB = oldB;
    nextC = oldC;
    nextTaken = oldTaken;
  }
}
