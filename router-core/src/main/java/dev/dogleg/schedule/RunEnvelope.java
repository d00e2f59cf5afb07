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
 * <p>Maintainers: a run is dropped where another is nowhere worse: it begins no later, may stay no
 * shorter and is no dearer at {@code b} (its cost never falls over time and rises no faster than
 * waiting, so then it is no dearer anywhere). Runs stay in the order of {@code a}. Mutable, one
 * thread.
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
   * Adds a run unless another is nowhere worse; drops those to which it is nowhere worse.
   *
   * @param earliest first second
   * @param unpaidUntil last second at this cost
   * @param leaveBy last second of staying
   * @param cost cost
   * @param from trail
   * @return whether it was added
   */
  public boolean add(int earliest, int unpaidUntil, int leaveBy, long cost, int from) {
    int at = 0;
    for (; at < size && a[at] <= earliest; at++) {
      if (m[at] >= leaveBy && c[at] + waitPrice * Math.max(0, unpaidUntil - b[at]) <= cost) {
        return false;
      }
    }
    while (at > 0 && a[at - 1] == earliest) {
      at--;
    }
    int kept = at;
    for (int run = at; run < size; run++) {
      if (leaveBy < m[run] || cost + waitPrice * Math.max(0, b[run] - unpaidUntil) > c[run]) {
        copy(run, kept++);
      }
    }
    size = kept;
    insert(at, earliest, unpaidUntil, leaveBy, cost, from);
    return true;
  }

  private void insert(int at, int earliest, int unpaidUntil, int leaveBy, long cost, int from) {
    if (size == a.length) {
      int room = size * 2;
      a = Arrays.copyOf(a, room);
      b = Arrays.copyOf(b, room);
      m = Arrays.copyOf(m, room);
      c = Arrays.copyOf(c, room);
      trail = Arrays.copyOf(trail, room);
    }
    for (int run = size; run > at; run--) {
      copy(run - 1, run);
    }
    size++;
    a[at] = earliest;
    b[at] = unpaidUntil;
    m[at] = leaveBy;
    c[at] = cost;
    trail[at] = from;
  }

  private void copy(int source, int target) {
    a[target] = a[source];
    b[target] = b[source];
    m[target] = m[source];
    c[target] = c[source];
    trail[target] = trail[source];
  }
}
