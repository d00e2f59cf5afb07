package dev.dogleg.plan.week;

import java.util.Arrays;

/**
 * The partial days that stand at one visit and have not fallen, by reduced cost, with what decides
 * most comparisons side by side. Mutable, one thread.
 */
final class LabelBag {
  private final int words;
  int size;
  int[] label = new int[16];
  int[] earliest = new int[16];
  long[] sum = new long[16];
  long[] memory;

  LabelBag(int words) {
    this.words = words;
    memory = new long[16 * words];
  }

  /** {@return how many of them are no dearer than so much} */
  int upTo(long most) {
    int low = 0;
    int high = size;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (sum[middle] <= most) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /**
   * The next one that is ready no later and remembers none of some visits.
   *
   * @param first where to look first
   * @param end where to stop
   * @param latest ready at this second at the latest
   * @param open the visits, as bits
   * @return its index; {@code end} where there is none
   */
  int nextUnder(int first, int end, int latest, long[] open) {
    int k = first;
    if (words == 1) {
      long bits = open[0];
      while (k < end && ((memory[k] & bits) != 0 || earliest[k] > latest)) {
        k++;
      }
      return k;
    }
    while (k < end && (earliest[k] > latest || remembers(k, open))) {
      k++;
    }
    return k;
  }

  private boolean remembers(int k, long[] open) {
    for (int w = 0; w < words; w++) {
      if ((memory[k * words + w] & open[w]) != 0) {
        return true;
      }
    }
    return false;
  }

  /** Puts one before the one that stands at an index. */
  void insert(int k, int newLabel, int newEarliest, long newSum, long[] newMemory) {
    if (size == label.length) {
      label = Arrays.copyOf(label, 2 * size);
      earliest = Arrays.copyOf(earliest, 2 * size);
      sum = Arrays.copyOf(sum, 2 * size);
      memory = Arrays.copyOf(memory, 2 * size * words);
    }
    int after = size - k;
    System.arraycopy(label, k, label, k + 1, after);
    System.arraycopy(earliest, k, earliest, k + 1, after);
    System.arraycopy(sum, k, sum, k + 1, after);
    System.arraycopy(memory, k * words, memory, (k + 1) * words, after * words);
    label[k] = newLabel;
    earliest[k] = newEarliest;
    sum[k] = newSum;
    System.arraycopy(newMemory, 0, memory, k * words, words);
    size++;
  }

  /** Moves one to an index before it. */
  void move(int k, int to) {
    label[to] = label[k];
    earliest[to] = earliest[k];
    sum[to] = sum[k];
    System.arraycopy(memory, k * words, memory, to * words, words);
  }
}
