package dev.dogleg.plan.week;

import dev.dogleg.itinerary.Proof;
import dev.dogleg.itinerary.WeekRequest;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/**
 * The way from a request to a proven week: search, pool, count, cost.
 *
 * <p>Maintainers: the number left out is settled first. Its LP with cuts, rounded up, is a first
 * limit; a tree looks for the cheapest week within it; only if the tree shows that there is none
 * the limit grows by one. So the trap that the count LP says 0 where no such week exists costs
 * time, not truth.
 */
final class WeekSolver {
  private static final int COUNT_CUT_ROUNDS = 15;
  private static final int MOST_SETS = 400_000;
  private static final int SEARCH_ROUNDS = 20_000;

  private final WeekRequest request;
  private final WeekProgress progress;
  private final WorkCount work;
  private final WeekModel model;
  private final SetCosts costs;
  private WeekChoice best;
  private int leftOutBound;
  private long costBound;
  private boolean proven;
  private final List<BranchTree.Leaf> leaves = new ArrayList<>();

  WeekSolver(WeekRequest request, WeekProgress progress, BooleanSupplier stop) {
    this.request = request;
    this.progress = progress;
    work = new WorkCount(request.effort(), stop);
    model = new WeekModel(request);
    costs = new SetCosts(model, work);
  }

  WeekPlanner.Solved solve() {
    WorkCount share = new WorkCount(Math.max(1, request.effort() / 4), work::signalledNow);
    WeekSearch search = new WeekSearch(model, request.seed(), share);
    int rounds = SEARCH_ROUNDS / Math.max(1, model.size());
    WeekChoice found = search.run(rounds, this::better);
    work.count(share.steps());
    best = WeekChoice.of(model, costs, found.sets());
    if (model.size() > 0) {
      prove();
    }
    Proof.Kind kind =
        proven
            ? Proof.Kind.PROVEN_BEST
            : work.signalled() ? Proof.Kind.CLOCK_LIMIT : Proof.Kind.WORK_LIMIT;
    Proof proof = new Proof(kind, leftOutBound, Math.max(0, costBound), work.steps());
    return new WeekPlanner.Solved(
        WeekAssembly.plan(model, best, proof, new WeekReasons(model, proven)),
        Certificates.of(model, best, leaves));
  }

  private void better(WeekChoice week) {
    progress.update(
        week.leftOutCounted(), week.costSixtieths(), leftOutBound, costBound, work.steps());
  }

  private void prove() {
    ColumnPool pool = new ColumnPool(model.size());
    if (!fill(pool)) {
      return;
    }
    MasterProblem problem = new MasterProblem(model, pool, costs, work);
    NodeState all =
        new NodeState(
            IntStream.range(0, pool.size()).toArray(), new boolean[model.size()], List.of());
    int counted = model.countedBookings();
    int[] start = start(pool);
    Relaxation count =
        new Relaxation(
            problem,
            all,
            true,
            counted,
            List.of(),
            start,
            4L * (counted + 1),
            best.leftOutCounted());
    count.solve();
    count.cut(COUNT_CUT_ROUNDS);
    if (count.bound() == null) {
      return;
    }
    leftOutBound = (int) Math.max(0, count.bound().value());
    leaves.add(
        new BranchTree.Leaf(
            List.of(),
            true,
            counted,
            count.bound().prices(),
            count.bound().leastByKind(),
            count.bound().scaled()));
    while (true) {
      boolean known = best.leftOutCounted() <= leftOutBound;
      BranchTree tree =
          new BranchTree(
              problem, leftOutBound, known ? best : null, CostCeiling.of(model), this::better);
      WeekBound bound = count.bound();
      int limit = leftOutBound;
      NodeState within =
          all.keeping(Arrays.stream(all.columns()).filter(c -> bound.mayBeIn(c, limit)).toArray());
      tree.grow(within, count.cuts(), merged(start, count.columns()));
      leaves.addAll(tree.leaves());
      if (tree.best() != null || !tree.complete()) {
        costBound = tree.bound();
        if (tree.best() != null && tree.best().beats(best)) {
          best = tree.best();
        }
        proven = tree.complete();
        return;
      }
      leftOutBound++;
    }
  }

  private boolean fill(ColumnPool pool) {
    List<SetSweep> sweeps =
        IntStream.range(0, model.kinds().size())
            .parallel()
            .mapToObj(
                k -> {
                  VanKind kind = model.kinds().get(k);
                  SetSweep sweep =
                      new SetSweep(
                          kind,
                          new RelaxedDay(kind, request.prices()),
                          MOST_SETS,
                          work.left() / model.kinds().size());
                  sweep.run();
                  return sweep;
                })
            .toList();
    boolean complete = true;
    for (int k = 0; k < sweeps.size(); k++) {
      SetSweep sweep = sweeps.get(k);
      work.count(sweep.steps());
      complete &= sweep.complete();
      VanKind kind = model.kinds().get(k);
      for (int s = 0; s < sweep.size() && complete; s++) {
        int[] members = SetSweep.members(sweep.set(s));
        for (int m = 0; m < members.length; m++) {
          members[m] = kind.booking(members[m]);
        }
        pool.add(k, members, sweep.cost(s), false);
      }
    }
    return complete;
  }

  /** Columns to begin with: those of one booking, and those of the best week. */
  private int[] start(ColumnPool pool) {
    List<BookingSet> chosen = new ArrayList<>();
    List<Integer> kinds = new ArrayList<>();
    for (WeekChoice.ChosenSet set : best.sets()) {
      int[] bookings = Arrays.stream(set.asArray()).map(set.kind()::booking).toArray();
      chosen.add(BookingSet.of(bookings));
      kinds.add(set.kind().number());
    }
    return IntStream.range(0, pool.size())
        .filter(
            c -> {
              int[] bookings = pool.bookings(c);
              if (bookings.length == 1) {
                return true;
              }
              int at = chosen.indexOf(BookingSet.of(bookings));
              return at >= 0 && kinds.contains(pool.kind(c));
            })
        .toArray();
  }

  private static int[] merged(int[] some, int[] more) {
    return IntStream.concat(Arrays.stream(some), Arrays.stream(more)).distinct().sorted().toArray();
  }
}
