package dev.dogleg.plan.week;

import java.util.Arrays;

/**
 * Partial days of a plain day that serve equally many visits; of those with the same set and last
 * visit only the ones that are cheaper or earlier than each other stand. Mutable, one thread.
 */
final class PlainLevel {
  private static final int NONE = -1;

  private final int words;
  private final int cutWords;
  private int size;
  int[] visit = new int[256];
  int[] begin = new int[256];
  int[] carried = new int[256];
  long[] cost = new long[256];
  long[] sum = new long[256];
  long[] sets;
  long[] met;
  private int[] next = new int[256];
  private boolean[] fallen = new boolean[256];
  private int[] heads = new int[1024];
  private int to;
  private final long[] toSet;
  private final long[] toMet;

  PlainLevel(int words, int cutWords) {
    this.words = words;
    this.cutWords = cutWords;
    sets = new long[256 * words];
    met = new long[256 * cutWords];
    toSet = new long[words];
    toMet = new long[cutWords];
    Arrays.fill(heads, NONE);
  }

  int size() {
    return size;
  }

  boolean fallen(int label) {
    return fallen[label];
  }

  void clear() {
    size = 0;
    Arrays.fill(heads, NONE);
  }

  /**
   * A partial day goes on to a visit; {@link #put} says how.
   *
   * @param rows sets, and the first word of what is served so far
   * @param at first word
   * @param odd sets of cuts
   * @param oddAt first word of the cuts met an odd number of times so far
   * @param cuts the cuts in force
   * @param j the visit
   * @return what the cuts charge for it, in parts
   */
  long go(long[] rows, int at, long[] odd, int oddAt, PlainCuts cuts, int j) {
    to = j;
    System.arraycopy(rows, at, toSet, 0, words);
    toSet[j >>> 6] |= 1L << j;
    long charged = 0;
    for (int w = 0; w < cutWords; w++) {
      long named = cuts.naming[j * cutWords + w];
      charged += cuts.sum(odd[oddAt + w] & named, w);
      toMet[w] = odd[oddAt + w] ^ named;
    }
    return charged;
  }

  /**
   * Puts it there unless it falls.
   *
   * @param toBegin second at which the visit is begun
   * @param toCarried load points
   * @param toCost sixtieths so far, extra prices included
   * @param toSum reduced cost so far, in parts
   */
  void put(int toBegin, int toCarried, long toCost, long toSum) {
    int slot = slot(toSet, 0, to);
    for (int k = heads[slot]; k != NONE; k = next[k]) {
      if (!fallen[k] && same(k)) {
        if (cost[k] <= toCost && begin[k] <= toBegin) {
          return;
        }
        fallen[k] = cost[k] >= toCost && begin[k] >= toBegin;
      }
    }
    if (size == visit.length) {
      grow();
      slot = slot(toSet, 0, to);
    }
    visit[size] = to;
    begin[size] = toBegin;
    carried[size] = toCarried;
    cost[size] = toCost;
    sum[size] = toSum;
    fallen[size] = false;
    System.arraycopy(toSet, 0, sets, size * words, words);
    System.arraycopy(toMet, 0, met, size * cutWords, cutWords);
    next[size] = heads[slot];
    heads[slot] = size++;
  }

  private boolean same(int label) {
    boolean same = visit[label] == to;
    for (int w = 0; same && w < words; w++) {
      same = sets[label * words + w] == toSet[w];
    }
    return same;
  }

  private int slot(long[] rows, int at, int last) {
    long hash = last;
    for (int w = 0; w < words; w++) {
      hash = (hash ^ rows[at + w]) * 0x9E3779B97F4A7C15L;
      hash ^= hash >>> Integer.SIZE;
    }
    return (int) hash & heads.length - 1;
  }

  private void grow() {
    int more = 2 * size;
    visit = Arrays.copyOf(visit, more);
    begin = Arrays.copyOf(begin, more);
    carried = Arrays.copyOf(carried, more);
    cost = Arrays.copyOf(cost, more);
    sum = Arrays.copyOf(sum, more);
    sets = Arrays.copyOf(sets, more * words);
    met = Arrays.copyOf(met, more * cutWords);
    next = Arrays.copyOf(next, more);
    fallen = Arrays.copyOf(fallen, more);
    heads = new int[4 * more];
    Arrays.fill(heads, NONE);
    for (int k = 0; k < size; k++) {
      int slot = slot(sets, k * words, visit[k]);
      next[k] = heads[slot];
      heads[slot] = k;
    }
  }
}
