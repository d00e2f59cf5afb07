package dev.dogleg.plan.week;

import java.util.Arrays;

/** Runs of many sets and last visits, one after the other; see {@link RunBuffer}. */
final class RunArena {
  private final boolean tanks;
  int size;
  int[] a = new int[1024];
  int[] b = new int[1024];
  long[] c = new long[1024];
  boolean[] taken = new boolean[1024];
  int[] fresh;
  int[] grey;
  int[] stops;

  RunArena(boolean tanks) {
    this.tanks = tanks;
    int room = tanks ? 1024 : 0;
    fresh = new int[room];
    grey = new int[room];
    stops = new int[room];
  }

  /** {@return what is left of the tanks of a run, in the measure of a keeper} */
  int left(SetSweep.Keep keep, int run) {
    return tanks ? keep.left(fresh[run], grey[run]) : 0;
  }

  void clear() {
    size = 0;
  }

  void append(RunBuffer runs) {
    append(runs, 0, runs.size);
  }

  /** Appends so many runs, from one of them on. */
  void append(RunBuffer runs, int first, int more) {
    if (size + more > a.length) {
      int room = 2 * a.length + more;
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
    System.arraycopy(runs.a, first, a, size, more);
    System.arraycopy(runs.b, first, b, size, more);
    System.arraycopy(runs.c, first, c, size, more);
    System.arraycopy(runs.taken, first, taken, size, more);
    if (tanks) {
      System.arraycopy(runs.fresh, first, fresh, size, more);
      System.arraycopy(runs.grey, first, grey, size, more);
      System.arraycopy(runs.stops, first, stops, size, more);
    }
    size += more;
  }
}
