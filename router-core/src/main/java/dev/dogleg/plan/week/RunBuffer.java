package dev.dogleg.plan.week;

import java.util.Arrays;

/**
 * The runs of one set and last visit while they are found: none that another is nowhere above.
 *
 * <p>A run {@code (a, b, c)} costs {@code c} for leaving at a second of {@code a..b}, later {@code
 * waited} more a second. With tanks it says how much was used since they were last full and empty,
 * and how many water stops were made. Where there would be too many runs two become one that is
 * nowhere above either: a bound stays a bound. Mutable, one thread.
 */
final class RunBuffer {
  /** Runs kept that are alike in break and tanks. */
  private static final int MOST_ALIKE = 8;

  /** Runs kept in all. */
  private static final int MOST = 48;

  private final long waited;
  private final boolean tanks;
  int size;
  int[] a = new int[16];
  int[] b = new int[16];
  long[] c = new long[16];
  boolean[] taken = new boolean[16];
  int[] fresh;
  int[] grey;
  int[] stops;

  /**
   * An empty one.
   *
   * @param waited price of a second of waiting
   * @param tanks whether water counts
   */
  RunBuffer(long waited, boolean tanks) {
    this.waited = waited;
    this.tanks = tanks;
    int room = tanks ? 16 : 0;
    fresh = new int[room];
    grey = new int[room];
    stops = new int[room];
  }

  void clear() {
    size = 0;
  }

  /** Adds a run unless another is nowhere above it; drops those that it makes useless. */
  void add(int runA, int runB, long runC, boolean runTaken, int usedFresh, int usedGrey, int made) {
    int[] as = a;
    int[] bs = b;
    long[] cs = c;
    int count = size;
    int same = 0;
    boolean any = false;
    for (int k = 0; k < count; k++) {
      if (as[k] <= runA && cs[k] <= runC) {
        if ((taken[k] || !runTaken)
            && cs[k] + waited * Math.max(0, runB - bs[k]) <= runC
            && (!tanks || (fresh[k] <= usedFresh && grey[k] <= usedGrey && stops[k] <= made))) {
          return;
        }
      } else {
        any |= runA <= as[k] && runC <= cs[k];
      }
      same += alike(k, runTaken, usedFresh, usedGrey, made) ? 1 : 0;
    }
    if (any) {
      same -= drop(runA, runB, runC, runTaken, usedFresh, usedGrey, made);
    }
    if ((same >= MOST_ALIKE || size >= MOST)
        && merge(runA, runB, runC, runTaken, usedFresh, usedGrey, made)) {
      return;
    }
    append(runA, runB, runC, runTaken, usedFresh, usedGrey, made);
  }

  private boolean alike(int k, boolean runTaken, int usedFresh, int usedGrey, int made) {
    return taken[k] == runTaken
        && (!tanks || (fresh[k] == usedFresh && grey[k] == usedGrey && stops[k] == made));
  }

  /** Drops what a run makes useless; how many alike in break and tanks there were. */
  private int drop(
      int runA, int runB, long runC, boolean runTaken, int usedFresh, int usedGrey, int made) {
    int kept = 0;
    int alike = 0;
    for (int k = 0; k < size; k++) {
      boolean useless =
          runA <= a[k]
              && runC <= c[k]
              && (runTaken || !taken[k])
              && runC + waited * Math.max(0, b[k] - runB) <= c[k]
              && (!tanks || (usedFresh <= fresh[k] && usedGrey <= grey[k] && made <= stops[k]));
      if (useless) {
        alike += alike(k, runTaken, usedFresh, usedGrey, made) ? 1 : 0;
      } else {
        if (kept < k) {
          copy(k, kept);
        }
        kept++;
      }
    }
    size = kept;
    return alike;
  }

  /** Drops the runs that are not to be gone on with. */
  void keep(SetSweep.Keep keep) {
    int kept = 0;
    for (int k = 0; k < size; k++) {
      int left = tanks ? keep.left(fresh[k], grey[k]) : 0;
      if (keep.keep(a[k], c[k], taken[k], left)) {
        if (kept < k) {
          copy(k, kept);
        }
        kept++;
      }
    }
    size = kept;
  }

  /** Lets the run that loses least take a further one in. */
  private boolean merge(
      int runA, int runB, long runC, boolean runTaken, int usedFresh, int usedGrey, int made) {
    int alike = -1;
    long least = Long.MAX_VALUE;
    for (int k = 0; k < size; k++) {
      if (taken[k] == runTaken) {
        long loss =
            Math.abs(c[k] - runC)
                + waited * ((long) Math.abs(b[k] - runB) + Math.abs(a[k] - runA))
                + (tanks && stops[k] != made ? 1L << 40 : 0)
                + (tanks ? (long) Math.abs(fresh[k] - usedFresh) << 20 : 0);
        if (loss < least) {
          least = loss;
          alike = k;
        }
      }
    }
    if (alike < 0) {
      return false;
    }
    a[alike] = Math.min(a[alike], runA);
    b[alike] = Math.max(b[alike], runB);
    c[alike] = Math.min(c[alike], runC);
    if (tanks) {
      fresh[alike] = Math.min(fresh[alike], usedFresh);
      grey[alike] = Math.min(grey[alike], usedGrey);
      stops[alike] = Math.min(stops[alike], made);
    }
    return true;
  }

  private void append(
      int runA, int runB, long runC, boolean runTaken, int usedFresh, int usedGrey, int made) {
    if (size == a.length) {
      int room = 2 * size;
      a = Arrays.copyOf(a, room);
      b = Arrays.copyOf(b, room);
      c = Arrays.copyOf(c, room);
      taken = Arrays.copyOf(taken, room);
      if (tanks) {
        fresh = Arrays.copyOf(fresh, room);
        grey = Arrays.copyOf(grey, room);
        stops = Arrays.copyOf(stops, room);
      }
    }
    a[size] = runA;
    b[size] = runB;
    c[size] = runC;
    taken[size] = runTaken;
    if (tanks) {
      fresh[size] = usedFresh;
      grey[size] = usedGrey;
      stops[size] = made;
    }
    size++;
  }

  private void copy(int source, int target) {
    a[target] = a[source];
    b[target] = b[source];
    c[target] = c[source];
    taken[target] = taken[source];
    if (tanks) {
      fresh[target] = fresh[source];
      grey[target] = grey[source];
      stops[target] = stops[source];
    }
  }
}
