package dev.dogleg.plan.week;

import java.util.Arrays;

/**
 * The partial days of all sets of one size: for each set its last visits, for each of these its
 * runs. Mutable, one thread; used again for another size after {@link #clear}.
 */
final class SetLevel {
  private final SetIndex index;
  private long[] least = new long[256];
  private int[] earliest = new int[256];
  private int[] head = new int[256];
  private int states;
  private int[] last = new int[512];
  private int[] next = new int[512];
  private int[] from = new int[513];
  final RunArena runs;

  SetLevel(int words, boolean tanks) {
    index = new SetIndex(words);
    runs = new RunArena(tanks);
  }

  void clear() {
    index.clear();
    runs.clear();
    states = 0;
  }

  /** {@return number of sets} */
  int size() {
    return index.size();
  }

  /** {@return the words of all sets, in their order; only to be read} */
  long[] rows() {
    return index.rows();
  }

  /**
   * Adds the runs of a set and last visit, all at once.
   *
   * @param set words of the set
   * @param visit last visit
   * @param found its runs, at least one
   * @param cost least cost of a day that ends there
   */
  void add(long[] set, int visit, RunBuffer found, long cost) {
    int at = index.find(set);
    if (at < 0) {
      at = index.put(set);
      if (at == head.length) {
        head = Arrays.copyOf(head, 2 * at);
        least = Arrays.copyOf(least, 2 * at);
        earliest = Arrays.copyOf(earliest, 2 * at);
      }
      head[at] = -1;
      least[at] = RelaxedDay.NEVER;
      earliest[at] = Integer.MAX_VALUE;
    }
    if (states == last.length) {
      last = Arrays.copyOf(last, 2 * states);
      next = Arrays.copyOf(next, 2 * states);
      from = Arrays.copyOf(from, 2 * states + 1);
    }
    least[at] = Math.min(least[at], cost);
    for (int k = 0; k < found.size; k++) {
      earliest[at] = Math.min(earliest[at], found.a[k]);
    }
    last[states] = visit;
    next[states] = head[at];
    head[at] = states;
    from[states] = runs.size;
    runs.append(found);
    from[++states] = runs.size;
  }

  /** {@return least cost of a day that serves just a set} */
  long least(int set) {
    return least[set];
  }

  /** {@return earliest second at which a van is ready after a set} */
  int earliest(int set) {
    return earliest[set];
  }

  /** {@return a state of a set; -1: none} */
  int head(int set) {
    return head[set];
  }

  /** {@return another state of the same set; -1: no more} */
  int next(int state) {
    return next[state];
  }

  /** {@return last visit of a state} */
  int last(int state) {
    return last[state];
  }

  /** {@return first run of a state} */
  int from(int state) {
    return from[state];
  }

  /** {@return the run after its last one} */
  int to(int state) {
    return from[state + 1];
  }
}
