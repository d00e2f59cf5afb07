package dev.dogleg.plan.week;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * All sets of bookings that a van-day may serve, each with a cost that it cannot be below: one
 * sweep over (set, last visit) of the relaxed day, set size by set size.
 *
 * <p>Maintainers: Held and Karp 1962 with runs as values; a run is dropped where another of the
 * same set and last visit is nowhere dearer (a day with its break behind it may take the place of
 * one without). A set is extended even where it cannot end itself: a break may still become
 * possible.
 */
final class SetSweep {
  /** Most bookings: a set is one {@code long} here. */
  static final int MOST = Long.SIZE;

  private final RelaxedDay day;
  private final SetRules rules;
  private final long[] extra;
  private final int mostSets;
  private final long mostSteps;
  private long steps;
  private boolean complete = true;
  private long[] foundSets = new long[256];
  private long[] foundCosts = new long[256];
  private int found;

  private List<Node> next = new ArrayList<>();
  private LongIndex index = new LongIndex();

  /** The partial days that serve one set. */
  private static final class Node {
    private final long set;
    private int size;
    private int[] last = new int[6];
    private int[] a = new int[6];
    private int[] b = new int[6];
    private long[] c = new long[6];
    private boolean[] taken = new boolean[6];

    Node(long set) {
      this.set = set;
    }

    void add(RelaxedDay day, int j, int runA, int runB, long runC, boolean runTaken) {
      int kept = 0;
      for (int k = 0; k < size; k++) {
        if (last[k] == j) {
          if ((taken[k] || !runTaken) && day.covers(a[k], b[k], c[k], runA, runB, runC)) {
            return;
          }
        }
      }
      for (int k = 0; k < size; k++) {
        boolean covered =
            last[k] == j
                && (runTaken || !taken[k])
                && day.covers(runA, runB, runC, a[k], b[k], c[k]);
        if (!covered) {
          last[kept] = last[k];
          a[kept] = a[k];
          b[kept] = b[k];
          c[kept] = c[k];
          taken[kept++] = taken[k];
        }
      }
      size = kept;
      if (size == last.length) {
        last = Arrays.copyOf(last, 2 * size);
        a = Arrays.copyOf(a, 2 * size);
        b = Arrays.copyOf(b, 2 * size);
        c = Arrays.copyOf(c, 2 * size);
        taken = Arrays.copyOf(taken, 2 * size);
      }
      last[size] = j;
      a[size] = runA;
      b[size] = runB;
      c[size] = runC;
      taken[size++] = runTaken;
    }
  }

  SetSweep(VanKind kind, RelaxedDay day, int mostSets, long mostSteps) {
    this.day = day;
    this.rules = new SetRules(kind);
    this.mostSets = mostSets;
    this.mostSteps = mostSteps;
    extra = new long[kind.size()];
    Arrays.setAll(extra, kind::extraSixtieths);
  }

  /** Runs; afterwards everything found can be asked for. */
  void run() {
    if (day.n > MOST) {
      complete = false;
      return;
    }
    for (int j = 0; j < day.n; j++) {
      if (!day.tooLate(day.start(), day.from, j)) {
        extend(0, day.start(), day.from, day.latestEnd, 0, false, j);
      }
    }
    while (!next.isEmpty() && complete) {
      List<Node> level = next;
      next = new ArrayList<>();
      index = new LongIndex();
      for (Node node : level) {
        finish(node);
        for (int k = 0; k < node.size && complete; k++) {
          int i = node.last[k];
          for (int j = 0; j < day.n; j++) {
            if ((node.set >>> j & 1) == 0 && !day.first[j] && !day.tooLate(i, node.a[k], j)) {
              extend(node.set, i, node.a[k], node.b[k], node.c[k], node.taken[k], j);
            }
          }
        }
        if (steps > mostSteps || found + next.size() > mostSets) {
          complete = false;
          return;
        }
      }
    }
  }

  private void extend(long set, int i, int a, int b, long c, boolean taken, int j) {
    steps++;
    long with = set | 1L << j;
    day.step(
        i,
        a,
        b,
        c + extra[j],
        taken,
        j,
        (runA, runB, runC, runTaken) -> {
          if (runA + day.home[j] <= day.latestEnd) {
            Node node = node(with);
            if (node != null) {
              node.add(day, j, runA, runB, runC, runTaken);
            }
          }
        });
  }

  private Node node(long set) {
    int at = index.find(set);
    if (at == LongIndex.MISSING) {
      boolean never = rules.never(members(set));
      index.put(set, never ? LongIndex.NONE : next.size());
      if (never) {
        return null;
      }
      Node node = new Node(set);
      next.add(node);
      return node;
    }
    return at == LongIndex.NONE ? null : next.get(at);
  }

  private void finish(Node node) {
    long least = RelaxedDay.NEVER;
    boolean single = Long.bitCount(node.set) == 1;
    for (int k = 0; k < node.size; k++) {
      long cost = day.end(node.last[k], node.a[k], node.b[k], node.c[k], node.taken[k], single);
      least = Math.min(least, cost);
    }
    if (least < RelaxedDay.NEVER) {
      int[] members = members(node.set);
      if (!rules.incomplete(members)) {
        if (found == foundSets.length) {
          foundSets = Arrays.copyOf(foundSets, 2 * found);
          foundCosts = Arrays.copyOf(foundCosts, 2 * found);
        }
        foundSets[found] = node.set;
        foundCosts[found++] = least + rules.price(members);
      }
    }
  }

  /** {@return the numbers of a set's bits, rising} */
  static int[] members(long set) {
    int[] members = new int[Long.bitCount(set)];
    int next = 0;
    for (long rest = set; rest != 0; rest &= rest - 1) {
      members[next++] = Long.numberOfTrailingZeros(rest);
    }
    return members;
  }

  /** {@return whether every possible set was found} */
  boolean complete() {
    return complete;
  }

  long steps() {
    return steps;
  }

  /** {@return number of sets found} */
  int size() {
    return found;
  }

  /** {@return local numbers of the bookings of a set, as bits} */
  long set(int k) {
    return foundSets[k];
  }

  /** {@return what serving just this set costs at least, extra prices of choices included} */
  long cost(int k) {
    return foundCosts[k];
  }
}
