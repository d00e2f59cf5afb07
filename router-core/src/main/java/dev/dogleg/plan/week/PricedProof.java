package dev.dogleg.plan.week;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import java.util.stream.IntStream;

/**
 * Proves a week best without a list of all sets: prices from column generation give the bounds, a
 * dive over the columns seen gives better weeks, and only sets within the room between the two are
 * listed and branched on.
 *
 * <p>Maintainers: one limit of counted bookings left out after the other, from the bound upwards.
 * Where no week is known within a limit, the sets that one may hold are listed by prices of the
 * number ({@link FewestLeftOut}). A limit within which no week is found, and which neither that
 * list nor the count LP with cuts excludes, stays open: then the number left out is not proven.
 */
final class PricedProof {
  private static final int MOST_LABELS = 3_000_000;
  private static final int COUNT_CUT_ROUNDS = 4;

  /** The first room is the bound's so-many-th part; then it doubles. */
  private static final int FIRST_ROOM = 20;

  private static final int ROOMS = 14;
  private static final int CUTS_AT_ONCE = 2;
  private static final int LEAST_RISE = 500;

  private static final int START_COLUMNS = 200;
  private static final int DIVE_COLUMNS = 4_000;
  private static final int MOST_SETS = 200_000;

  /** The same where all van-days are plain; cuts then go on while a round raises the bound so. */
  private static final int MOST_PLAIN_SETS = 2_000_000;

  private static final int PLAIN_CUT_ROUNDS = 30;
  private static final int LEAST_PLAIN_RISE = 4_000;
  private static final int FIRST_PLAIN_ROOM = 400;

  /** The search goes on while the best week is dearer than the bound by its so-many-th part. */
  private static final int WORTH_SEARCHING = 150;

  /** Rounds of cuts between two dives. */
  private static final int DIVE_EVERY = 3;

  /** Partial sets of a van-day looked at for its list. */
  private static final int MOST_LISTED = 400_000;

  /** The first lists reach over the bound by its so-many-th part, then twice as far. */
  private static final int FIRST_LIST = 30;

  /** The last lists hold all that a better week may hold. */
  private static final int LISTS = 4;

  private final MasterProblem seen;
  private final ProofStanding standing;
  private final Supplier<WeekChoice> search;
  private final List<DayPricer> pricers = new ArrayList<>();
  private final FewestLeftOut fewest;

  /**
   * Sets up.
   *
   * @param seen the week and the sets seen so far; grows
   * @param best the best week so far
   * @param stop asked while sets are listed
   * @param watch told of each better week and bound
   * @param search asked for better weeks while a proof takes long
   */
  PricedProof(
      MasterProblem seen,
      WeekChoice best,
      BooleanSupplier stop,
      ProofStanding.Watch watch,
      Supplier<WeekChoice> search) {
    this.search = search;
    this.seen = seen;
    standing = new ProofStanding(seen.model(), best, watch);
    seen.model().kinds().forEach(kind -> pricers.add(new DayPricer(kind, MOST_LABELS, stop)));
    fewest = new FewestLeftOut(seen, pricers);
  }

  /** Works until the week is proven best, or as far as it gets. */
  void run() {
    int[] start = seen.pool().singles();
    int leftOut = standing.best().leftOutCounted();
    if (leftOut > 0) {
      ColumnGeneration count = fewest.lp(List.of(), start, leftOut);
      count.solve();
      if (count.bound() == null) {
        standing.leavesOut(Math.min(leftOut, TimeBound.leftOut(seen.model())));
        standing.tell();
        return;
      }
      int bound = (int) Math.max(0, count.bound().value());
      if (bound > 0) {
        standing.excluded(bound - 1, Certificates.tooFew(seen.model(), bound - 1, count.bound()));
      }
      start = count.columns();
    }
    standing.tell();
    for (int limit = standing.leftOutBound(); !seen.work().spent(); limit++) {
      if (overFewest(limit, start)) {
        return;
      }
      if (standing.leftOutBound() > limit) {
        continue;
      }
      ColumnGeneration cost = cost(limit, start, List.of());
      boolean plain = plain();
      boolean found = plain ? overCuts(limit, cost) : overLists(limit, cost);
      if (found || cost.bound() == null || standing.within(limit)) {
        return;
      }
      start = cost.columns();
      if (standing.leftOutBound() == limit) {
        if (!plain) {
          cost.solve();
          cost.cut(COUNT_CUT_ROUNDS);
        }
        exclude(limit, cost.cuts(), cost.columns());
      }
    }
  }

  /** Tries to show that every week leaves out more; whether it does. */
  private boolean exclude(int limit, List<RowCut> cuts, int[] columns) {
    ColumnGeneration count = fewest.lp(cuts, columns, limit + 1L);
    count.solve();
    count.cut(COUNT_CUT_ROUNDS);
    boolean bounded = limit == standing.leftOutBound() && count.bound() != null;
    boolean shown = bounded && count.bound().value() > limit;
    if (shown) {
      standing.excluded(limit, Certificates.tooFew(seen.model(), limit, count.bound()));
    }
    return shown;
  }

  /**
   * Where no week is known that leaves out so few, works from a list of every set that one may hold
   * if they are not too many: a best one is found, or every week leaves out more; whether the
   * former.
   */
  private boolean overFewest(int limit, int[] start) {
    if (limit > standing.leftOutBound() || standing.within(limit)) {
      return false;
    }
    fewest.room(limit, start).ifPresent(room -> overFewest(limit, room));
    return standing.proven();
  }

  private void overFewest(int limit, FewestLeftOut.Room room) {
    long ceiling = standing.ceiling(limit);
    BranchTree tree = branch(limit, room.listed(), ceiling, room.cuts(), List.of(room.bound()));
    if (tree.complete() && standing.within(limit)) {
      standing.close(limit, room.listed(), tree);
    } else if (tree.complete()) {
      standing.excluded(limit, tree.search());
    }
  }

  /** Whether labels alone tell all there is to tell of every van-day. */
  private boolean plain() {
    return pricers.stream().allMatch(DayPricer::plain);
  }

  /**
   * Plain van-days price fast enough for cuts before any list: cuts as long as the bound rises,
   * then rooms; whether a best week within the limit is found.
   */
  private boolean overCuts(int limit, ColumnGeneration cost) {
    cost.solve();
    boolean rises = cost.bound() != null;
    if (!rises) {
      return false;
    }
    standing.costs(limit, cost.bound().value());
    for (int round = 0; round < PLAIN_CUT_ROUNDS && rises && !seen.work().spent(); round++) {
      if (round % DIVE_EVERY == 0) {
        diveByPrices(limit, cost);
      }
      long before = cost.bound().value();
      cost.cut(1);
      standing.costs(limit, cost.bound().value());
      rises = cost.bound().value() > before + before / LEAST_PLAIN_RISE;
    }
    diveByPrices(limit, cost);
    return finish(limit, cost, List.of(), Long.MAX_VALUE);
  }

  /** A better week from the prices in force, if a dive finds one. */
  private void diveByPrices(int limit, ColumnGeneration cost) {
    long bound = cost.bound().value();
    if (standing.ceiling(limit) > bound + bound / WORTH_SEARCHING) {
      standing.take(limit, search.get());
    }
    if (cost.bound().value() < standing.ceiling(limit)) {
      ColumnGeneration rest = cost(limit, cost.columns(), cost.cuts());
      new PlainDive(seen, pricers, rest)
          .run(standing.ceiling(limit))
          .ifPresent(week -> standing.take(limit, week));
    }
  }

  /**
   * Lists once what lies within a room above a rough bound, so that the rest of the work only looks
   * at the lists; whether a best week within the limit is found.
   */
  private boolean overLists(int limit, ColumnGeneration rough) {
    rough.solveRoughly();
    WeekBound base = rough.bound();
    if (base == null) {
      return false;
    }
    standing.costs(limit, base.value());
    long room = Math.max(1, base.value() / FIRST_LIST);
    for (int round = 0; round < LISTS && !seen.work().spent(); round++) {
      boolean all = round + 1 == LISTS || standing.ceiling(limit) <= base.value() + room + room / 2;
      long top = all ? standing.ceiling(limit) : base.value() + room;
      if (!list(base, top)) {
        rough.solve();
        return finish(limit, rough, List.of(), Long.MAX_VALUE);
      }
      boolean found = listed(limit, base, top, rough.columns());
      if (found || top >= standing.ceiling(limit)) {
        return found;
      }
      // Dearer weeks are looked at only where some week may leave out so few.
      boolean open = round == 0 && !standing.within(limit);
      if (open && exclude(limit, List.of(), rough.columns())) {
        return false;
      }
      standing.costs(limit, top);
      room *= 2;
    }
    return false;
  }

  /**
   * Works from lists that somebody else made, for weeks that leave nobody out; whether a best one
   * is found.
   *
   * @param base bound by which the lists were made
   * @param top weeks that cost more are not spoken of by the lists
   * @param lists for each kind of van-day, every set that a week of at most so much may hold
   * @param first columns of those seen to begin with
   */
  boolean over(WeekBound base, long top, List<ListedSets> lists, int[] first) {
    for (int kind = 0; kind < lists.size(); kind++) {
      pricers.get(kind).list(lists.get(kind));
    }
    return listed(0, base, top, first);
  }

  /**
   * Whether it is shown, from columns seen, that every week leaves somebody out.
   *
   * @param first columns of those seen to begin with
   */
  boolean leavesOut(int[] first) {
    ColumnGeneration count = fewest.lp(List.of(), first, 1);
    count.solve();
    standing.leavesOut(count.bound() == null ? 0 : (int) Math.max(0, count.bound().value()));
    return standing.leftOutBound() > 0;
  }

  private boolean listed(int limit, WeekBound base, long top, int[] first) {
    ColumnGeneration cost = cost(limit, first, List.of());
    cost.solve();
    boolean found = cost.bound() != null && finish(limit, cost, List.of(base), top);
    pricers.forEach(pricer -> pricer.list(null));
    return found;
  }

  /** {@return what prices the van-days, by kind} */
  List<DayPricer> pricers() {
    return pricers;
  }

  /** Lists what a week of at most so much may hold; false where there is too much of it. */
  private boolean list(WeekBound base, long top) {
    List<Optional<ListedSets>> lists = new RoomSweep(seen, base, top, MOST_LISTED).lists(pricers);
    boolean all = lists.stream().allMatch(Optional::isPresent);
    for (int kind = 0; all && kind < lists.size(); kind++) {
      pricers.get(kind).list(lists.get(kind).orElseThrow());
    }
    return all;
  }

  private ColumnGeneration cost(int limit, int[] start, List<RowCut> cuts) {
    long known = standing.best().costSixtieths();
    long enough = standing.within(limit) ? known : Long.MAX_VALUE >> 12;
    long wayOut = 4 * Math.max(known, 1L << 12);
    return new ColumnGeneration(seen, pricers, false, limit, cuts, start, wayOut, enough);
  }

  /** A better week from the cheapest columns seen; over lists the tree itself is as quick. */
  private void dive(int limit, ColumnGeneration cost) {
    if (cost.bound().value() >= standing.ceiling(limit)) {
      return;
    }
    WeekBound bound = cost.bound();
    ColumnPool pool = seen.pool();
    long[] excess = new long[pool.size()];
    Arrays.setAll(excess, c -> bound.excess(pool, c));
    long[] sorted = excess.clone();
    Arrays.sort(sorted);
    long most = sorted[Math.min(sorted.length, DIVE_COLUMNS) - 1];
    int[] columns = IntStream.range(0, excess.length).filter(c -> excess[c] <= most).toArray();
    NodeState some = new NodeState(columns, new boolean[seen.model().size()]);
    BranchTree tree =
        new BranchTree(
            seen, limit, standing.known(limit), standing.ceiling(limit), 1, standing::better);
    tree.grow(some, List.of(), cost.cuts(), cost.columns());
    Optional.ofNullable(tree.best()).ifPresent(week -> standing.take(limit, week));
  }

  /**
   * Lists and branches on what lies within a room above the bound, and widens the room until a best
   * week within the limit is found; whether it was.
   *
   * @param before bounds by which sets have been dropped already
   * @param top weeks that cost more are not spoken of by the lists
   */
  private boolean finish(int limit, ColumnGeneration cost, List<WeekBound> before, long top) {
    WeekBound bound = cost.bound();
    standing.costs(limit, Math.min(top, bound.value()));
    if (bound.value() > Math.min(standing.ceiling(limit), top)) {
      return false;
    }
    boolean plain = plain();
    if (!plain && !pricers.get(0).listed()) {
      dive(limit, cost);
    }
    long room = Math.max(1, bound.value() / (plain ? FIRST_PLAIN_ROOM : FIRST_ROOM));
    boolean smaller = false;
    for (int round = 0; round < ROOMS && !seen.work().spent(); round++) {
      long most = Math.min(standing.ceiling(limit), top);
      long ceiling = Math.min(most + 1, bound.value() + room);
      ColumnPool pool =
          new RoomSweep(seen, bound, ceiling - 1, plain ? MOST_PLAIN_SETS : MOST_SETS).run(pricers);
      if (pool == null && !smaller) {
        smaller = true;
        room = Math.max(1, room / 3);
        continue;
      }
      if (pool == null && tighter(cost)) {
        bound = cost.bound();
        standing.costs(limit, Math.min(top, bound.value()));
        continue;
      }
      if (pool == null) {
        return false;
      }
      MasterProblem listed = new MasterProblem(seen.model(), pool, seen.costs(), seen.work());
      List<WeekBound> bounds = new ArrayList<>(before);
      bounds.add(bound);
      BranchTree tree = branch(limit, listed, ceiling, cost.cuts(), bounds);
      standing.costs(limit, Math.min(top, Math.min(tree.bound(), standing.best().costSixtieths())));
      if (!tree.complete()) {
        return false;
      }
      if (standing.within(limit) && standing.best().costSixtieths() < ceiling) {
        standing.close(limit, listed, tree);
        return true;
      }
      if (ceiling > most) {
        return false;
      }
      standing.tell();
      room += smaller ? room / 2 : room;
    }
    return false;
  }

  /** Cuts before many sets are branched on; whether the bound rose. */
  private static boolean tighter(ColumnGeneration cost) {
    long before = cost.bound().value();
    cost.cut(CUTS_AT_ONCE);
    return cost.bound().value() > before + before / LEAST_RISE;
  }

  private BranchTree branch(
      int limit, MasterProblem listed, long ceiling, List<RowCut> cuts, List<WeekBound> bounds) {
    BranchTree tree =
        new BranchTree(
            listed, limit, standing.known(limit), ceiling, Integer.MAX_VALUE / 4, standing::better);
    WeekBound last = bounds.get(bounds.size() - 1);
    tree.grow(
        NodeState.everything(listed),
        bounds,
        cuts,
        RoomSweep.cheapest(listed.pool(), last, START_COLUMNS));
    Optional.ofNullable(tree.best()).ifPresent(week -> standing.take(limit, week));
    return tree;
  }

  /** {@return how far it has come} */
  ProofStanding standing() {
    return standing;
  }
}
