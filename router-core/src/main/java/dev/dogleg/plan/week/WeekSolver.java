package dev.dogleg.plan.week;

import dev.dogleg.itinerary.Proof;
import dev.dogleg.itinerary.WeekCertificate;
import dev.dogleg.itinerary.WeekRequest;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/**
 * The way from a request to a proven week: search, count, cost.
 *
 * <p>Maintainers: few bookings a van-day, and all their sets are listed; more, and prices prove the
 * week ({@link PricedProof}). Where that leaves something open, all sets are listed after all, if
 * there are not too many. Over a list the number left out is settled first: its LP, rounded up, is
 * a first limit; a tree looks for the cheapest week within it; only if the tree shows that there is
 * none the limit grows by one. So the trap that the count LP says 0 where no such week exists costs
 * time, not truth.
 */
final class WeekSolver {
  /** Most rounds of the first search, by three measures: the proof finds better weeks itself. */
  private static final int SEARCH_ROUNDS = 1_000;

  private static final int ROUNDS_A_BOOKING = 20;
  private static final int SEARCH_VISITS = 120_000;

  /** Rounds when the search goes on beside a proof that takes long. */
  private static final int MORE_ROUNDS = 4_000;

  private static final int COUNT_CUT_ROUNDS = 15;

  /** Bookings on one van-day above which a complete pool is not even tried. */
  private static final int MOST_ON_A_DAY = 64;

  private static final int MOST_SETS = 1_500_000;

  /** Bookings on one van-day up to which all sets are listed at once. */
  private static final int FEW_ON_A_DAY = 14;

  private static final int NO_NODE_LIMIT = Integer.MAX_VALUE / 4;

  private final WeekRequest request;
  private final int mostSets;
  private final WeekProgress progress;
  private final WorkCount work;
  private final BooleanSupplier stop;
  private final WeekModel model;
  private final SetCosts costs;
  private final List<WeekCertificate.Search> searches = new ArrayList<>();
  private WeekChoice best;
  private int leftOutBound;
  private long costBound;
  private boolean proven;

  WeekSolver(WeekRequest request, WeekProgress progress, BooleanSupplier stop) {
    this(request, progress, stop, MOST_SETS);
  }

  /** With so many sets at the most in a complete pool; 0: never one. */
  WeekSolver(WeekRequest request, WeekProgress progress, BooleanSupplier stop, int mostSets) {
    this.mostSets = mostSets;
    this.request = request;
    this.stop = stop;
    this.progress = progress;
    work = new WorkCount(request.effort(), stop);
    model = new WeekModel(request);
    costs = new SetCosts(model, work);
  }

  WeekPlanner.Solved solve() {
    searchAndProve();
    return answer();
  }

  /** A single van-day gets no certificate: its own engine proves it. */
  WeekPlanner.Solved certified() {
    return aDayAlone() ? answer() : solve();
  }

  private WeekPlanner.Solved answer() {
    Proof.Kind kind =
        proven
            ? Proof.Kind.PROVEN_BEST
            : work.signalled() ? Proof.Kind.CLOCK_LIMIT : Proof.Kind.WORK_LIMIT;
    Proof proof = new Proof(kind, leftOutBound, Math.max(0, costBound), work.steps());
    return new WeekPlanner.Solved(
        WeekAssembly.plan(model, best, proof, new WeekReasons(model, proven, stop)),
        model.kinds().stream().anyMatch(VanKind::pricesPromises)
            ? WeekCertificate.NONE
            : Certificates.of(model, searches));
  }

  /** One van-day is a day: its own engine proves it, and no LP library is loaded. */
  private boolean aDayAlone() {
    Optional<WeekChoice> day = OneVanDay.proven(model, costs, request.effort(), stop);
    day.ifPresent(
        choice -> {
          best = choice;
          leftOutBound = choice.leftOutCounted();
          costBound = choice.costSixtieths();
          proven = true;
          better(choice);
        });
    return proven;
  }

  private void searchAndProve() {
    FirstSearch search = new FirstSearch(model, costs, request.seed(), request.effort() / 4, stop);
    WeekChoice found = search.run(searchRounds(model.size()), this::better);
    work.count(search.steps());
    best = WeekChoice.of(model, costs, found.sets());
    if (model.size() > 0) {
      prove(search);
    }
  }

  /** {@return most rounds of the first search of a week of so many bookings} */
  static int searchRounds(int bookings) {
    int few = Math.min(SEARCH_ROUNDS, ROUNDS_A_BOOKING * bookings);
    return Math.min(few, SEARCH_VISITS / Math.max(1, bookings));
  }

  private void better(WeekChoice week) {
    told(week, leftOutBound, costBound);
  }

  private void told(WeekChoice week, int noFewer, long noCheaper) {
    progress.update(week.leftOutCounted(), week.costSixtieths(), noFewer, noCheaper, work.steps());
  }

  /** The best week of a search that has gone on for a while. */
  private WeekChoice further(WeekSearch search) {
    WorkCount share = search.work();
    long before = share.steps();
    WeekChoice found = search.goOn(MORE_ROUNDS, better -> {});
    work.count(share.steps() - before);
    return WeekChoice.of(model, costs, found.sets());
  }

  /** The sets that searches have seen. */
  static MasterProblem seen(
      WeekModel model, List<KnownOrders> all, SetCosts costs, WorkCount work) {
    ColumnPool pool = new ColumnPool(model.size());
    KnownSets known = new KnownSets(pool, model.kinds().size());
    for (KnownOrders orders : all) {
      VanKind kind = orders.kind();
      known.meet();
      for (KnownOrders.Known day : orders.inOrder()) {
        int[] bookings = Arrays.stream(day.order()).map(kind::booking).sorted().toArray();
        Integer old = known.column(kind.number(), BookingSet.of(bookings));
        if (old == null) {
          pool.add(kind.number(), bookings, day.cost(), ColumnPool.Known.GUESS);
        } else {
          pool.lower(old, day.cost(), ColumnPool.Known.GUESS);
        }
      }
    }
    return new MasterProblem(model, pool, costs, work);
  }

  private void prove(FirstSearch search) {
    boolean few = model.kinds().stream().allMatch(kind -> kind.size() <= FEW_ON_A_DAY);
    if (few && listAll()) {
      return;
    }
    PricedProof proof =
        new PricedProof(
            seen(model, search.orders(), costs, work),
            best,
            stop,
            this::told,
            () -> further(search.better()));
    proof.run();
    ProofStanding standing = proof.standing();
    best = standing.best();
    leftOutBound = standing.leftOutBound();
    costBound = standing.costBound();
    proven = standing.proven();
    searches.addAll(standing.searches());
    if (!proven && !few && !work.spent()) {
      int noFewer = leftOutBound;
      long noCheaper = costBound;
      listAll();
      if (!proven && leftOutBound == noFewer) {
        costBound = Math.max(costBound, noCheaper);
      } else if (leftOutBound < noFewer) {
        leftOutBound = noFewer;
        costBound = noCheaper;
      }
    }
  }

  /** Proves over a list of all sets; false where there are too many. */
  private boolean listAll() {
    MasterProblem whole = complete();
    if (whole != null) {
      searches.clear();
      proveOver(whole);
    }
    return whole != null;
  }

  /** Every set of every kind of van-day; null where there are too many. */
  private MasterProblem complete() {
    if (model.kinds().stream().anyMatch(kind -> kind.size() > MOST_ON_A_DAY)) {
      return null;
    }
    int share = mostSets / model.kinds().size();
    List<SetSweep> sweeps =
        model.kinds().parallelStream().map(kind -> new SetSweep(kind, share).run(stop)).toList();
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
      int[] bookings = Arrays.stream(sweep.set(s)).map(model.kinds().get(k)::booking).toArray();
      pool.add(k, bookings, sweep.cost(s), ColumnPool.Known.BOUND);
    }
  }

  private void proveOver(MasterProblem problem) {
    NodeState all = NodeState.everything(problem);
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
    if (leftOutBound > 0) {
      searches.add(Certificates.tooFew(model, leftOutBound - 1, count.bound()));
    }
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
      tree.grow(
          all.keeping(within),
          List.of(count.bound()),
          count.cuts(),
          merged(start, count.columns()));
      searches.add(tree.search());
      if (tree.best() != null && tree.best().beats(best)) {
        best = tree.best();
      }
      if (tree.best() != null || !tree.complete()) {
        costBound = tree.bound();
        proven = tree.complete();
        if (proven) {
          best = new EqualWeeks(problem, best, tree.whole()).least();
        }
        return;
      }
      leftOutBound++;
    }
  }

  private static int[] merged(int[] some, int[] more) {
    return IntStream.concat(Arrays.stream(some), Arrays.stream(more)).distinct().sorted().toArray();
  }

  private boolean within(int limit) {
    return best.leftOutCounted() <= limit;
  }

  private long ceiling(int limit) {
    return within(limit) ? best.costSixtieths() : CostCeiling.of(model);
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
