package dev.dogleg.plan;

import dev.dogleg.schedule.BreakAt;
import dev.dogleg.schedule.DayModel;
import dev.dogleg.schedule.RunEnvelope;
import dev.dogleg.schedule.StepTerms;
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
  private final StepTerms terms;
  private final TankNeed tanks;
  private final VisitSets sets;
  private final Trails trails = new Trails();
  private final RunEnvelope scratch;
  private final int n;
  private final int beam;
  private SetFloors starts;
  private int widest;

  private long best;
  private int bestTrail = -1;
  private boolean found;
  private boolean complete = true;
  private long openBound = DayValue.NONE;

  private List<Node> level = new ArrayList<>();
  private List<Node> next = new ArrayList<>();
  private int[] nodeOf = new int[64];

  /** Place in the day of the visit to come. */
  private int place;

  /** One set of the present level with the functions of its last visits. */
  private final class Node {
    private final int set;
    private final long leftOut;
    private long hope = DayValue.NONE;
    private final LoadedRuns[] runs = new LoadedRuns[2 * n];

    Node(int set, long leftOut) {
      this.set = set;
      this.leftOut = leftOut;
    }

    LoadedRuns of(int last, boolean taken, LoadedRuns before, int service) {
      int stops = before.stops;
      int fresh = before.fresh + terms.fresh(last);
      int grey = before.grey + terms.grey(last);
      long groomed = terms.pricesGroom() ? before.groomed + service : 0;
      int at = 2 * last + (taken ? 1 : 0);
      LoadedRuns end = null;
      for (LoadedRuns load = runs[at]; load != null; load = load.next) {
        if (load.same(stops, fresh, grey, groomed)) {
          return load;
        }
        end = load;
      }
      RunEnvelope empty = new RunEnvelope(day.waitPrice());
      LoadedRuns made = new LoadedRuns(stops, fresh, grey, groomed, empty);
      if (end == null) {
        runs[at] = made;
      } else {
        end.next = made;
      }
      return made;
    }

    boolean useless(LoadedRuns load, int last, boolean taken, RunEnvelope source, int run) {
      LoadedRuns other = runs[2 * last + (taken ? 1 : 0)];
      for (; other != null; other = other.next) {
        if (other != load && other.makesUseless(load, source, run)) {
          return true;
        }
      }
      return false;
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
    this.terms = day.steps();
    this.tanks = new TankNeed(day, value, limit);
    this.sets = new VisitSets(n);
    this.scratch = new RunEnvelope(day.waitPrice());
  }

  /**
   * Looks roughly: each first visit is driven to at one second only, and few runs are kept; what is
   * found is possible but may not be best.
   */
  DaySearch roughly(SetFloors hopeful, int mostRuns) {
    starts = hopeful;
    widest = mostRuns;
    complete = false;
    openBound = 0;
    return this;
  }

  /** Runs to the end or until the meter is spent. */
  void run() {
    Arrays.fill(nodeOf, -1);
    offer(value.allLeftOut(), -1);
    LoadedRuns nothing = starts == null ? leaving(day.from(), day.latestEnd()) : null;
    place = 1;
    for (int j = 0; j < n; j++) {
      int at = starts == null ? day.from() : starts.hopefulStart(j);
      if (at >= 0) {
        LoadedRuns from = starts == null ? nothing : leaving(at, at);
        extend(from, 0, day.start(), day.start(), j, BreakAt.NOWHERE, false, value.allLeftOut());
      }
    }
    while (!next.isEmpty()) {
      place++;
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

  private LoadedRuns leaving(int first, int last) {
    RunEnvelope start = new RunEnvelope(day.waitPrice());
    start.add(first, last, last, 0, -1);
    return LoadedRuns.start(start);
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
      for (LoadedRuns open = node.runs[2 * i]; open != null; open = open.next) {
        end(node, open, i, false);
        onwards(node, open, i, i, false);
        byWater(node, open, i, false);
      }
      for (LoadedRuns taken = node.runs[2 * i + 1]; taken != null; taken = taken.next) {
        end(node, taken, i, true);
        onwards(node, taken, i, i, true);
        byWater(node, taken, i, true);
      }
    }
  }

  /** From a node left (a water place, or {@code i} itself) to every visit that may follow i. */
  private void onwards(Node node, LoadedRuns from, int left, int i, boolean taken) {
    for (int j = 0; j < n; j++) {
      if (!sets.holds(node.set, j) && !day.first(j)) {
        extend(from, node.set, left, i, j, BreakAt.NOWHERE, taken, node.leftOut);
        if (day.hasBreak() && !taken) {
          if (left == i) {
            extend(from, node.set, left, i, j, BreakAt.BEFORE_LEAVING, true, node.leftOut);
          }
          extend(from, node.set, left, i, j, BreakAt.ON_ARRIVAL, true, node.leftOut);
        }
      }
    }
  }

  /**
   * To the next visit by way of a water stop; the break before it, or after it at the next door.
   */
  private void byWater(Node node, LoadedRuns source, int i, boolean taken) {
    if (source.stops >= terms.mostStops()) {
      return;
    }
    for (int w = 0; w < day.waterPlaces(); w++) {
      int water = day.waterNode(w);
      if (!limitAtWater(node, source, water)) {
        continue;
      }
      RunEnvelope there = stopped(source.runs, i, water, BreakAt.NOWHERE);
      if (day.hasBreak() && !taken) {
        RunEnvelope after = stopped(source.runs, i, water, BreakAt.BEFORE_LEAVING);
        onwards(node, source.filled(there), water, i, false);
        onwards(node, source.filled(after), water, i, true);
      } else {
        onwards(node, source.filled(there), water, i, taken);
      }
    }
  }

  /** What is of use at a water place, given what may follow; false where nothing is. */
  private boolean limitAtWater(Node node, LoadedRuns source, int water) {
    long least = DayValue.NONE;
    int latest = -1;
    for (int j = 0; j < n; j++) {
      if (!sets.holds(node.set, j) && !day.first(j) && day.reaches(water, j)) {
        int with = sets.with(node.set, j);
        int toCome = tanks.stops(sets, with, terms.fresh(j), terms.grey(j));
        long rest = bound.after(sets, with, j, true, 0, source.stops + 1, toCome);
        int drive = day.leastDrive(water, j);
        least = Math.min(least, rest + day.legPrice(water, j) + day.drivePrice() * drive);
        latest = Math.max(latest, bound.latest(sets, with, j) - day.service(j) - drive);
      }
    }
    step.limit(Math.min(day.latestEnd(), latest), best - least);
    return least < best;
  }

  private RunEnvelope stopped(RunEnvelope source, int i, int water, BreakAt breakAt) {
    RunEnvelope there = new RunEnvelope(day.waitPrice());
    step.linger(widest > 0 ? 0 : Long.MAX_VALUE);
    for (int run = 0; run < source.size(); run++) {
      step.toVisit(source, run, i, water, breakAt, there, source.trail(run));
    }
    meter.count(source.size());
    return there;
  }

  /** From a node left (a water place, or {@code i} itself) to {@code j}, the visit after i. */
  private void extend(
      LoadedRuns from,
      int set,
      int left,
      int i,
      int j,
      BreakAt breakAt,
      boolean taken,
      long leftOut) {
    if (!terms.free() && !terms.may(sets.rows(), sets.at(set), i, j, place)) {
      return;
    }
    int fresh = from.fresh + terms.fresh(j);
    int grey = from.grey + terms.grey(j);
    if (!terms.lasts(fresh, grey)) {
      return;
    }
    int with = sets.with(set, j);
    int stops = tanks.stops(sets, with, fresh, grey);
    long rest = bound.after(sets, with, j, true, 0, from.stops, stops);
    if (rest >= best || (stops > 0 && from.stops + stops > terms.mostStops())) {
      return;
    }
    RunEnvelope source = from.runs;
    int service = terms.service(i, j, place);
    long price = terms.free() ? 0 : terms.price(sets.rows(), sets.at(set), i, j, place);
    meter.count(source.size());
    scratch.clear();
    step.limit(Math.min(day.latestEnd(), bound.latest(sets, with, j)), best - rest);
    for (int run = 0; run < source.size(); run++) {
      step.linger(longestLinger(source, run, set, left, taken && breakAt == BreakAt.NOWHERE));
      step.toVisit(source, run, left, j, breakAt, service, price, scratch, source.trail(run));
    }
    bound.clip(scratch, sets, with, j, taken, best, from.stops, stops);
    Node reached = null;
    LoadedRuns target = null;
    int lastFrom = -2;
    int trail = -1;
    for (int run = 0; run < scratch.size(); run++) {
      int first = scratch.earliest(run);
      long total = scratch.cost(run) + bound.after(sets, with, j, taken, first, from.stops, stops);
      if (total >= best) {
        continue;
      }
      if (target == null) {
        reached = node(with, leftOut - value.leftOut(j));
        target = reached.of(j, taken, from, service);
      }
      if (reached.useless(target, j, taken, scratch, run)) {
        continue;
      }
      reached.hope = Math.min(reached.hope, total);
      if (trail < 0 || scratch.trail(run) != lastFrom) {
        lastFrom = scratch.trail(run);
        trail = trails.add(lastFrom, j);
      }
      target.runs.add(
          scratch.earliest(run),
          scratch.unpaidUntil(run),
          scratch.leaveBy(run),
          scratch.cost(run),
          trail);
      if (widest > 0) {
        target.runs.keepCheapest(widest);
      }
    }
  }

  /** Longest paid waiting at a served door after which the best known can still be beaten. */
  private long longestLinger(RunEnvelope source, int run, int set, int i, boolean taken) {
    if (widest > 0) {
      return 0;
    }
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

  private void end(Node node, LoadedRuns from, int i, boolean taken) {
    if (!terms.free() && !terms.mayEnd(sets.rows(), sets.at(node.set), i)) {
      return;
    }
    long price = node.leftOut + terms.groomPrice(from.groomed);
    price += terms.free() ? 0 : terms.endPrice(sets.rows(), sets.at(node.set), i);
    long more = price;
    RunEnvelope source = from.runs;
    boolean single = node.set == sets.with(0, i);
    int endBy = day.latestEnd();
    if (day.hasBreak() && !taken && !single) {
      endBy = Math.min(endBy, day.breakFrom());
    }
    for (int run = 0; run < source.size(); run++) {
      step.toEnd(source, run, i, endBy, (end, cost, trail) -> offer(cost + more, trail));
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
        for (LoadedRuns load = node.runs[k]; load != null; load = load.next) {
          RunEnvelope runs = load.runs;
          for (int run = 0; run < runs.size(); run++) {
            long rest = bound.after(sets, node.set, i, k % 2 == 1, runs.earliest(run));
            openBound = Math.min(openBound, runs.cost(run) + rest);
          }
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
