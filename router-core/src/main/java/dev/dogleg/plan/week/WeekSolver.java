package dev.dogleg.plan.week;

import dev.dogleg.itinerary.Proof;
import dev.dogleg.itinerary.WeekRequest;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/**
 * The way from a request to a proven week: search, count, cost.
 *
 * <p>Maintainers: the number left out is settled first. Its LP, rounded up, is a first limit; a
 * tree looks for the cheapest week within it; only if the tree shows that there is none the limit
 * grows by one. So the trap that the count LP says 0 where no such week exists costs time, not
 * truth. For each limit: column generation over relaxed days; then every set whose reduced cost
 * lies inside the gap; then branch and cut over those, with exact costs on demand.
 */
final class WeekSolver {
  private static final int SEARCH_ROUNDS = 60_000;
  private static final int COUNT_CUT_ROUNDS = 15;
  private static final int MOST_LABELS = 2_000_000;
  private static final int MOST_SETS = 400_000;
  private static final int NO_NODE_LIMIT = Integer.MAX_VALUE / 4;

  private final WeekRequest request;
  private final WeekProgress progress;
  private final WorkCount work;
  private final WeekModel model;
  private final SetCosts costs;
  private final MasterProblem root;
  private final List<Map<BookingSet, Integer>> known;
  private final List<BranchTree.Leaf> parts = new ArrayList<>();
  private List<KindPricer> pricers = List.of();
  private WeekChoice best;
  private int leftOutBound;
  private long costBound;
  private boolean proven;

  WeekSolver(WeekRequest request, WeekProgress progress, BooleanSupplier stop) {
    this.request = request;
    this.progress = progress;
    work = new WorkCount(request.effort(), stop);
    model = new WeekModel(request);
    costs = new SetCosts(model, work);
    root = new MasterProblem(model, new ColumnPool(model.size()), costs, work);
    known = LabelRelaxation.index(model);
  }

  WeekPlanner.Solved solve() {
    WorkCount share = new WorkCount(Math.max(1, request.effort() / 4), work::signalledNow);
    WeekSearch search = new WeekSearch(model, costs, request.seed(), share);
    int rounds = SEARCH_ROUNDS / Math.max(1, model.size());
    WeekChoice found = search.run(rounds, this::better);
    work.count(share.steps());
    best = WeekChoice.of(model, costs, found.sets());
    learn(search);
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
        Certificates.of(model, best, parts));
  }

  private void better(WeekChoice week) {
    progress.update(
        week.leftOutCounted(), week.costSixtieths(), leftOutBound, costBound, work.steps());
  }

  /** Puts what the search has seen into the first LP. */
  private void learn(WeekSearch search) {
    for (KnownOrders orders : search.orders()) {
      VanKind kind = orders.kind();
      for (KnownOrders.Known day : orders.inOrder()) {
        int[] bookings = Arrays.stream(day.order()).map(kind::booking).sorted().toArray();
        int column = root.pool().add(kind.number(), bookings, day.cost(), ColumnPool.Known.GUESS);
        known.get(kind.number()).put(BookingSet.of(bookings), column);
      }
    }
  }

  private void prove() {
    pricers =
        model.kinds().parallelStream().map(kind -> new KindPricer(kind, request.prices())).toList();
    MasterProblem whole = complete();
    if (whole != null) {
      proveOver(whole);
    } else {
      proveByLabels();
    }
  }

  /** Every set of every kind of van-day; null where there are too many. */
  private MasterProblem complete() {
    List<SetSweep> sweeps =
        pricers.parallelStream().map(pricer -> pricer.everySet(MOST_SETS)).toList();
    ColumnPool pool = new ColumnPool(model.size());
    for (int k = 0; k < sweeps.size(); k++) {
      work.count(sweeps.get(k).steps());
      if (!sweeps.get(k).complete()) {
        return null;
      }
    }
    for (int k = 0; k < sweeps.size(); k++) {
      fill(pool, k, sweeps.get(k));
    }
    return new MasterProblem(model, pool, costs, work);
  }

  private void fill(ColumnPool pool, int k, SetSweep sweep) {
    for (int s = 0; s < sweep.size(); s++) {
      int[] bookings = pricers.get(k).bookings(sweep.set(s));
      pool.add(k, bookings, sweep.cost(s), ColumnPool.Known.BOUND);
    }
  }

  private void proveOver(MasterProblem problem) {
    NodeState all = everything(problem.pool());
    int counted = model.countedBookings();
    int[] start = start(problem.pool());
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
    parts.add(part(count.bound(), true, counted));
    while (!work.spent()) {
      int limit = leftOutBound;
      BranchTree tree =
          new BranchTree(
              problem,
              limit,
              within(limit) ? best : null,
              ceiling(limit),
              NO_NODE_LIMIT,
              this::better);
      int[] within =
          Arrays.stream(all.columns()).filter(c -> count.bound().mayBeIn(c, limit)).toArray();
      tree.grow(all.keeping(within), count.cuts(), merged(start, count.columns()));
      parts.addAll(tree.leaves());
      if (tree.best() != null && tree.best().beats(best)) {
        best = tree.best();
      }
      if (tree.best() != null || !tree.complete()) {
        costBound = tree.bound();
        proven = tree.complete();
        return;
      }
      leftOutBound++;
    }
  }

  private NodeState everything(ColumnPool pool) {
    return new NodeState(
        IntStream.range(0, pool.size()).toArray(), new boolean[model.size()], List.of());
  }

  private static int[] merged(int[] some, int[] more) {
    return IntStream.concat(Arrays.stream(some), Arrays.stream(more)).distinct().sorted().toArray();
  }

  private void proveByLabels() {
    int counted = model.countedBookings();
    LabelRelaxation count =
        new LabelRelaxation(
            root, pricers, known, true, counted, 4L * (counted + 1), best.leftOutCounted());
    count.solve();
    if (count.bound() == null) {
      return;
    }
    leftOutBound = (int) Math.max(0, count.bound().value());
    parts.add(part(count.bound(), true, counted));
    while (!work.spent()) {
      Optional<Boolean> settled = settle(leftOutBound, count);
      if (settled.isEmpty()) {
        return;
      }
      if (settled.get()) {
        proven = true;
        costBound = best.costSixtieths();
        return;
      }
      leftOutBound++;
    }
  }

  private BranchTree.Leaf part(WeekBound bound, boolean counting, int limit) {
    return new BranchTree.Leaf(
        List.of(), counting, limit, bound.prices(), bound.leastByKind(), bound.scaled());
  }

  private boolean within(int limit) {
    return best.leftOutCounted() <= limit;
  }

  private long ceiling(int limit) {
    return within(limit) ? best.costSixtieths() : CostCeiling.of(model);
  }

  /**
   * Looks for the cheapest week within a limit: true where it is the best one now, false where
   * there is none, empty where neither is known.
   */
  private Optional<Boolean> settle(int limit, LabelRelaxation count) {
    long ceiling = ceiling(limit);
    LabelRelaxation cost =
        new LabelRelaxation(
            root, pricers, known, false, limit, Math.multiplyExact(4L, ceiling), ceiling);
    cost.solve();
    if (cost.bound() == null) {
      return Optional.empty();
    }
    parts.add(part(cost.bound(), false, limit));
    costBound = Math.min(ceiling, cost.bound().value());
    better(best);
    if (cost.bound().value() >= ceiling) {
      return Optional.of(within(limit));
    }
    recombine(limit, cost.cuts(), cost.columns());
    if (within(limit) && cost.bound().value() >= best.costSixtieths()) {
      return Optional.of(true);
    }
    MasterProblem problem = within(limit) ? gap(cost, false, limit) : gap(count, true, limit);
    if (problem == null) {
      return Optional.empty();
    }
    NodeState all = everything(problem.pool());
    BranchTree tree =
        new BranchTree(
            problem,
            limit,
            within(limit) ? best : null,
            ceiling(limit),
            NO_NODE_LIMIT,
            this::better);
    tree.grow(all, within(limit) ? cost.cuts() : count.cuts(), start(problem.pool()));
    parts.addAll(tree.leaves());
    if (tree.best() != null && tree.best().beats(best)) {
      best = tree.best();
    }
    if (!tree.complete()) {
      costBound = Math.max(costBound, tree.bound());
      return Optional.empty();
    }
    return Optional.of(tree.best() != null);
  }

  /** Puts sets known so far together anew, for a better week. */
  private void recombine(int limit, List<RowCut> cuts, int[] columns) {
    NodeState all = everything(root.pool());
    BranchTree tree =
        new BranchTree(root, limit, within(limit) ? best : null, ceiling(limit), 1, this::better);
    tree.grow(all, cuts, columns);
    if (tree.best() != null && tree.best().beats(best)) {
      best = tree.best();
    }
  }

  /** Every set that a better week may hold; null where there are too many. */
  private MasterProblem gap(LabelRelaxation relaxation, boolean counting, int limit) {
    WeekBound bound = relaxation.bound();
    RowPrices prices = bound.prices();
    long most = counting ? limit : best.costSixtieths() - 1;
    long room = Math.subtractExact(Math.multiplyExact(most, prices.scale()), bound.scaled());
    List<KindPricer.Found> found =
        pricers.parallelStream()
            .map(
                pricer ->
                    pricer.look(
                        prices,
                        counting,
                        0,
                        room + bound.least(pricer.kind().number()),
                        MOST_LABELS,
                        MOST_SETS))
            .toList();
    ColumnPool pool = new ColumnPool(model.size());
    for (int k = 0; k < found.size(); k++) {
      work.count(found.get(k).steps());
      if (!found.get(k).complete()) {
        return null;
      }
      fill(pool, k, found.get(k).sweep());
    }
    return new MasterProblem(model, pool, costs, work);
  }

  /** Columns to begin with: those of one booking, and those of the best week. */
  private int[] start(ColumnPool pool) {
    List<BookingSet> chosen = new ArrayList<>();
    for (WeekChoice.ChosenSet set : best.sets()) {
      chosen.add(BookingSet.of(Arrays.stream(set.asArray()).map(set.kind()::booking).toArray()));
    }
    return IntStream.range(0, pool.size())
        .filter(
            c -> {
              int[] bookings = pool.bookings(c);
              return bookings.length == 1 || chosen.contains(BookingSet.of(bookings));
            })
        .toArray();
  }
}
