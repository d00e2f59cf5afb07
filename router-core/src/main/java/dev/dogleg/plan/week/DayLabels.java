package dev.dogleg.plan.week;

import dev.dogleg.schedule.StepTerms;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.BooleanSupplier;

/**
 * Prices a kind of van-day: grows partial days from the start, door by door, with all rules and
 * tanks, and finds the least reduced cost of a day and cheap days.
 *
 * <p>Maintainers: label setting in order of time (Feillet, Dejax, Gendreau, Pouchard 2004, Networks
 * 44:216-229) with ng-memory. A partial day goes where {@link RestGlance} says that it could still
 * end below the limit, and falls where another of the same visit is nowhere later or dearer,
 * remembers no more of what may still come, has fuller tanks, and whatever comes pays no more to
 * rules and cuts, or the difference is counted against the other. The memory being short, a day may
 * hold a visit twice: what is found is a floor for all true days, and only days that hold each
 * visit once are handed out. Durations are rounded down ({@link RunStep}).
 */
final class DayLabels {
  private final PricedDay priced;
  private final RelaxedDay day;
  private final RunStep step;
  private final StepTerms terms;
  private final DayDuals duals;
  private final DayLoad load;
  private final long limit;
  private final boolean quick;
  private final int mostLabels;
  private final BooleanSupplier stop;
  private final int words;
  private final boolean ruled;
  private final boolean byPlace;
  private final boolean tanks;
  private final long waitPrice;

  private int size;
  private final RunArena runs;
  private int[] visit = new int[1024];
  private long[] toll = new long[1024];
  private long[] sum = new long[1024];
  private boolean[] fallen = new boolean[1024];
  private int[] carried = new int[1024];
  private int[] place = new int[1024];
  private long[] halves = new long[1024];
  private int[] parent = new int[1024];
  private long[] memory;
  private long[] served;

  private final LabelBag[] at;
  private final IntBag[] waiting;
  private final int width;

  private final RunBuffer next;
  private int from;
  private int to;
  private int toPlace;
  private long toToll;
  private long toHalves;
  private int toCarried;
  private int toMode;
  private final long[] toMemory;
  private final long[] toServed;
  private final long[] open;
  private final long[] nobody;

  private int runA;
  private int runB;
  private long runSum;
  private boolean runTaken;
  private int runFresh;
  private int runGrey;
  private int runStops;

  private long least;
  private final List<End> ends = new ArrayList<>();

  /** A day: its last partial day, its reduced cost, and its cost without extra prices. */
  private record End(int label, long reduced, long cost) {}

  /**
   * Sets up.
   *
   * @param priced the van-day and its prices
   * @param limit days of this reduced cost or more are of no interest; 0 or less
   * @param quick whether partial days fall whatever they remember and however full their tanks are:
   *     finds days, proves nothing
   * @param mostLabels partial days made, after which it gives up
   * @param stop asked now and then; once true, it gives up
   */
  DayLabels(PricedDay priced, long limit, boolean quick, int mostLabels, BooleanSupplier stop) {
    this.priced = priced;
    this.stop = stop;
    this.limit = limit;
    this.quick = quick;
    this.mostLabels = mostLabels;
    day = priced.day();
    step = priced.step();
    terms = step.terms();
    duals = priced.duals();
    load = priced.load();
    words = priced.near().words();
    ruled = !terms.free() && !load.alone;
    byPlace = terms.byPlace();
    tanks = step.water();
    waitPrice = duals.costScale * day.waited();
    runs = new RunArena(tanks);
    next = step.buffer();
    memory = new long[1024 * words];
    served = new long[ruled ? 1024 * words : 0];
    toMemory = new long[words];
    toServed = new long[words];
    open = new long[words];
    nobody = new long[words];
    at = new LabelBag[day.n];
    Arrays.setAll(at, j -> new LabelBag(words));
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
    start();
    for (IntBag bag : waiting) {
      for (int k = 0; k < bag.size(); k++) {
        int label = bag.get(k);
        if (!fallen[label]) {
          if (parent[label] >= 0) {
            end(label, false);
          }
          extend(label);
        }
        if (size > mostLabels || (k % 1024 == 1023 && stop.getAsBoolean())) {
          return false;
        }
      }
    }
    return !quick;
  }

  private void start() {
    from = -1;
    RunArena morning = new RunArena(tanks);
    RunBuffer one = step.buffer();
    one.add(day.from, day.latestEnd, 0, false, 0, 0, 0);
    morning.append(one);
    long[] empty = new long[words];
    StopNeed need = need(0, 0, empty, 0, day.from);
    for (int j = 0; j < day.n; j++) {
      boolean may = load.points[j] <= load.most && (!ruled || terms.may(empty, 0, day.n, j, 1));
      if (may && step.reaches(day.start(), j)) {
        goTo(j, 0, 0, 0, 1);
        long price = ruled ? terms.price(empty, 0, day.n, j, 1) : 0;
        int service = terms.service(day.n, j, 1);
        if (need != null) {
          need.next(j);
        }
        step.visit(day.start(), morning, 0, j, service, price, need, RestGlance.STRAIGHT, next);
        arrive();
      }
    }
    for (int k = 0; k < size; k++) {
      end(k, true);
    }
  }

  private void extend(int label) {
    int i = visit[label];
    from = label;
    int nextPlace = place[label] + 1;
    int leave = runs.a[label];
    int left = tanks ? priced.glance().left(runs.fresh[label], runs.grey[label]) : 0;
    StopNeed need =
        tanks ? need(runs.fresh[label], runs.grey[label], memory, label * words, leave) : null;
    for (int j : priced.stops().byNeed) {
      boolean known = (memory[label * words + (j >>> 6)] >>> j & 1) != 0;
      if (known
          || day.first[j]
          || carried[label] + load.points[j] > load.most
          || !step.reaches(i, j)
          || step.tooLate(i, leave, j, day.service[j])) {
        continue;
      }
      if (ruled && !terms.may(served, label * words, i, j, nextPlace)) {
        continue;
      }
      goTo(j, toll[label], halves[label], carried[label], nextPlace);
      long price = ruled ? terms.price(served, label * words, i, j, nextPlace) : 0;
      int service = terms.service(i, j, nextPlace);
      long room = limit - 1 - toToll - duals.costScale * (runs.c[label] + price);
      boolean taken = runs.taken[label];
      int ways = priced.glance().mayGo(i, leave, taken, left, j, service, toMode, toMemory, room);
      if (ways == 0) {
        continue;
      }
      if (need != null) {
        need.next(j);
      }
      step.visit(i, runs, label, j, service, price, need, ways, next);
      arrive();
    }
  }

  private StopNeed need(int fresh, int grey, long[] rows, int row, int leave) {
    StopNeed stops = priced.stops();
    return stops.mayBeNeeded(fresh, grey, rows, row, leave) ? stops : null;
  }

  /** What the next runs will stand at, and what they cost but for the way. */
  private void goTo(int j, long tollSoFar, long half, int points, int toThePlace) {
    to = j;
    toPlace = toThePlace;
    long full = half & duals.cutsOf[j];
    toToll = tollSoFar - duals.worth[j] + duals.sum(full);
    toHalves = half ^ duals.cutsOf[j];
    toCarried = points + load.points[j];
    long[] remembered = priced.near().of(j);
    for (int w = 0; w < words; w++) {
      toMemory[w] = from < 0 ? 0 : memory[from * words + w] & remembered[w];
      toServed[w] = from < 0 || !ruled ? 0 : served[from * words + w];
    }
    toMemory[j >>> 6] |= 1L << j;
    toServed[j >>> 6] |= 1L << j;
    if (ruled) {
      toMode = priced.glance().mode(toServed, 0);
      terms.addBlocked(toServed, 0, toMemory, 0);
    }
    next.clear();
  }

  private void arrive() {
    int before = from < 0 ? -1 : visit[from];
    for (int k = 0; k < next.size; k++) {
      runA = next.a[k];
      runB = next.b[k];
      runTaken = next.taken[k];
      runSum = toToll + duals.costScale * next.c[k];
      int left = 0;
      if (tanks) {
        runFresh = next.fresh[k];
        runGrey = next.grey[k];
        runStops = next.stops[k];
        left = priced.glance().left(runFresh, runGrey);
      }
      // The only visit of a day needs no break.
      if ((from >= 0 || !day.hasBreak)
          && !priced
              .glance()
              .within(to, before, runA, runTaken, toMode, left, toMemory, limit - 1 - runSum)) {
        continue;
      }
      if (from < 0 || !falls()) {
        put(k);
      }
    }
  }

  /** Whether a known partial day makes the one at hand useless; if not, it takes its place. */
  private boolean falls() {
    LabelBag bag = at[to];
    int index = priced.open().index(to, runA);
    open(index, toMemory, 0);
    long cuts = priced.open().cuts(index);
    int cheaper = bag.upTo(runSum);
    long[] known = quick ? nobody : open;
    for (int k = bag.nextUnder(0, cheaper, runA, known);
        k < cheaper;
        k = bag.nextUnder(k + 1, cheaper, runA, known)) {
      int other = bag.label[k];
      if ((runs.taken[other] || !runTaken)
          && carried[other] <= toCarried
          && (!byPlace || place[other] == toPlace)
          && fuller(other)
          && under(other, cuts)) {
        return true;
      }
    }
    int kept = cheaper;
    for (int k = cheaper; k < bag.size; k++) {
      int other = bag.label[k];
      if (runA <= bag.earliest[k]
          && (runTaken || !runs.taken[other])
          && toCarried <= carried[other]
          && (!byPlace || place[other] == toPlace)
          && emptier(other)
          && over(other)) {
        fallen[other] = true;
      } else {
        if (kept < k) {
          bag.move(k, kept);
        }
        kept++;
      }
    }
    bag.size = kept;
    bag.insert(cheaper, size, runA, runSum, toMemory);
    return false;
  }

  private boolean fuller(int other) {
    return !tanks
        || quick
        || (runs.fresh[other] <= runFresh
            && runs.grey[other] <= runGrey
            && runs.stops[other] <= runStops);
  }

  private boolean emptier(int other) {
    return !tanks
        || quick
        || (runFresh <= runs.fresh[other]
            && runGrey <= runs.grey[other]
            && runStops <= runs.stops[other]);
  }

  /** The visits that may still come after a partial day. */
  private void open(int index, long[] remembered, int row) {
    long[] rows = priced.open().rows();
    for (int w = 0; w < words; w++) {
      open[w] = rows[index * words + w] & ~remembered[row + w];
    }
  }

  /** Whether a known partial day that remembers no more is no dearer than the one at hand. */
  private boolean under(int other, long cuts) {
    long spare = runSum - sum[other] - waitPrice * Math.max(0, runB - runs.b[other]);
    if (spare < 0 || quick) {
      return spare >= 0;
    }
    spare -= duals.sum(halves[other] & ~toHalves & cuts);
    return spare >= 0
        && (!ruled || ruled(spare, terms.dearer(served, other * words, toServed, 0, open, 0)));
  }

  private boolean over(int other) {
    long spare = sum[other] - runSum - waitPrice * Math.max(0, runs.b[other] - runB);
    if (spare < 0 || quick) {
      return spare >= 0;
    }
    int index = priced.open().index(to, runs.a[other]);
    open(index, memory, other * words);
    for (int w = 0; w < words; w++) {
      if ((toMemory[w] & open[w]) != 0) {
        return false;
      }
    }
    spare -= duals.sum(toHalves & ~halves[other] & priced.open().cuts(index));
    return spare >= 0
        && (!ruled || ruled(spare, terms.dearer(toServed, 0, served, other * words, open, 0)));
  }

  private boolean ruled(long spare, long dearer) {
    return dearer < RelaxedDay.NEVER && duals.costScale * dearer <= spare;
  }

  private void put(int k) {
    if (size == visit.length) {
      grow();
    }
    runs.append(next, k, 1);
    visit[size] = to;
    toll[size] = toToll;
    sum[size] = runSum;
    carried[size] = toCarried;
    place[size] = toPlace;
    halves[size] = toHalves;
    parent[size] = from;
    System.arraycopy(toMemory, 0, memory, size * words, words);
    if (ruled) {
      System.arraycopy(toServed, 0, served, size * words, words);
    }
    waiting[(runA - day.from) / width].add(size);
    size++;
  }

  private void grow() {
    int more = 2 * size;
    visit = Arrays.copyOf(visit, more);
    toll = Arrays.copyOf(toll, more);
    sum = Arrays.copyOf(sum, more);
    fallen = Arrays.copyOf(fallen, more);
    carried = Arrays.copyOf(carried, more);
    place = Arrays.copyOf(place, more);
    halves = Arrays.copyOf(halves, more);
    parent = Arrays.copyOf(parent, more);
    memory = Arrays.copyOf(memory, more * words);
    served = Arrays.copyOf(served, ruled ? more * words : 0);
  }

  private void end(int label, boolean single) {
    int i = visit[label];
    if (ruled && !terms.mayEnd(served, label * words, i)) {
      return;
    }
    long cost = step.end(i, runs.a[label], runs.b[label], runs.c[label], runs.taken[label], single);
    if (cost < RelaxedDay.NEVER) {
      cost += ruled ? terms.endPrice(served, label * words, i) : 0;
      long reduced = toll[label] + duals.costScale * cost;
      if (reduced < limit) {
        least = Math.min(least, reduced);
        ends.add(new End(label, reduced, cost));
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

  /** {@return the cheapest days found, each set once} */
  List<FoundDay> cheapest(int most) {
    ends.sort(Comparator.comparingLong(End::reduced).thenComparingInt(End::label));
    List<FoundDay> found = new ArrayList<>();
    List<BookingSet> sets = new ArrayList<>();
    for (End end : ends) {
      int[] order = order(end.label());
      BookingSet set = BookingSet.of(order);
      if (!sets.contains(set)) {
        sets.add(set);
        found.add(new FoundDay(order, end.cost()));
        if (found.size() == most) {
          break;
        }
      }
    }
    return found;
  }

  private int[] order(int label) {
    int[] order = new int[place[label]];
    for (int k = label; k >= 0; k = parent[k]) {
      order[place[k] - 1] = visit[k];
    }
    return order;
  }
}
