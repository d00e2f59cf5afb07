package dev.dogleg.plan.week;

import dev.dogleg.schedule.StepTerms;
import java.util.Arrays;
import java.util.function.BooleanSupplier;

/**
 * All sets of bookings that a van-day may serve, each with a cost that it cannot be below: one
 * sweep over (set, last visit) of the relaxed day, set size by set size.
 *
 * <p>Maintainers: Held and Karp 1962 with runs as values. All runs of a set and last visit come
 * from one smaller set, so they are made at once and then only read. What rules say depends on the
 * set, its last visit and the next one alone, so every rule counts exactly. A set is extended even
 * where it cannot end itself: a break may still become possible. One thread.
 */
final class SetSweep {
  /**
   * Which partial days are worth going on with; told first which set and last visit it is about.
   */
  interface Keep {
    /** Every one. */
    Keep ALL =
        new Keep() {
          @Override
          public void next(long[] set, int last, long extra) {
            // All the same.
          }

          @Override
          public int left(int freshUsed, int greyMade) {
            return 0;
          }

          @Override
          public int mayGo(int i, int a, long cost, boolean taken, int left, int service) {
            return RestGlance.STRAIGHT | RestGlance.BY_WATER;
          }

          @Override
          public boolean keep(int a, long cost, boolean taken, int left) {
            return true;
          }
        };

    /**
     * What is asked next is about the partial days of a set and last visit.
     *
     * @param set local numbers of the bookings served, one bit each; only to be read
     * @param last the visit served last
     * @param extra extra prices of the bookings served
     */
    void next(long[] set, int last, long extra);

    /**
     * What is left of the tanks, in the keeper's own measure.
     *
     * @param freshUsed fresh water used since they were last full and empty, in millilitres
     * @param greyMade grey water made since then
     */
    int left(int freshUsed, int greyMade);

    /**
     * A glance before a partial day goes on to the last visit.
     *
     * @param i the visit before it
     * @param a earliest second at which the van is ready to leave that one
     * @param cost what the day costs at least so far, with what rules charge for the step
     * @param taken whether the break is taken
     * @param left what is left of the tanks at the visit before, see {@link #left}
     * @param service seconds of the last visit
     * @return the ways it goes on by, see {@link RestGlance#mayGo}; what would become of it by
     *     another may be missing
     */
    int mayGo(int i, int a, long cost, boolean taken, int left, int service);

    /**
     * Asked of every partial day, once those of its set and last visit are compared.
     *
     * @param a earliest second at which the van is ready to leave the last visit
     * @param cost what the day costs at least so far, with what rules charge for the order so far
     * @param taken whether the break is taken
     * @param left what is left of the tanks, see {@link #left}
     * @return false: it, and all that would become of it, may be missing
     */
    boolean keep(int a, long cost, boolean taken, int left);
  }

  private final RelaxedDay day;
  private final RunStep step;
  private final StepTerms terms;
  private final long[] extra;
  private final int words;
  private final int mostSets;
  private final int mostFound;
  private final Keep keep;
  private final StopNeed stops;
  private final long[] grown;
  private final RunBuffer runs;
  private SetLevel level;
  private SetLevel larger;
  private long stepsDone;
  private boolean complete = true;
  private final ListedSets found;

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
    this.mostSets = mostSets;
    this.mostFound = mostFound;
    this.keep = keep;
    day = kind.relaxed();
    step = new RunStep(kind);
    terms = step.terms();
    words = Math.max(1, (day.n + Long.SIZE - 1) / Long.SIZE);
    found = new ListedSets(words);
    extra = new long[day.n];
    Arrays.setAll(extra, kind::extraSixtieths);
    level = new SetLevel(words, step.water());
    larger = new SetLevel(words, step.water());
    runs = step.buffer();
    grown = new long[words];
    stops = new StopNeed(kind);
  }

  /**
   * Runs; afterwards everything found can be asked for.
   *
   * @param stop asked at every set; once true, the sweep gives up, see {@link #complete}
   */
  SetSweep run(BooleanSupplier stop) {
    start();
    int seen = 0;
    for (int size = 1; level.size() > 0; size++) {
      for (int set = 0; set < level.size(); set++) {
        finish(set);
        grow(set, size);
        boolean full = ++seen + larger.size() > mostSets || found.size() > mostFound;
        if (full || stop.getAsBoolean()) {
          complete = false;
          return this;
        }
      }
      turn();
    }
    return this;
  }

  private void turn() {
    SetLevel done = level;
    level = larger;
    larger = done;
    larger.clear();
  }

  private void start() {
    RunArena morning = new RunArena(step.water());
    RunBuffer one = step.buffer();
    one.add(day.from, day.latestEnd, 0, false, 0, 0, 0);
    morning.append(one);
    long[] empty = new long[words];
    StopNeed need = stops.mayBeNeeded(empty, 0, day.from) ? stops : null;
    for (int j = 0; j < day.n; j++) {
      if (step.reaches(day.start(), j) && terms.may(empty, 0, day.n, j, 1)) {
        runs.clear();
        if (need != null) {
          need.next(j);
        }
        long price = terms.price(empty, 0, day.n, j, 1);
        int service = terms.service(day.n, j, 1);
        step.visit(day.start(), morning, 0, j, service, price, need, RestGlance.STRAIGHT, runs);
        stepsDone++;
        grownBy(empty, 0, j);
        keep.next(grown, j, extra[j]);
        keepAndAdd(j);
      }
    }
    turn();
  }

  /** Extends a set by each visit that may come next. */
  private void grow(int set, int size) {
    long[] rows = level.rows();
    int at = set * words;
    long extraSoFar = extra(rows, at);
    int earliest = level.earliest(set);
    StopNeed need = stops.mayBeNeeded(rows, at, earliest) ? stops : null;
    for (int j : stops.byNeed) {
      if (earliest + stops.need[j] > day.latestEnd) {
        break;
      }
      if ((rows[at + (j >>> 6)] >>> j & 1) != 0 || day.first[j]) {
        continue;
      }
      runs.clear();
      grownBy(rows, at, j);
      keep.next(grown, j, extraSoFar + extra[j]);
      if (need != null) {
        need.next(j);
      }
      for (int state = level.head(set); state >= 0; state = level.next(state)) {
        int i = level.last(state);
        if (step.reaches(i, j) && terms.may(rows, at, i, j, size + 1)) {
          long price = terms.price(rows, at, i, j, size + 1);
          int service = terms.service(i, j, size + 1);
          int to = level.to(state);
          for (int run = level.from(state); run < to; run++) {
            int ways = mayGo(i, run, price, j, service);
            if (ways != 0) {
              step.visit(i, level.runs, run, j, service, price, need, ways, runs);
              stepsDone++;
            }
          }
        }
      }
      keepAndAdd(j);
    }
  }

  private int mayGo(int i, int run, long price, int j, int service) {
    RunArena from = level.runs;
    int a = from.a[run];
    return step.tooLate(i, a, j, service)
        ? 0
        : keep.mayGo(i, a, from.c[run] + price, from.taken[run], from.left(keep, run), service);
  }

  private void grownBy(long[] rows, int at, int j) {
    System.arraycopy(rows, at, grown, 0, words);
    grown[j >>> 6] |= 1L << j;
  }

  private void keepAndAdd(int j) {
    runs.keep(keep);
    if (runs.size == 0) {
      return;
    }
    long cost = RelaxedDay.NEVER;
    if (terms.mayEnd(grown, 0, j)) {
      cost = step.end(j, runs, single(grown));
      cost = cost >= RelaxedDay.NEVER ? cost : cost + terms.endPrice(grown, 0, j);
    }
    larger.add(grown, j, runs, cost);
  }

  /** Whether a set holds one visit only. */
  static boolean single(long[] set) {
    int count = 0;
    for (long word : set) {
      count += Long.bitCount(word);
    }
    return count == 1;
  }

  private void finish(int set) {
    long least = level.least(set);
    if (least >= RelaxedDay.NEVER) {
      return;
    }
    long cost = least + extra(level.rows(), set * words);
    found.add(
        level.rows(),
        set * words,
        terms.pricesGroom() ? cost + groomPrice(level.rows(), set) : cost);
  }

  private long groomPrice(long[] rows, int set) {
    long seconds = 0;
    for (int j = 0; j < day.n; j++) {
      if ((rows[set * words + (j >>> 6)] >>> j & 1) != 0) {
        seconds += step.leastService(j);
      }
    }
    return terms.groomPrice(seconds);
  }

  private long extra(long[] rows, int at) {
    long sum = 0;
    for (int w = 0; w < words; w++) {
      for (long left = rows[at + w]; left != 0; left &= left - 1) {
        sum += extra[w * Long.SIZE + Long.numberOfTrailingZeros(left)];
      }
    }
    return sum;
  }

  /** {@return whether every possible set was found, of those kept} */
  boolean complete() {
    return complete;
  }

  long steps() {
    return stepsDone;
  }

  /** {@return the sets found} */
  ListedSets found() {
    return found;
  }

  /** {@return number of sets found} */
  int size() {
    return found.size();
  }

  /** {@return local numbers of the bookings of a set, rising} */
  int[] set(int k) {
    return found.set(k);
  }

  /** {@return what serving just this set costs at least, extra prices of choices included} */
  long cost(int k) {
    return found.cost(k);
  }
}
