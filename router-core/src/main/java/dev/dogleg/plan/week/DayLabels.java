package dev.dogleg.plan.week;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/**
 * Prices a kind of van-day: grows partial days of the relaxed day from the start, door by door, and
 * finds the least reduced cost of a day and cheap days.
 *
 * <p>Maintainers: label setting in order of time (Feillet, Dejax, Gendreau, Pouchard 2004, Networks
 * 44:216-229) with ng-memory. A partial day goes where {@link RestFloor} says that it could still
 * end below the limit, and falls where another of the same visit is nowhere later or dearer, and
 * remembers and carries no more; cuts that the other has half used and it has not are counted
 * against the other. The memory being short, a day may hold a visit twice: what is found is a floor
 * for all true days, and only days that hold each visit once are handed out.
 */
final class DayLabels implements RelaxedDay.RunSink {
  private final RelaxedDay day;
  private final DayDuals duals;
  private final RestFloor floor;
  private final RestFill fill;
  private final NearVisits near;
  private final DayLoad load;
  private final long limit;
  private final boolean quick;
  private final int mostLabels;
  private final BooleanSupplier stop;
  private final int words;

  private int size;
  private int[] visit = new int[1024];
  private int[] a = new int[1024];
  private int[] b = new int[1024];
  private long[] c = new long[1024];
  private long[] plain = new long[1024];
  private boolean[] taken = new boolean[1024];
  private boolean[] fallen = new boolean[1024];
  private int[] carried = new int[1024];
  private long[] halves = new long[1024];
  private int[] parent = new int[1024];
  private long[] memory;

  private final IntBag[] at;
  private final IntBag[] waiting;
  private final int width;

  private int from;
  private int to;
  private long toCost;
  private long toHalves;
  private int toCarried;
  private final long[] toMemory;

  private long least;
  private final List<End> ends = new ArrayList<>();

  /** A day: its last partial day, its reduced cost, and its cost without extra prices. */
  private record End(int label, long reduced, long cost) {}

  /**
   * Sets up.
   *
   * @param day relaxed day
   * @param duals prices
   * @param floor floor of rests, filled with the same prices
   * @param fill another floor of rests, filled with the same prices
   * @param near what is remembered where
   * @param load load points
   * @param limit days of this reduced cost or more are of no interest; 0 or less
   * @param quick whether partial days fall however much they remember: finds days, proves nothing
   * @param mostLabels partial days made, after which it gives up
   * @param stop asked now and then; once true, it gives up
   */
  DayLabels(
      RelaxedDay day,
      DayDuals duals,
      RestFloor floor,
      RestFill fill,
      NearVisits near,
      DayLoad load,
      long limit,
      boolean quick,
      int mostLabels,
      BooleanSupplier stop) {
    this.stop = stop;
    this.day = day;
    this.duals = duals;
    this.floor = floor;
    this.fill = fill;
    this.near = near;
    this.load = load;
    this.limit = limit;
    this.quick = quick;
    this.mostLabels = mostLabels;
    words = near.words();
    memory = new long[1024 * words];
    toMemory = new long[words];
    at = new IntBag[day.n];
    Arrays.setAll(at, j -> new IntBag());
    width = Math.max(1, (day.latestEnd - day.from) / 200);
    waiting = new IntBag[(day.latestEnd - day.from) / width + 1];
    Arrays.setAll(waiting, k -> new IntBag());
    least = limit;
  }

  /**
   * Runs.
   *
   * @return whether every day below the limit was thought of; false: too many partial days
   */
  boolean run() {
    from = -1;
    for (int j = 0; j < day.n; j++) {
      if (!day.tooLate(day.start(), day.from, j)) {
        goTo(j, 0, 0, 0);
        day.step(day.start(), day.from, day.latestEnd, 0, !day.hasBreak, j, this);
      }
    }
    for (int k = 0; k < size; k++) {
      end(k, true);
    }
    for (IntBag bag : waiting) {
      for (int k = 0; k < bag.size(); k++) {
        int label = bag.get(k);
        if (!fallen[label]) {
          end(label, false);
          extend(label);
        }
        if (size > mostLabels || (k % 1024 == 1023 && stop.getAsBoolean())) {
          return false;
        }
      }
    }
    return !quick;
  }

  private void extend(int label) {
    int i = visit[label];
    from = label;
    for (int j = 0; j < day.n; j++) {
      boolean known = (memory[label * words + (j >>> 6)] >>> j & 1) != 0;
      boolean tooMuch = carried[label] + load.points[j] > load.most;
      if (!known && !tooMuch && !day.first[j] && !day.tooLate(i, a[label], j)) {
        goTo(j, c[label], halves[label], carried[label]);
        day.step(i, a[label], b[label], 0, taken[label], j, this);
      }
    }
  }

  /** What the next runs will stand at, and what they cost but for the leg. */
  private void goTo(int j, long cost, long half, int points) {
    to = j;
    long full = half & duals.cutsOf[j];
    toCost = cost - duals.worth[j] + duals.sum(full);
    toHalves = half ^ duals.cutsOf[j];
    toCarried = points + load.points[j];
  }

  @Override
  public void run(int runA, int runB, long cost, boolean runTaken) {
    if (runA + day.home[to] > day.latestEnd) {
      return;
    }
    long sum = toCost + duals.costScale * cost;
    int before = from < 0 ? -1 : visit[from];
    // The only visit of a day needs no break.
    if (from >= 0 || !day.hasBreak) {
      long rest = floor.of(to, before, runA, runTaken);
      if (rest >= RelaxedDay.NEVER || sum + rest >= limit) {
        return;
      }
    }
    long[] remembered = near.of(to);
    for (int w = 0; w < words; w++) {
      toMemory[w] = from < 0 ? 0 : memory[from * words + w] & remembered[w];
    }
    toMemory[to >>> 6] |= 1L << to;
    if (from >= 0 && sum + fill.of(toMemory, 0, runA, runTaken) >= limit) {
      return;
    }
    if (from >= 0 && falls(runA, runB, sum, runTaken)) {
      return;
    }
    put(runA, runB, sum, runTaken);
    plain[size - 1] = cost + (from < 0 ? 0 : plain[from]);
  }

  private boolean falls(int runA, int runB, long sum, boolean runTaken) {
    IntBag bag = at[to];
    int kept = 0;
    for (int k = 0; k < bag.size(); k++) {
      int other = bag.get(k);
      if (a[other] <= runA
          && c[other] <= sum
          && (taken[other] || !runTaken)
          && carried[other] <= toCarried
          && under(other, runB, sum)) {
        return true;
      }
    }
    for (int k = 0; k < bag.size(); k++) {
      int other = bag.get(k);
      boolean over =
          runA <= a[other]
              && sum <= c[other]
              && (runTaken || !taken[other])
              && toCarried <= carried[other]
              && over(other, runB, sum);
      if (over) {
        fallen[other] = true;
      } else {
        bag.set(kept++, other);
      }
    }
    bag.shrink(kept);
    return false;
  }

  /** Whether a known partial day remembers no more and is no dearer than the one at hand. */
  private boolean under(int other, int runB, long sum) {
    long dearer = duals.costScale * day.waitCost(Math.max(0, runB - b[other]));
    if (!quick) {
      for (int w = 0; w < words; w++) {
        if ((memory[other * words + w] & ~toMemory[w]) != 0) {
          return false;
        }
      }
      dearer += duals.sum(halves[other] & ~toHalves);
    }
    return c[other] + dearer <= sum;
  }

  private boolean over(int other, int runB, long sum) {
    long dearer = duals.costScale * day.waitCost(Math.max(0, b[other] - runB));
    if (!quick) {
      for (int w = 0; w < words; w++) {
        if ((toMemory[w] & ~memory[other * words + w]) != 0) {
          return false;
        }
      }
      dearer += duals.sum(toHalves & ~halves[other]);
    }
    return sum + dearer <= c[other];
  }

  private void put(int runA, int runB, long sum, boolean runTaken) {
    if (size == a.length) {
      grow();
    }
    visit[size] = to;
    a[size] = runA;
    b[size] = runB;
    c[size] = sum;
    taken[size] = runTaken;
    carried[size] = toCarried;
    halves[size] = toHalves;
    parent[size] = from;
    System.arraycopy(toMemory, 0, memory, size * words, words);
    at[to].add(size);
    waiting[(runA - day.from) / width].add(size);
    size++;
  }

  private void grow() {
    int more = 2 * size;
    visit = Arrays.copyOf(visit, more);
    a = Arrays.copyOf(a, more);
    b = Arrays.copyOf(b, more);
    c = Arrays.copyOf(c, more);
    plain = Arrays.copyOf(plain, more);
    taken = Arrays.copyOf(taken, more);
    fallen = Arrays.copyOf(fallen, more);
    carried = Arrays.copyOf(carried, more);
    halves = Arrays.copyOf(halves, more);
    parent = Arrays.copyOf(parent, more);
    memory = Arrays.copyOf(memory, more * words);
  }

  private void end(int label, boolean single) {
    long cost = day.end(visit[label], a[label], b[label], 0, taken[label], single);
    if (cost < RelaxedDay.NEVER) {
      long reduced = c[label] + duals.costScale * cost;
      if (reduced < limit) {
        least = Math.min(least, reduced);
        ends.add(new End(label, reduced, plain[label] + cost));
      }
    }
  }

  /** {@return no day has a smaller reduced cost, where {@link #run} said so; the limit at most} */
  long least() {
    return least;
  }

  /** {@return number of partial days made} */
  int size() {
    return size;
  }

  /** A day found. */
  static final class Found {
    private final int[] order;
    private final long costSixtieths;

    Found(int[] order, long costSixtieths) {
      this.order = order;
      this.costSixtieths = costSixtieths;
    }

    /** {@return visits as they are made, some of them more than once where it is no true day} */
    int[] order() {
      return order;
    }

    /** {@return cost on the relaxed day, without extra prices and rules on sets} */
    long costSixtieths() {
      return costSixtieths;
    }

    /** Whether each visit is made once. */
    boolean isTrueDay() {
      return IntStream.of(order).distinct().count() == order.length;
    }
  }

  /** {@return the cheapest days found, each set once} */
  List<Found> cheapest(int most) {
    ends.sort(Comparator.comparingLong(End::reduced).thenComparingInt(End::label));
    List<Found> found = new ArrayList<>();
    List<BookingSet> sets = new ArrayList<>();
    for (End end : ends) {
      int[] order = order(end.label());
      BookingSet set = BookingSet.of(order);
      if (!sets.contains(set)) {
        sets.add(set);
        found.add(new Found(order, end.cost()));
        if (found.size() == most) {
          break;
        }
      }
    }
    return found;
  }

  private int[] order(int label) {
    int length = 0;
    for (int k = label; k >= 0; k = parent[k]) {
      length++;
    }
    int[] order = new int[length];
    for (int k = label; k >= 0; k = parent[k]) {
      order[--length] = visit[k];
    }
    return order;
  }
}
