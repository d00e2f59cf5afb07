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

  void clear() {
    size = 0;
  }

  void append(RunBuffer runs) {
    int more = runs.size;
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
    System.arraycopy(runs.a, 0, a, size, more);
    System.arraycopy(runs.b, 0, b, size, more);
    System.arraycopy(runs.c, 0, c, size, more);
    System.arraycopy(runs.taken, 0, taken, size, more);
    if (tanks) {
      System.arraycopy(runs.fresh, 0, fresh, size, more);
      System.arraycopy(runs.grey, 0, grey, size, more);
      System.arraycopy(runs.stops, 0, stops, size, more);
    }
    size += more;
  }
}
