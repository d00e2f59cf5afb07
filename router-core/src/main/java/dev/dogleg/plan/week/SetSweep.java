package dev.dogleg.plan.week;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * All sets of bookings that a van-day may serve and whose reduced cost lies within a room, each
 * with a cost that it cannot be below: one sweep over (set, last visit) of the relaxed day, set
 * size by set size.
 *
 * <p>Maintainers: Held and Karp 1962 with runs as values; a run is dropped where another of the
 * same set and last visit is nowhere dearer (a day with its break behind it may take the place of
 * one without), or where {@link RestLabels} show that no end of the day brings it within the room.
 * A set is extended even where it cannot end itself: a break may still become possible.
 */
final class SetSweep {
  private final RelaxedDay day;
  private final SetRules rules;
  private final PricedDay priced;
  private final RestLabels rest;
  private final long room;
  private final long[] extra;
  private final int words;
  private final int mostSets;
  private long steps;
  private boolean complete = true;
  private final List<int[]> foundSets = new ArrayList<>();
  private long[] foundCosts = new long[256];
  private long[] foundReduced = new long[256];

  private List<Node> next = new ArrayList<>();
  private SetIndex index;

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

  /** A sweep over every possible set. */
  SetSweep(VanKind kind, RelaxedDay day, int mostSets) {
    this(kind, day, null, null, 0, mostSets);
  }

  /**
   * A sweep over the sets within a room.
   *
   * @param kind kind of van-day
   * @param day its relaxed day, of which costs are told
   * @param priced rewards; null: none, and everything is within the room
   * @param rest what the rest of a day is worth at least; null where {@code priced} is
   * @param room largest reduced cost of interest
   * @param mostSets sets looked at, after which it gives up, see {@link #complete}
   */
  SetSweep(
      VanKind kind, RelaxedDay day, PricedDay priced, RestLabels rest, long room, int mostSets) {
    this.day = day;
    this.rules = new SetRules(kind);
    this.priced = priced;
    this.rest = rest;
    this.room = room;
    this.mostSets = mostSets;
    words = Math.max(1, (day.n + Long.SIZE - 1) / Long.SIZE);
    extra = new long[kind.size()];
    Arrays.setAll(extra, kind::extraSixtieths);
    index = new SetIndex(words);
  }

  /** Runs; afterwards everything found can be asked for. */
  SetSweep run() {
    for (int j = 0; j < day.n; j++) {
      if (!day.tooLate(day.start(), day.from, j)) {
        extend(new long[words], day.start(), day.from, day.latestEnd, 0, false, j);
      }
    }
    int seen = 0;
    while (!next.isEmpty()) {
      List<Node> level = next;
      next = new ArrayList<>();
      index = new SetIndex(words);
      for (Node node : level) {
        finish(node);
        for (int k = 0; k < node.size; k++) {
          int i = node.last[k];
          for (int j = 0; j < day.n; j++) {
            boolean open = (node.set[j >>> 6] >>> j & 1) == 0 && !day.first[j];
            if (open && !day.tooLate(i, node.a[k], j)) {
              extend(node.set, i, node.a[k], node.b[k], node.c[k], node.taken[k], j);
            }
          }
        }
        if (++seen + next.size() > mostSets) {
          complete = false;
          return this;
        }
      }
    }
    return this;
  }

  private void extend(long[] set, int i, int a, int b, long c, boolean taken, int j) {
    steps++;
    long[] with = set.clone();
    with[j >>> 6] |= 1L << j;
    long rewards = priced == null ? 0 : rewards(with);
    day.step(
        i,
        a,
        b,
        c + extra[j],
        taken,
        j,
        (runA, runB, runC, runTaken) -> {
          if (runA + day.home[j] <= day.latestEnd
              && hopeful(j, runA, runC, runTaken, with, rewards)) {
            Node node = node(with);
            if (node != null) {
              node.add(day, j, runA, runB, runC, runTaken);
            }
          }
        });
  }

  private boolean hopeful(int j, int a, long c, boolean taken, long[] set, long rewards) {
    if (priced == null) {
      return true;
    }
    long soFar = priced.parts(c) - rewards;
    boolean single = Arrays.stream(set).map(Long::bitCount).sum() == 1;
    return soFar + rest.after(j, a, set, taken) <= room
        || (single && soFar + rest.after(j, a, set, true) <= room);
  }

  private long rewards(long[] set) {
    long sum = 0;
    for (int w = 0; w < words; w++) {
      for (long left = set[w]; left != 0; left &= left - 1) {
        int j = w * Long.SIZE + Long.numberOfTrailingZeros(left);
        // Costs hold the extra prices already.
        sum += priced.reward(j) + priced.parts(extra[j]);
      }
    }
    return sum;
  }

  private Node node(long[] set) {
    int at = index.find(set);
    if (at < 0) {
      index.put(set);
      Node node = new Node(set);
      node.never = rules.never(members(set));
      next.add(node);
      return node.never ? null : node;
    }
    Node node = next.get(at);
    return node.never ? null : node;
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
    long cost = least + rules.price(members);
    long reduced = priced == null ? 0 : priced.parts(cost) - rewards(node.set);
    if (reduced <= room) {
      if (foundSets.size() == foundCosts.length) {
        foundCosts = Arrays.copyOf(foundCosts, 2 * foundCosts.length);
        foundReduced = Arrays.copyOf(foundReduced, foundCosts.length);
      }
      foundCosts[foundSets.size()] = cost;
      foundReduced[foundSets.size()] = reduced;
      foundSets.add(members);
    }
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

  /** {@return whether every set within the room was found} */
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

  /** {@return its reduced cost at that cost, in parts} */
  long reduced(int k) {
    return foundReduced[k];
  }
}
