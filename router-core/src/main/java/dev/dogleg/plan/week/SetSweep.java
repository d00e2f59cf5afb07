package dev.dogleg.plan.week;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/**
 * All sets of bookings that a van-day may serve and whose reduced cost lies within a room, each
 * with a cost that it cannot be below: one sweep over (set, last visit) of the relaxed day, set
 * size by set size.
 *
 * <p>Maintainers: Held and Karp 1962 with runs as values; a run is dropped where another of the
 * same set and last visit is nowhere dearer (a day with its break behind it may take the place of
 * one without). A set is extended even where it cannot end itself: a break may still become
 * possible.
 */
final class SetSweep implements RelaxedDay.RunSink {
  /** Which partial days are worth going on with. */
  @FunctionalInterface
  interface Keep {
    /** Every one. */
    Keep ALL = (set, last, a, b, cost, taken) -> true;

    /**
     * Asked of every partial day, once it is made and before it is compared with others.
     *
     * @param set local numbers of the bookings served, one bit each; only to be read
     * @param last the visit served last
     * @param a earliest second at which the van is ready to leave it
     * @param b until then nobody has waited
     * @param cost what the day costs at least so far, with the extra prices of the bookings served
     *     and without the prices of rules on sets
     * @param taken whether the break is taken
     * @return false: it, and all that would become of it, may be missing
     */
    boolean keep(long[] set, int last, int a, int b, long cost, boolean taken);
  }

  /** Runs kept of one set and last visit, with the break taken and without. */
  private static final int MOST_RUNS = 2;

  private final RelaxedDay day;
  private final SetRules rules;
  private final long[] extra;
  private final int words;
  private final int mostSets;
  private final int mostFound;
  private final Keep keep;
  private long steps;
  private boolean complete = true;
  private final List<int[]> foundSets = new ArrayList<>();
  private long[] foundCosts = new long[256];

  private List<Node> next = new ArrayList<>();
  private SetIndex index;

  /** Seconds that a visit takes at least after leaving another, home included. */
  private final int[] need;

  private final int[] byNeed;
  private final long[] grown;
  private int grownBy;
  private long grownExtra;
  private Node reached;

  /** The partial days that serve one set. */
  private static final class Node {
    private final long[] set;
    private int size;
    private boolean never;
    private int[] last = new int[6];
    private int[] a = new int[6];
    private int[] b = new int[6];
    private long[] c = new long[6];
    private boolean[] taken = new boolean[6];

    Node(long[] set) {
      this.set = set;
    }

    void add(RelaxedDay day, int j, int runA, int runB, long runC, boolean runTaken) {
      int same = 0;
      int alike = -1;
      for (int k = 0; k < size; k++) {
        if (last[k] == j) {
          if ((taken[k] || !runTaken) && day.covers(a[k], b[k], c[k], runA, runB, runC)) {
            return;
          }
          if (taken[k] == runTaken) {
            same++;
            alike = k;
          }
        }
      }
      if (same >= MOST_RUNS) {
        // Two runs become one that is nowhere above either: a bound stays a bound.
        a[alike] = Math.min(a[alike], runA);
        b[alike] = Math.max(b[alike], runB);
        c[alike] = Math.min(c[alike], runC);
        return;
      }
      int kept = 0;
      for (int k = 0; k < size; k++) {
        boolean covered =
            last[k] == j
                && (runTaken || !taken[k])
                && day.covers(runA, runB, runC, a[k], b[k], c[k]);
        if (!covered) {
          if (kept < k) {
            last[kept] = last[k];
            a[kept] = a[k];
            b[kept] = b[k];
            c[kept] = c[k];
            taken[kept] = taken[k];
          }
          kept++;
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

  /**
   * A sweep.
   *
   * @param kind kind of van-day
   * @param mostSets sets looked at, after which it gives up, see {@link #complete}
   */
  SetSweep(VanKind kind, int mostSets) {
    this(kind, mostSets, Integer.MAX_VALUE, Keep.ALL);
  }

  /**
   * A sweep over part of the sets.
   *
   * @param kind kind of van-day
   * @param mostSets sets looked at, after which it gives up, see {@link #complete}
   * @param mostFound sets found, after which it gives up too
   * @param keep which partial days it goes on with
   */
  SetSweep(VanKind kind, int mostSets, int mostFound, Keep keep) {
    this.mostFound = mostFound;
    this.keep = keep;
    day = kind.relaxed();
    this.rules = new SetRules(kind);
    this.mostSets = mostSets;
    words = Math.max(1, (day.n + Long.SIZE - 1) / Long.SIZE);
    extra = new long[kind.size()];
    Arrays.setAll(extra, kind::extraSixtieths);
    index = new SetIndex(words);
    grown = new long[words];
    need = new int[day.n];
    for (int j = 0; j < day.n; j++) {
      int shortest = Integer.MAX_VALUE / 4;
      for (int i = 0; i < day.n; i++) {
        if (i != j && day.legs.spanEnds(i, j) != null) {
          shortest = Math.min(shortest, day.legs.least(i, j));
        }
      }
      need[j] = shortest + day.service[j] + day.home[j];
    }
    byNeed =
        IntStream.range(0, day.n)
            .boxed()
            .sorted(Comparator.comparingInt((Integer j) -> need[j]).thenComparingInt(j -> j))
            .mapToInt(Integer::intValue)
            .toArray();
  }

  /**
   * Runs; afterwards everything found can be asked for.
   *
   * @param stop asked at every set; once true, the sweep gives up, see {@link #complete}
   */
  SetSweep run(BooleanSupplier stop) {
    for (int j = 0; j < day.n; j++) {
      if (!day.tooLate(day.start(), day.from, j)) {
        extend(new long[words], 0, day.start(), day.from, day.latestEnd, 0, false, j);
      }
    }
    int seen = 0;
    while (!next.isEmpty()) {
      List<Node> level = next;
      next = new ArrayList<>();
      index = new SetIndex(words);
      for (Node node : level) {
        finish(node);
        long extraSoFar = extra(node.set);
        for (int k = 0; k < node.size; k++) {
          int i = node.last[k];
          for (int j : byNeed) {
            if (node.a[k] + need[j] > day.latestEnd) {
              break;
            }
            boolean open = (node.set[j >>> 6] >>> j & 1) == 0 && !day.first[j];
            if (open && !day.tooLate(i, node.a[k], j)) {
              extend(node.set, extraSoFar, i, node.a[k], node.b[k], node.c[k], node.taken[k], j);
            }
          }
        }
        boolean full = ++seen + next.size() > mostSets || foundSets.size() > mostFound;
        if (full || stop.getAsBoolean()) {
          complete = false;
          return this;
        }
      }
    }
    return this;
  }

  /** Extends a run of a set that costs {@code c} without the extra prices of its bookings. */
  private void extend(
      long[] set, long extraSoFar, int i, int a, int b, long c, boolean taken, int j) {
    steps++;
    System.arraycopy(set, 0, grown, 0, words);
    grown[j >>> 6] |= 1L << j;
    int at = index.find(grown);
    reached = at < 0 ? null : next.get(at);
    if (reached != null && reached.never) {
      return;
    }
    grownBy = j;
    grownExtra = extraSoFar + extra[j];
    day.step(i, a, b, c, taken, j, this);
  }

  @Override
  public void run(int a, int b, long c, boolean taken) {
    if (a + day.home[grownBy] <= day.latestEnd
        && keep.keep(grown, grownBy, a, b, c + grownExtra, taken)) {
      if (reached == null) {
        index.put(grown);
        reached = new Node(grown.clone());
        reached.never = rules.never(members(grown));
        next.add(reached);
      }
      if (!reached.never) {
        reached.add(day, grownBy, a, b, c, taken);
      }
    }
  }

  private void finish(Node node) {
    long least = RelaxedDay.NEVER;
    int[] members = members(node.set);
    for (int k = 0; k < node.size; k++) {
      long cost =
          day.end(
              node.last[k], node.a[k], node.b[k], node.c[k], node.taken[k], members.length == 1);
      least = Math.min(least, cost);
    }
    if (least >= RelaxedDay.NEVER || rules.incomplete(members)) {
      return;
    }
    long cost = least + rules.price(members) + extra(node.set);
    if (foundSets.size() == foundCosts.length) {
      foundCosts = Arrays.copyOf(foundCosts, 2 * foundCosts.length);
    }
    foundCosts[foundSets.size()] = cost;
    foundSets.add(members);
  }

  private long extra(long[] set) {
    long sum = 0;
    for (int j : members(set)) {
      sum += extra[j];
    }
    return sum;
  }

  private static int[] members(long[] set) {
    int count = 0;
    for (long word : set) {
      count += Long.bitCount(word);
    }
    int[] members = new int[count];
    int next = 0;
    for (int w = 0; w < set.length; w++) {
      for (long left = set[w]; left != 0; left &= left - 1) {
        members[next++] = w * Long.SIZE + Long.numberOfTrailingZeros(left);
      }
    }
    return members;
  }

  /** {@return whether every possible set was found, of those kept} */
  boolean complete() {
    return complete;
  }

  long steps() {
    return steps;
  }

  /** {@return number of sets found} */
  int size() {
    return foundSets.size();
  }

  /** {@return local numbers of the bookings of a set, rising} */
  int[] set(int k) {
    return foundSets.get(k);
  }

  /** {@return what serving just this set costs at least, extra prices of choices included} */
  long cost(int k) {
    return foundCosts[k];
  }
}
