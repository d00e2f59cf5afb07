package dev.dogleg.plan;

import dev.dogleg.schedule.BreakAt;
import dev.dogleg.schedule.DayModel;
import dev.dogleg.schedule.RunEnvelope;
import dev.dogleg.schedule.StopStep;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Finds the best day below a limit, or shows that there is none.
 *
 * <p>Maintainers: dynamic programming over (visits served, last visit, break taken or not), level
 * by level in the number of visits; each state holds the {@link RunEnvelope} of being ready to
 * leave the last door. A run is dropped where its cost plus {@link CompletionBound} is not below
 * the limit. States are reached lazily, so windows and bound decide how many there are. Exact
 * because a run is dropped only for another that is nowhere worse, or by a bound that no completion
 * can beat.
 */
final class DaySearch {
  private final DayModel day;
  private final DayValue value;
  private final CompletionBound bound;
  private final WorkMeter meter;
  private final StopStep step;
  private final VisitSets sets;
  private final Trails trails = new Trails();
  private final RunEnvelope scratch;
  private final int n;
  private final int beam;

  private long best;
  private int bestTrail = -1;
  private boolean found;
  private boolean complete = true;
  private long openBound = DayValue.NONE;

  private List<Node> level = new ArrayList<>();
  private List<Node> next = new ArrayList<>();
  private int[] nodeOf = new int[64];

  /** One set of the present level with the functions of its last visits. */
  private final class Node {
    private final int set;
    private final long leftOut;
    private long hope = DayValue.NONE;
    private final RunEnvelope[] runs = new RunEnvelope[2 * n];

    Node(int set, long leftOut) {
      this.set = set;
      this.leftOut = leftOut;
    }

    RunEnvelope of(int last, boolean taken) {
      int at = 2 * last + (taken ? 1 : 0);
      if (runs[at] == null) {
        runs[at] = new RunEnvelope(day.waitPrice());
      }
      return runs[at];
    }
  }

  /**
   * A search for a value below {@code limit}; with a {@code beam} above 0 it keeps only so many
   * sets of each size, the most hopeful ones, and is not complete.
   */
  DaySearch(
      DayModel day, DayValue value, CompletionBound bound, long limit, int beam, WorkMeter meter) {
    this.beam = beam;
    this.day = day;
    this.value = value;
    this.bound = bound;
    this.best = limit;
    this.meter = meter;
    this.n = day.size();
    this.step = new StopStep(day);
    this.sets = new VisitSets(n);
    this.scratch = new RunEnvelope(day.waitPrice());
  }

  /** Runs to the end or until the meter is spent. */
  void run() {
    Arrays.fill(nodeOf, -1);
    offer(value.allLeftOut(), -1);
    RunEnvelope start = new RunEnvelope(day.waitPrice());
    start.add(day.from(), day.latestEnd(), day.latestEnd(), 0, -1);
    for (int j = 0; j < n; j++) {
      extend(start, 0, day.start(), j, BreakAt.NOWHERE, false, value.allLeftOut());
    }
    while (!next.isEmpty()) {
      List<Node> done = level;
      level = next;
      done.clear();
      next = done;
      narrow();
      for (int at = 0; at < level.size(); at++) {
        if (meter.spent()) {
          stopAt(at);
          return;
        }
        expand(level.get(at));
      }
    }
  }

  private void narrow() {
    if (beam > 0 && level.size() > beam) {
      level.sort((x, y) -> Long.compare(x.hope, y.hope));
      level.subList(beam, level.size()).clear();
      complete = false;
      openBound = 0;
    }
  }

  private void expand(Node node) {
    for (int i = 0; i < n; i++) {
      RunEnvelope open = node.runs[2 * i];
      RunEnvelope taken = node.runs[2 * i + 1];
      if (open != null) {
        end(node, open, i, false);
        for (int j = 0; j < n; j++) {
          if (!sets.holds(node.set, j) && !day.first(j)) {
            extend(open, node.set, i, j, BreakAt.NOWHERE, false, node.leftOut);
            if (day.hasBreak()) {
              extend(open, node.set, i, j, BreakAt.BEFORE_LEAVING, true, node.leftOut);
              extend(open, node.set, i, j, BreakAt.ON_ARRIVAL, true, node.leftOut);
            }
          }
        }
      }
      if (taken != null) {
        end(node, taken, i, true);
        for (int j = 0; j < n; j++) {
          if (!sets.holds(node.set, j) && !day.first(j)) {
            extend(taken, node.set, i, j, BreakAt.NOWHERE, true, node.leftOut);
          }
        }
      }
    }
  }

  private void extend(
      RunEnvelope source, int set, int i, int j, BreakAt breakAt, boolean taken, long leftOut) {
    int with = sets.with(set, j);
    long rest = bound.after(sets, with, j, true, 0);
    if (rest >= best) {
      return;
    }
    meter.count(source.size());
    scratch.clear();
    step.limit(Math.min(day.latestEnd(), bound.latest(sets, with, j)), best - rest);
    for (int run = 0; run < source.size(); run++) {
      step.linger(longestLinger(source, run, set, i, taken && breakAt == BreakAt.NOWHERE));
      step.toVisit(source, run, i, j, breakAt, scratch, source.trail(run));
    }
    bound.clip(scratch, sets, with, j, taken, best);
    Node reached = null;
    RunEnvelope target = null;
    int lastFrom = -2;
    int trail = -1;
    for (int run = 0; run < scratch.size(); run++) {
      long total = scratch.cost(run) + bound.after(sets, with, j, taken, scratch.earliest(run));
      if (total >= best) {
        continue;
      }
      if (target == null) {
        reached = node(with, leftOut - value.leftOut(j));
        target = reached.of(j, taken);
      }
      reached.hope = Math.min(reached.hope, total);
      if (trail < 0 || scratch.trail(run) != lastFrom) {
        lastFrom = scratch.trail(run);
        trail = trails.add(lastFrom, j);
      }
      target.add(
          scratch.earliest(run),
          scratch.unpaidUntil(run),
          scratch.leaveBy(run),
          scratch.cost(run),
          trail);
    }
  }

  /** Longest paid waiting at a served door after which the best known can still be beaten. */
  private long longestLinger(RunEnvelope source, int run, int set, int i, boolean taken) {
    if (!bound.timed() || i >= n || day.waitPrice() == 0) {
      return Long.MAX_VALUE;
    }
    int from = source.unpaidUntil(run);
    long rest = bound.after(sets, set, i, true, from);
    if (!taken) {
      rest = Math.min(rest, bound.after(sets, set, i, false, from));
    }
    return Math.max(0, best - source.cost(run) - rest) / day.waitPrice();
  }

  private Node node(int set, long leftOut) {
    if (set >= nodeOf.length) {
      int old = nodeOf.length;
      nodeOf = Arrays.copyOf(nodeOf, Math.max(set + 1, old * 2));
      Arrays.fill(nodeOf, old, nodeOf.length, -1);
    }
    if (nodeOf[set] < 0) {
      nodeOf[set] = next.size();
      next.add(new Node(set, leftOut));
    }
    return next.get(nodeOf[set]);
  }

  private void end(Node node, RunEnvelope source, int i, boolean taken) {
    boolean single = node.set == sets.with(0, i);
    int endBy = day.latestEnd();
    if (day.hasBreak() && !taken && !single) {
      endBy = Math.min(endBy, day.breakFrom());
    }
    for (int run = 0; run < source.size(); run++) {
      step.toEnd(source, run, i, endBy, (end, cost, trail) -> offer(cost + node.leftOut, trail));
    }
  }

  private void offer(long total, int trail) {
    if (total < best) {
      best = total;
      bestTrail = trail;
      found = true;
    }
  }

  private void stopAt(int at) {
    complete = false;
    for (Node node : level.subList(at, level.size())) {
      lower(node);
    }
    next.forEach(this::lower);
  }

  private void lower(Node node) {
    for (int i = 0; i < n; i++) {
      for (int k = 2 * i; k <= 2 * i + 1; k++) {
        RunEnvelope runs = node.runs[k];
        for (int run = 0; runs != null && run < runs.size(); run++) {
          long rest = bound.after(sets, node.set, i, k % 2 == 1, runs.earliest(run));
          openBound = Math.min(openBound, runs.cost(run) + rest);
        }
      }
    }
  }

  /** {@return whether a day below the limit was found} */
  boolean found() {
    return found;
  }

  /** {@return its visits in order} */
  int[] order() {
    return trails.order(bestTrail);
  }

  /** {@return its value, or the limit} */
  long best() {
    return best;
  }

  /** {@return whether everything below the limit was looked at} */
  boolean complete() {
    return complete;
  }

  /** {@return no day is worth less than this} */
  long lowerBound() {
    return Math.min(best, openBound);
  }
}
