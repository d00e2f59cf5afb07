package dev.dogleg.plan.week;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.BooleanSupplier;

/**
 * Every set of visits that a plain day may serve within a reduced cost, each at its least cost.
 *
 * <p>Maintainers: routes are listed as by Baldacci, Christofides, Mingozzi 2008 (Mathematical
 * Programming 115:351-385): partial days from the start, set size by set size, each going on only
 * where a label from the end joins it to a day within the room. Of partial days with the same set
 * and last visit one falls that is neither cheaper nor earlier than another. Cuts count in full.
 * One thread.
 */
final class PlainSets {
  private final VanKind kind;
  private final PlainSide side;
  private final PlainDay day;
  private final PlainCuts cuts;
  private final PlainLabels evening;
  private final long most;
  private final int words;
  private final int cutWords;
  private final ListedSets found;
  private final Map<BookingSet, Long> least = new LinkedHashMap<>();
  private PlainLevel level;
  private PlainLevel larger;
  private long steps;

  /**
   * Sets up.
   *
   * @param kind kind of van-day
   * @param side the morning's side at the prices in force
   * @param cuts the cuts in force
   * @param evening labels from the end of the whole day, up to the same reduced cost
   * @param most greatest reduced cost of interest, in parts
   */
  PlainSets(VanKind kind, PlainSide side, PlainCuts cuts, PlainLabels evening, long most) {
    this.kind = kind;
    this.side = side;
    this.cuts = cuts;
    this.evening = evening;
    this.most = most;
    day = side.day();
    words = day.words;
    cutWords = cuts.words;
    found = new ListedSets(words);
    level = new PlainLevel(words, cutWords);
    larger = new PlainLevel(words, cutWords);
  }

  /**
   * Runs.
   *
   * @param mostSets partial days kept, after which it gives up
   * @param stop asked now and then
   * @return whether every set was thought of
   */
  boolean run(int mostSets, BooleanSupplier stop) {
    start();
    int kept = 0;
    while (level.size() > 0) {
      for (int label = 0; label < level.size(); label++) {
        if (!level.fallen(label)) {
          kept++;
          end(label);
          extend(label);
        }
        boolean ask = label % 1024 == 1023;
        if (kept + larger.size() > mostSets || (ask && stop.getAsBoolean())) {
          return false;
        }
      }
      PlainLevel done = level;
      level = larger;
      larger = done;
      larger.clear();
    }
    least.forEach((set, cost) -> found.add(set.row(words), 0, cost));
    return true;
  }

  private void start() {
    long[] none = new long[words];
    long[] unmet = new long[cutWords];
    for (int j = 0; j < day.n; j++) {
      int begin = Math.max(day.open[j], day.startStep[j]);
      if (begin <= day.close[j] && day.load[j] <= day.mostLoad) {
        level.go(none, 0, unmet, 0, cuts, j);
        level.put(
            begin, day.load[j], day.startCost[j] + kind.extraSixtieths(j), side.values().starts[j]);
      }
    }
  }

  private void extend(int label) {
    int i = level.visit[label];
    for (int j = 0; j < day.n; j++) {
      int there = level.begin[label] + day.step[i * day.n + j];
      int carried = level.carried[label] + day.load[j];
      if (there > day.close[j]
          || carried > day.mostLoad
          || (level.sets[label * words + (j >>> 6)] >>> j & 1) != 0) {
        continue;
      }
      int begin = Math.max(there, day.open[j]);
      long sum = level.sum[label] + side.values().arcs[i * day.n + j];
      if (sum + side.floor().of(j, i, begin, carried) > most || !joins(label, i, j, there)) {
        continue;
      }
      steps++;
      sum += larger.go(level.sets, label * words, level.met, label * cutWords, cuts, j);
      long cost = level.cost[label] + day.cost[i * day.n + j] + kind.extraSixtieths(j);
      larger.put(begin, carried, cost, sum);
    }
  }

  /** Whether a label from the end makes a day within the room of it. */
  private boolean joins(int label, int i, int j, int there) {
    long soFar = level.sum[label] + side.values().ways[i * day.n + j];
    int left = day.length - there;
    int mostLater = day.mostLoad - level.carried[label];
    for (int cell = 0; cell <= evening.cellOf(left); cell++) {
      LabelBag bag = evening.labels(j, cell);
      for (int k = 0; bag != null && k < bag.size && soFar + bag.sum[k] <= most; k++) {
        int other = bag.label[k];
        if (bag.earliest[k] <= left
            && evening.carried[other] <= mostLater
            && apart(label, other)
            && soFar + bag.sum[k] + charged(label, other) <= most) {
          return true;
        }
      }
    }
    return false;
  }

  private boolean apart(int label, int other) {
    for (int w = 0; w < words; w++) {
      if ((level.sets[label * words + w] & evening.memory[other * words + w]) != 0) {
        return false;
      }
    }
    return true;
  }

  private long charged(int label, int other) {
    long sum = 0;
    for (int w = 0; w < cutWords; w++) {
      long both = level.met[label * cutWords + w] & evening.met[other * cutWords + w];
      sum += cuts.sum(both, w);
    }
    return sum;
  }

  private void end(int label) {
    int i = level.visit[label];
    if (level.begin[label] + day.endStep[i] <= day.length
        && level.sum[label] + side.values().ends[i] <= most) {
      int at = label * words;
      long cost = level.cost[label] + day.endCost[i];
      least.merge(BookingSet.ofRow(level.sets, at, words), cost, Math::min);
    }
  }

  long steps() {
    return steps;
  }

  /** {@return the sets found} */
  ListedSets found() {
    return found;
  }
}
