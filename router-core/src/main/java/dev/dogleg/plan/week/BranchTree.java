package dev.dogleg.plan.week;

import dev.dogleg.itinerary.WeekCertificate;
import dev.dogleg.plan.week.NodeState.Decision;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import java.util.function.Consumer;

/**
 * Branch and cut for the least cost under a limit of counted bookings left out: always the part
 * with the least bound next.
 *
 * <p>Each part: LP and cuts; the columns that no better week holds are dropped; then it is split on
 * whether a booking is left out, served on a kind of van-day, or shares its van-day with another.
 */
final class BranchTree {
  private static final int ROOT_CUT_ROUNDS = 30;
  private static final int NODE_CUT_ROUNDS = 2;
  private static final double WHOLE = 1e-6;

  private final MasterProblem problem;
  private final int limit;
  private final int mostNodes;
  private final Consumer<WeekChoice> progress;
  private final SearchLog log;
  private WeekChoice best;
  private WeekBound whole;
  private long ceiling;
  private long openBound = Long.MAX_VALUE;
  private boolean complete = true;
  private int nodes;

  private static final class Open {
    private final int number;
    private final int within;
    private final boolean holds;
    private final long bound;
    private final NodeState state;
    private final List<RowCut> cuts;
    private final int[] columns;

    Open(
        int number,
        int within,
        boolean holds,
        long bound,
        NodeState state,
        List<RowCut> cuts,
        int[] columns) {
      this.number = number;
      this.within = within;
      this.holds = holds;
      this.bound = bound;
      this.state = state;
      this.cuts = cuts;
      this.columns = columns;
    }
  }

  /**
   * Sets up.
   *
   * @param problem the week
   * @param limit most counted bookings left out
   * @param known a week within the limit, or null
   * @param ceiling weeks of this cost or more are of no interest
   * @param mostNodes parts looked at, after which it gives up
   * @param progress told of each better week
   */
  BranchTree(
      MasterProblem problem,
      int limit,
      WeekChoice known,
      long ceiling,
      int mostNodes,
      Consumer<WeekChoice> progress) {
    this.mostNodes = mostNodes;
    this.problem = problem;
    this.limit = limit;
    this.log = new SearchLog(problem.model(), limit);
    this.best = known;
    this.ceiling = known == null ? ceiling : Math.min(ceiling, known.costSixtieths());
    this.progress = progress;
  }

  /**
   * Grows the tree until nothing is open or the work is spent.
   *
   * @param state what is allowed
   * @param before bounds on the whole week by which sets have been dropped already
   * @param cuts cuts to begin with
   * @param columns columns to begin with
   */
  void grow(NodeState state, List<WeekBound> before, List<RowCut> cuts, int[] columns) {
    PriorityQueue<Open> open =
        new PriorityQueue<>(
            Comparator.comparingLong((Open part) -> part.bound)
                .thenComparingInt(part -> part.number));
    open.add(new Open(0, -1, true, 0, state, cuts, columns));
    while (!open.isEmpty()) {
      Open part = open.poll();
      if (part.bound >= ceiling) {
        continue;
      }
      if (problem.work().spent() || nodes >= mostNodes) {
        complete = false;
        openBound = Math.min(openBound, part.bound);
        return;
      }
      nodes++;
      int number = log.part(part.within, part.holds, part.state.mustServe());
      if (number == 0) {
        before.forEach(bound -> log.bound(number, bound));
      }
      visit(part, number, open);
    }
  }

  private void visit(Open part, int number, PriorityQueue<Open> open) {
    Relaxation cost = cost(part.state, part.cuts, part.columns);
    cost.solve();
    cost.cut(nodes == 1 ? ROOT_CUT_ROUNDS : NODE_CUT_ROUNDS);
    if (cost.bound() == null) {
      giveUp(part.bound);
      return;
    }
    log.bound(number, cost.bound());
    whole = number == 0 ? cost.bound() : whole;
    if (cost.bound().value() >= ceiling) {
      return;
    }
    long bound = Math.max(part.bound, cost.bound().value());
    if (!cost.settled()) {
      giveUp(bound);
      return;
    }
    NodeState state = part.state;
    if (nodes == 1 || cost.answer().beyond() > WHOLE) {
      Relaxation count = count(state, cost);
      if (count.bound() != null) {
        log.bound(number, count.bound());
        if (count.bound().value() > limit) {
          return;
        }
        state = narrowed(state, count.bound(), limit);
      }
    }
    takeIfWhole(cost);
    if (nodes == 1) {
      dive(state, cost);
    }
    if (cost.bound().value() >= ceiling) {
      return;
    }
    state = narrowed(state, cost.bound(), ceiling - 1);
    Decision decision = new BranchChoice(problem, state, cost).decision();
    if (decision == null) {
      giveUp(bound);
      return;
    }
    log.split(number, decision);
    for (boolean holds : new boolean[] {true, false}) {
      Decision side = new Decision(decision.says(), decision.booking(), decision.other(), holds);
      NodeState child = state.with(side, problem.pool());
      open.add(
          new Open(
              2 * nodes + (holds ? 0 : 1),
              number,
              holds,
              bound,
              child,
              cost.cuts(),
              cost.columns()));
    }
  }

  private Relaxation cost(NodeState state, List<RowCut> cuts, int[] columns) {
    return new Relaxation(
        problem, state, false, limit, cuts, columns, Math.multiplyExact(4L, ceiling), ceiling);
  }

  private Relaxation count(NodeState state, Relaxation cost) {
    int all = problem.model().countedBookings();
    Relaxation count =
        new Relaxation(
            problem, state, true, all, cost.cuts(), cost.columns(), 4L * (all + 1), limit + 1L);
    count.solve();
    return count;
  }

  private NodeState narrowed(NodeState state, WeekBound bound, long most) {
    return state.keeping(
        Arrays.stream(state.columns()).filter(c -> bound.mayBeIn(c, most)).toArray());
  }

  private void giveUp(long bound) {
    complete = false;
    openBound = Math.min(openBound, bound);
  }

  /** Fixes the column most in use, again and again, for a better week. */
  private void dive(NodeState start, Relaxation first) {
    NodeState state = start;
    Relaxation now = first;
    while (!now.isWhole() && now.settled()) {
      int top = -1;
      double most = 0;
      for (int j = 0; j < now.columns().length; j++) {
        double use = now.answer().use()[j];
        if (use < 1 - WHOLE && use > most + WHOLE) {
          most = use;
          top = now.columns()[j];
        }
      }
      if (top < 0) {
        return;
      }
      int chosen = top;
      ColumnPool pool = problem.pool();
      boolean[] must = state.mustServe().clone();
      for (int booking : pool.bookings(chosen)) {
        must[booking] = true;
      }
      int[] kept =
          Arrays.stream(state.columns())
              .filter(c -> c == chosen || !pool.meet(c, chosen))
              .toArray();
      state = new NodeState(kept, must);
      now = cost(state, now.cuts(), now.columns());
      now.solve();
      if (now.bound() == null || now.bound().value() >= ceiling) {
        return;
      }
    }
    takeIfWhole(now);
  }

  private void takeIfWhole(Relaxation relaxation) {
    if (!relaxation.settled() || !relaxation.isWhole() || relaxation.answer().beyond() > WHOLE) {
      return;
    }
    WeekChoice found = problem.week(relaxation.columns(), relaxation.answer().use());
    if (found.leftOutCounted() <= limit && found.costSixtieths() < ceiling) {
      best = found;
      ceiling = found.costSixtieths();
      progress.accept(found);
    }
  }

  /** {@return the best week within the limit, or null} */
  WeekChoice best() {
    return best;
  }

  /** {@return whether nothing is open} */
  boolean complete() {
    return complete;
  }

  /** {@return no week within the limit costs less} */
  long bound() {
    return Math.min(openBound, ceiling);
  }

  /** {@return a bound on the cost of every week within the limit} */
  WeekBound whole() {
    return whole == null ? EqualWeeks.nothing(problem, limit) : whole;
  }

  /** {@return the parts looked at, with the bounds by which they are closed} */
  WeekCertificate.Search search() {
    return log.search();
  }
}
