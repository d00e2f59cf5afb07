package dev.dogleg.plan.week;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;

/**
 * Joins labels grown from both ends of a plain day to whole days, and keeps the cheapest.
 *
 * <p>Maintainers: a day is cut at the last visit that the van can begin by the border when all is
 * made as early as can be: up to there it is a label of the morning, from there on one of the
 * evening, for what is begun later at the earliest is begun later at the latest too (Righini,
 * Salani 2006, section 3). Cuts met an odd number of times on both sides are charged once more.
 */
final class PlainJoin {
  private static final int NONE = -1;

  private final PlainSide side;
  private final PlainDay day;
  private final PlainCuts cuts;
  private final PlainLabels morning;
  private final PlainLabels evening;
  private final long[] firsts;
  private final int most;
  private final PriorityQueue<Whole> kept;
  private long bound;

  /** A whole day: its labels, or -1, and its reduced cost in parts. */
  private record Whole(long reduced, int morning, int evening) {
    private static final Comparator<Whole> DEAREST_FIRST =
        Comparator.comparingLong((Whole day) -> -day.reduced)
            .thenComparingInt(day -> -day.morning)
            .thenComparingInt(day -> -day.evening);
  }

  /**
   * Sets up.
   *
   * @param side the morning's side
   * @param other the evening's side
   * @param cuts the cuts in force
   * @param morning its labels
   * @param evening its labels
   * @param limit days of this reduced cost or more are of no interest
   * @param most days kept
   */
  PlainJoin(
      PlainSide side,
      PlainSide other,
      PlainCuts cuts,
      PlainLabels morning,
      PlainLabels evening,
      long limit,
      int most) {
    this.side = side;
    this.cuts = cuts;
    this.morning = morning;
    this.evening = evening;
    this.most = most;
    day = side.day();
    firsts = other.values().ends;
    kept = new PriorityQueue<>(Whole.DEAREST_FIRST);
    bound = limit;
  }

  /** Joins all. */
  void run() {
    for (int label = 0; label < evening.size(); label++) {
      int j = evening.visit[label];
      if (!evening.fallen(label) && day.startStep[j] <= day.length - evening.begin[label]) {
        keep(evening.sum[label] + firsts[j], NONE, label);
      }
    }
    for (int label = 0; label < morning.size(); label++) {
      if (!morning.fallen(label)) {
        int i = morning.visit[label];
        if (morning.begin[label] + day.endStep[i] <= day.length) {
          keep(morning.sum[label] + side.values().ends[i], label, NONE);
        }
        for (int j = 0; j < day.n; j++) {
          join(label, i, j);
        }
      }
    }
  }

  private void join(int label, int i, int j) {
    int there = morning.begin[label] + day.step[i * day.n + j];
    int carried = morning.carried[label] + day.load[j];
    if (there > day.close[j]
        || carried > day.mostLoad
        || (morning.memory[label * day.words + (j >>> 6)] >>> j & 1) != 0) {
      return;
    }
    int begin = Math.max(there, day.open[j]);
    long direct = morning.sum[label] + side.values().arcs[i * day.n + j];
    if (direct + side.floor().of(j, i, begin, carried) >= bound) {
      return;
    }
    long soFar = morning.sum[label] + side.values().ways[i * day.n + j];
    int left = day.length - there;
    int mostLater = day.mostLoad - morning.carried[label];
    for (int cell = 0; cell <= evening.cellOf(left); cell++) {
      LabelBag bag = evening.labels(j, cell);
      for (int k = 0; bag != null && k < bag.size && soFar + bag.sum[k] < bound; k++) {
        int other = bag.label[k];
        if (bag.earliest[k] <= left && evening.carried[other] <= mostLater && apart(label, other)) {
          keep(soFar + bag.sum[k] + charged(label, other), label, other);
        }
      }
    }
  }

  private boolean apart(int label, int other) {
    for (int w = 0; w < day.words; w++) {
      if ((morning.memory[label * day.words + w] & evening.memory[other * day.words + w]) != 0) {
        return false;
      }
    }
    return true;
  }

  private long charged(int label, int other) {
    long sum = 0;
    for (int w = 0; w < cuts.words; w++) {
      long both = morning.met[label * cuts.words + w] & evening.met[other * cuts.words + w];
      sum += cuts.sum(both, w);
    }
    return sum;
  }

  private void keep(long reduced, int one, int other) {
    if (reduced < bound) {
      kept.add(new Whole(reduced, one, other));
      if (kept.size() > most) {
        kept.poll();
        bound = kept.element().reduced;
      }
    }
  }

  /**
   * The days kept, cheapest first.
   *
   * @return for each its visits in order; one may stand there twice
   */
  List<int[]> orders() {
    return kept.stream().sorted(Whole.DEAREST_FIRST.reversed()).map(this::order).toList();
  }

  /** {@return no day that is not among those kept has a smaller reduced cost; the limit at most} */
  long least() {
    return kept.stream().mapToLong(Whole::reduced).min().orElse(bound);
  }

  private int[] order(Whole whole) {
    int[] first = whole.morning < 0 ? new int[0] : morning.path(whole.morning);
    int[] last = whole.evening < 0 ? new int[0] : evening.path(whole.evening);
    int[] order = Arrays.copyOf(first, first.length + last.length);
    for (int k = 0; k < last.length; k++) {
      order[order.length - 1 - k] = last[k];
    }
    return order;
  }
}
