package dev.dogleg.plan.week;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Column generation over the pool with subset-row cuts: prices and a whole-number bound for one
 * part of the search, one objective and one limit.
 *
 * <p>Maintainers: pricing looks at every allowed column and takes the most negative ones of each
 * kind. A pool's costs are bounds at first; columns that the LP uses are asked for their exact
 * cost, and the LP solved again, until all it uses are exact. The whole-number bound is computed
 * every round and the best kept, so an LP that stalls costs tightness, never truth.
 */
final class Relaxation {
  private static final int COLUMNS_PER_KIND = 24;
  private static final int CUTS_PER_ROUND = 20;
  private static final int MOST_ROUNDS = 400;
  private static final int MOST_COLUMNS = 700;

  private final MasterProblem problem;
  private final NodeState state;
  private final boolean counting;
  private final int limit;
  private final long enough;
  private final List<RowCut> cuts;
  private final MasterLp lp;
  private int[] columns;
  private WeekBound best;
  private MasterLp.Answer last;
  private boolean settled;

  /**
   * Sets up.
   *
   * @param problem the week
   * @param state what is allowed
   * @param counting objective: counted bookings left out, else cost
   * @param limit most counted bookings left out
   * @param cuts cuts in force
   * @param start columns to begin with; those that are not allowed are ignored
   * @param wayOut price of exceeding the limit by one, dear
   * @param enough a bound of this or more ends the work
   */
  Relaxation(
      MasterProblem problem,
      NodeState state,
      boolean counting,
      int limit,
      List<RowCut> cuts,
      int[] start,
      long wayOut,
      long enough) {
    this.problem = problem;
    this.state = state;
    this.counting = counting;
    this.limit = limit;
    this.enough = enough;
    this.cuts = new ArrayList<>(cuts);
    lp = new MasterLp(problem, counting, state.mustServe(), limit, wayOut);
    this.columns =
        Arrays.stream(start)
            .filter(c -> Arrays.binarySearch(state.columns(), c) >= 0)
            .distinct()
            .sorted()
            .toArray();
  }

  /** Prices out the pool and settles the columns in use. */
  void solve() {
    settled = false;
    long[] reduced = new long[state.columns().length];
    for (int round = 0; round < MOST_ROUNDS && !problem.work().spent(); round++) {
      last = lp.solve(columns, List.copyOf(cuts));
      problem.work().count(reduced.length + 10L * columns.length);
      if (!last.usable()) {
        return;
      }
      WeekBound bound = WeekBound.of(problem, state, counting, limit, last.prices(), reduced);
      if (best == null || bound.scaled() > best.scaled()) {
        best = bound;
      }
      if (best.value() >= enough) {
        return;
      }
      int[] found = cheapest(bound, reduced);
      if (found.length > 0) {
        take(found, bound);
      } else if (!settle()) {
        settled = true;
        return;
      }
    }
  }

  /** Asks the exact cost of the columns in use; whether any changed. */
  private boolean settle() {
    boolean changed = problem.settleUsed(columns, last.use(), counting);
    columns = Arrays.stream(columns).filter(problem::possible).toArray();
    return changed;
  }

  /** Adds violated cuts and solves again, until none is found or nothing is left to do. */
  void cut(int mostRounds) {
    for (int round = 0; round < mostRounds && settled && !isWhole(); round++) {
      List<RowCut> found = SubsetRows.violated(problem, columns, last.use(), cuts, CUTS_PER_ROUND);
      if (found.isEmpty() || problem.work().spent()) {
        return;
      }
      dropIdleCuts();
      cuts.addAll(found);
      solve();
    }
  }

  private void dropIdleCuts() {
    if (cuts.size() > 3 * CUTS_PER_ROUND) {
      cuts.clear();
      cuts.addAll(last.prices().pricedCuts());
    }
  }

  private void take(int[] found, WeekBound bound) {
    int[] kept = columns;
    if (columns.length > MOST_COLUMNS) {
      long[] cost = Arrays.stream(columns).mapToLong(bound::reducedCost).toArray();
      long[] sorted = cost.clone();
      Arrays.sort(sorted);
      long most = sorted[MOST_COLUMNS / 2];
      kept =
          java.util.stream.IntStream.range(0, columns.length)
              .filter(j -> last.use()[j] > 0 || cost[j] <= most)
              .map(j -> columns[j])
              .toArray();
    }
    Set<Integer> both = new HashSet<>();
    Arrays.stream(kept).forEach(both::add);
    Arrays.stream(found).forEach(both::add);
    columns = both.stream().mapToInt(Integer::intValue).sorted().toArray();
  }

  private int[] cheapest(WeekBound bound, long[] reduced) {
    int kinds = problem.model().kinds().size();
    // What the LP charges a van-day: a column helps if it beats those that the LP already has.
    long[] known = new long[kinds];
    for (int column : columns) {
      int kind = problem.pool().kind(column);
      known[kind] = Math.min(known[kind], bound.reducedCost(column));
    }
    long margin = Math.max(1, bound.prices().scale() >> 12);
    List<List<Integer>> byKind = new ArrayList<>();
    for (int kind = 0; kind < kinds; kind++) {
      byKind.add(new ArrayList<>());
    }
    for (int at = 0; at < reduced.length; at++) {
      int kind = problem.pool().kind(state.columns()[at]);
      if (reduced[at] < known[kind] - margin) {
        byKind.get(kind).add(at);
      }
    }
    List<Integer> chosen = new ArrayList<>();
    for (List<Integer> candidates : byKind) {
      candidates.sort(
          (x, y) ->
              reduced[x] != reduced[y]
                  ? Long.compare(reduced[x], reduced[y])
                  : Integer.compare(x, y));
      candidates.stream().limit(COLUMNS_PER_KIND).forEach(at -> chosen.add(state.columns()[at]));
    }
    return chosen.stream().mapToInt(Integer::intValue).toArray();
  }

  /** Whether the last LP answer is whole: every column all or nothing. */
  boolean isWhole() {
    return last != null && last.isWhole();
  }

  /** {@return best whole-number bound so far; null where the LP never answered} */
  WeekBound bound() {
    return best;
  }

  /** {@return whether the last LP prices out, and all its columns in use are exact} */
  boolean settled() {
    return settled;
  }

  MasterLp.Answer answer() {
    return last;
  }

  /** {@return columns the LP knows, rising} */
  int[] columns() {
    return columns;
  }

  List<RowCut> cuts() {
    return List.copyOf(cuts);
  }
}
