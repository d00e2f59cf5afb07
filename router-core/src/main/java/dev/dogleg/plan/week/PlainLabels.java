package dev.dogleg.plan.week;

import java.util.Arrays;
import java.util.function.BooleanSupplier;

/**
 * Partial days of a plain day, grown from one of its ends up to a second of the day.
 *
 * <p>Maintainers: label setting in order of time with ng-memory (Baldacci, Mingozzi, Roberti 2011)
 * and cuts of limited memory. A partial day falls where another of the same visit is begun no
 * later, carries no more, remembers none that may still follow but those it remembers, and costs no
 * more even if the cuts that only that one has met are charged. Labels of a visit lie in cells of
 * time, each sorted by price, so that a look at a cell ends early. One thread.
 */
final class PlainLabels {
  private static final int CELLS = 48;

  private final PlainDay day;
  private final PlainOpen reach;
  private final PlainFloor floor;
  private final PlainCuts cuts;
  private final PlainValues values;
  private final NearVisits near;
  private final int border;
  private final long limit;
  private final boolean quick;
  private final int words;
  private final int cutWords;
  private final int cellWidth;
  private final LabelBag[] bags;
  private final IntBag[] waiting;
  private final int waitWidth;

  private int size;
  int[] visit = new int[1024];
  int[] begin = new int[1024];
  int[] carried = new int[1024];
  int[] parent = new int[1024];
  long[] sum = new long[1024];
  long[] memory;
  long[] met;
  private boolean[] fallen = new boolean[1024];

  private int to;
  private int toBegin;
  private int toCarried;
  private long toSum;
  private final long[] toMemory;
  private final long[] toMet;
  private final long[] open;
  private final long[] nobody;

  /**
   * Sets up.
   *
   * @param side the end of the day from which labels grow, with its tables
   * @param cuts the cuts in force
   * @param near what is remembered where
   * @param border labels that begin their visit later than this second are not made
   * @param limit days of this reduced cost or more are of no interest
   * @param quick whether labels fall whatever they remember: finds days, proves nothing
   */
  PlainLabels(
      PlainSide side, PlainCuts cuts, NearVisits near, int border, long limit, boolean quick) {
    day = side.day();
    reach = side.reach();
    floor = side.floor();
    values = side.values();
    this.cuts = cuts;
    this.near = near;
    this.border = border;
    this.limit = limit;
    this.quick = quick;
    words = day.words;
    cutWords = cuts.words;
    cellWidth = day.length / CELLS + 1;
    bags = new LabelBag[day.n * CELLS];
    waitWidth = Math.max(1, Math.min(day.leastStep(), day.length / CELLS));
    waiting = new IntBag[day.length / waitWidth + 1];
    Arrays.setAll(waiting, k -> new IntBag());
    memory = new long[1024 * words];
    met = new long[1024 * cutWords];
    toMemory = new long[words];
    toMet = new long[cutWords];
    open = new long[words];
    nobody = new long[words];
  }

  /**
   * Runs.
   *
   * @param most labels made, after which it gives up
   * @param stop asked now and then; once true, it gives up
   * @return whether every partial day up to the border was thought of
   */
  boolean run(int most, BooleanSupplier stop) {
    for (int j = 0; j < day.n; j++) {
      toBegin = Math.max(day.open[j], day.startStep[j]);
      if (toBegin <= day.close[j] && toBegin <= border && day.load[j] <= day.mostLoad) {
        to = j;
        toCarried = day.load[j];
        toSum = values.starts[j];
        Arrays.fill(toMemory, 0);
        toMemory[j >>> 6] |= 1L << j;
        System.arraycopy(cuts.naming, j * cutWords, toMet, 0, cutWords);
        offer(-1);
      }
    }
    for (IntBag bag : waiting) {
      for (int k = 0; k < bag.size(); k++) {
        if (!fallen[bag.get(k)]) {
          extend(bag.get(k));
        }
        if (size > most || (k % 1024 == 1023 && stop.getAsBoolean())) {
          return false;
        }
      }
    }
    return !quick;
  }

  private void extend(int label) {
    int i = visit[label];
    for (int j = 0; j < day.n; j++) {
      int there = begin[label] + day.step[i * day.n + j];
      if (there > day.close[j]
          || carried[label] + day.load[j] > day.mostLoad
          || (memory[label * words + (j >>> 6)] >>> j & 1) != 0) {
        continue;
      }
      toBegin = Math.max(there, day.open[j]);
      toCarried = carried[label] + day.load[j];
      toSum = sum[label] + values.arcs[i * day.n + j];
      // The floor without cuts first: it needs no sets.
      if (toBegin > border || toSum + floor.of(j, i, toBegin, toCarried) >= limit) {
        continue;
      }
      to = j;
      long[] remembered = near.of(j);
      for (int w = 0; w < words; w++) {
        toMemory[w] = memory[label * words + w] & remembered[w];
      }
      toMemory[j >>> 6] |= 1L << j;
      for (int w = 0; w < cutWords; w++) {
        long kept = met[label * cutWords + w] & cuts.keeping[j * cutWords + w];
        long named = cuts.naming[j * cutWords + w];
        toSum += cuts.sum(kept & named, w);
        toMet[w] = kept ^ named;
      }
      offer(label);
    }
  }

  private void offer(int from) {
    int before = from < 0 ? -1 : visit[from];
    if (toSum + floor.of(to, before, toBegin, toCarried) < limit && !falls()) {
      put(from);
    }
  }

  private LabelBag bag(int j, int cell) {
    return bags[j * CELLS + cell];
  }

  /** Whether a known label makes the one at hand useless; if not, it takes its place. */
  private boolean falls() {
    int cell = toBegin / cellWidth;
    int row = reach.index(to, toBegin) * words;
    for (int w = 0; w < words; w++) {
      open[w] = reach.rows()[row + w] & ~toMemory[w];
    }
    long[] known = quick ? nobody : open;
    for (int c = 0; c <= cell; c++) {
      LabelBag bag = bag(to, c);
      if (bag != null && bag.size > 0 && bag.sum[0] <= toSum && fallsTo(bag, known)) {
        return true;
      }
    }
    for (int c = cell; c < CELLS; c++) {
      LabelBag bag = bag(to, c);
      if (bag != null && bag.size > 0 && bag.sum[bag.size - 1] >= toSum) {
        beats(bag);
      }
    }
    return false;
  }

  private boolean fallsTo(LabelBag bag, long[] known) {
    int cheaper = bag.upTo(toSum);
    for (int k = bag.nextUnder(0, cheaper, toBegin, known);
        k < cheaper;
        k = bag.nextUnder(k + 1, cheaper, toBegin, known)) {
      int other = bag.label[k];
      if (carried[other] <= toCarried
          && (quick || charged(met, other * cutWords, toMet, 0) <= toSum - bag.sum[k])) {
        return true;
      }
    }
    return false;
  }

  private void beats(LabelBag bag) {
    int first = bag.upTo(toSum - 1);
    int kept = first;
    for (int k = first; k < bag.size; k++) {
      int other = bag.label[k];
      if (bag.earliest[k] >= toBegin
          && carried[other] >= toCarried
          && (quick
              || (remembersNoMore(other)
                  && charged(toMet, 0, met, other * cutWords) <= bag.sum[k] - toSum))) {
        fallen[other] = true;
      } else {
        if (kept < k) {
          bag.move(k, kept);
        }
        kept++;
      }
    }
    bag.size = kept;
  }

  private boolean remembersNoMore(int other) {
    int row = reach.index(to, begin[other]) * words;
    for (int w = 0; w < words; w++) {
      if ((toMemory[w] & reach.rows()[row + w] & ~memory[other * words + w]) != 0) {
        return false;
      }
    }
    return true;
  }

  /** Prices of the cuts that one label has met and another has not. */
  private long charged(long[] one, int at, long[] other, int otherAt) {
    long sum = 0;
    for (int w = 0; w < cutWords; w++) {
      sum += cuts.sum(one[at + w] & ~other[otherAt + w], w);
    }
    return sum;
  }

  private void put(int from) {
    if (size == visit.length) {
      grow();
    }
    visit[size] = to;
    begin[size] = toBegin;
    carried[size] = toCarried;
    sum[size] = toSum;
    parent[size] = from;
    System.arraycopy(toMemory, 0, memory, size * words, words);
    System.arraycopy(toMet, 0, met, size * cutWords, cutWords);
    int at = to * CELLS + toBegin / cellWidth;
    if (bags[at] == null) {
      bags[at] = new LabelBag(words);
    }
    bags[at].insert(bags[at].upTo(toSum), size, toBegin, toSum, toMemory);
    waiting[toBegin / waitWidth].add(size);
    size++;
  }

  private void grow() {
    int more = 2 * size;
    visit = Arrays.copyOf(visit, more);
    begin = Arrays.copyOf(begin, more);
    carried = Arrays.copyOf(carried, more);
    parent = Arrays.copyOf(parent, more);
    sum = Arrays.copyOf(sum, more);
    fallen = Arrays.copyOf(fallen, more);
    memory = Arrays.copyOf(memory, more * words);
    met = Arrays.copyOf(met, more * cutWords);
  }

  /** {@return number of labels made} */
  int size() {
    return size;
  }

  boolean fallen(int label) {
    return fallen[label];
  }

  /** {@return cells of time in which the labels of a visit lie} */
  int cells() {
    return CELLS;
  }

  /** {@return the cell of a second} */
  int cellOf(int second) {
    return second / cellWidth;
  }

  /** {@return labels that have not fallen, by price; null: none} */
  LabelBag labels(int visitAt, int cell) {
    return bag(visitAt, cell);
  }

  /** {@return the visits of a label, from its end of the day on} */
  int[] path(int label) {
    int count = 0;
    for (int k = label; k >= 0; k = parent[k]) {
      count++;
    }
    int[] path = new int[count];
    for (int k = label; k >= 0; k = parent[k]) {
      path[--count] = visit[k];
    }
    return path;
  }
}
