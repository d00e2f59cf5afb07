package dev.dogleg.schedule;

import java.util.Arrays;

/**
 * Least cost to be ready to leave a door, as a function of the leaving time: the lower envelope of
 * runs.
 *
 * <p>A run {@code (a, b, m, c)} says: leaving at a second of {@code a..b} costs {@code c} (the
 * day's start slides along, nobody waits); leaving at a second of {@code b+1..m} costs {@code c}
 * plus waiting since {@code b}; later than {@code m} the van may not stay. Each run carries a
 * {@code trail}, by which a planner remembers whence it came.
 *
 * <p>Maintainers: costs never fall over time and rise no faster than waiting. So a run is useless
 * where another begins no later, may stay no shorter and is no dearer at {@code b}; a run's head is
 * cut where an earlier one covers it, and its tail where a later one is nowhere worse from its own
 * beginning on: what is left hardly overlaps. A run's {@code m} stays, because a break may still be
 * begun before a later run takes over. The order of runs is that of adding. Mutable, one thread.
 */
public final class RunEnvelope {
  private final long waitPrice;
  private int size;
  private int[] a = new int[4];
  private int[] b = new int[4];
  private int[] m = new int[4];
  private long[] c = new long[4];
  private int[] trail = new int[4];

  /**
   * An empty function.
   *
   * @param waitPrice price of one waited second, 0 or more
   */
  public RunEnvelope(long waitPrice) {
    this.waitPrice = waitPrice;
  }

  /** Empties it. */
  public void clear() {
    size = 0;
  }

  /** {@return number of runs} */
  public int size() {
    return size;
  }

  /**
   * First second of a run.
   *
   * @param run 0..size-1
   * @return elapsed second
   */
  public int earliest(int run) {
    return a[run];
  }

  /**
   * Last second before waiting counts.
   *
   * @param run 0..size-1
   * @return elapsed second
   */
  public int unpaidUntil(int run) {
    return b[run];
  }

  /**
   * Last second at which the door may be left.
   *
   * @param run 0..size-1
   * @return elapsed second
   */
  public int leaveBy(int run) {
    return m[run];
  }

  /**
   * Cost of a run without waiting.
   *
   * @param run 0..size-1
   * @return cost
   */
  public long cost(int run) {
    return c[run];
  }

  /**
   * Whence a run came.
   *
   * @param run 0..size-1
   * @return what was given when it was added
   */
  public int trail(int run) {
    return trail[run];
  }

  /**
   * Adds a run unless the others are nowhere worse; drops or shortens what it makes useless.
   *
   * @param earliest first second
   * @param unpaidUntil last second at this cost
   * @param leaveBy last second of staying
   * @param cost cost
   * @param from trail
   * @return whether it was added
   */
  public boolean add(int earliest, int unpaidUntil, int leaveBy, long cost, int from) {
    return addRun(earliest, waitPrice == 0 ? earliest : unpaidUntil, leaveBy, cost, from);
  }

  /** Where waiting is free a run is known by its first second. */
  private boolean addRun(int earliest, int unpaidUntil, int leaveBy, long cost, int from) {
    int first = earliest;
    for (int run = size - 1; run >= 0; run--) {
      if (a[run] <= first && m[run] >= leaveBy && c[run] <= cost) {
        int covered = coveredUntil(run, cost);
        if (covered >= unpaidUntil) {
          return false;
        }
        first = Math.max(first, covered + 1);
      }
    }
    int kept = 0;
    for (int run = 0; run < size; run++) {
      boolean useless =
          leaveBy >= m[run] && cost + waitPrice * Math.max(0, b[run] - unpaidUntil) <= c[run];
      if (useless && a[run] >= first) {
        continue;
      }
      if (kept < run) {
        copy(run, kept);
      }
      if (useless) {
        b[kept] = Math.min(b[kept], first - 1);
      }
      kept++;
    }
    size = kept;
    append(first, unpaidUntil, leaveBy, cost, from);
    return true;
  }

  /**
   * Shortens every run to the seconds from which the day can still be finished below a limit.
   *
   * @param rest what the rest of the day costs at least
   * @param limit a whole cost of this or more is useless
   */
  public void clip(CostFloor rest, long limit) {
    int kept = 0;
    for (int run = 0; run < size; run++) {
      int first = rest.firstBelow(a[run], b[run], limit - c[run]);
      if (first <= b[run]) {
        int last = rest.lastBelow(first, b[run], limit - c[run]);
        copy(run, kept);
        a[kept] = first;
        b[kept] = last;
        kept++;
      }
    }
    size = kept;
  }

  /**
   * Keeps only the cheapest runs.
   *
   * @param most how many, 1 or more
   */
  public void keepCheapest(int most) {
    while (size > most) {
      int dearest = 0;
      for (int run = 1; run < size; run++) {
        if (c[run] > c[dearest]) {
          dearest = run;
        }
      }
      copy(size - 1, dearest);
      size--;
    }
  }

  /**
   * Whether a run of another function is nowhere better than one of this.
   *
   * @param other the other function
   * @param run one of its runs
   * @return whether it can be dropped for it
   */
  public boolean covers(RunEnvelope other, int run) {
    for (int mine = 0; mine < size; mine++) {
      if (a[mine] <= other.a[run]
          && m[mine] >= other.m[run]
          && c[mine] <= other.c[run]
          && coveredUntil(mine, other.c[run]) >= other.b[run]) {
        return true;
      }
    }
    return false;
  }

  /** Last second until which a run that costs no more than {@code cost} still does so. */
  private int coveredUntil(int run, long cost) {
    if (waitPrice == 0) {
      return Integer.MAX_VALUE;
    }
    return (int) Math.min(Integer.MAX_VALUE, b[run] + (cost - c[run]) / waitPrice);
  }

  private void append(int earliest, int unpaidUntil, int leaveBy, long cost, int from) {
    if (size == a.length) {
      int room = size * 2;
      a = Arrays.copyOf(a, room);
      b = Arrays.copyOf(b, room);
      m = Arrays.copyOf(m, room);
      c = Arrays.copyOf(c, room);
      trail = Arrays.copyOf(trail, room);
    }
    a[size] = earliest;
    b[size] = unpaidUntil;
    m[size] = leaveBy;
    c[size] = cost;
    trail[size] = from;
    size++;
  }

  private void copy(int source, int target) {
    a[target] = a[source];
    b[target] = b[source];
    m[target] = m[source];
    c[target] = c[source];
    trail[target] = trail[source];
  }
}
