package dev.dogleg.plan.week;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * Column generation without a complete pool: the LP over the sets known so far, and new sets from
 * {@link KindPricer}s, until no van-day has a better one; with the whole-number bound of each
 * round.
 */
final class LabelRelaxation {
  private static final int COLUMNS_PER_KIND = 60;
  private static final int MOST_ROUNDS = 60;
  private static final int MOST_CUT_ROUNDS = 20;
  private static final int CUTS_PER_ROUND = 20;
  private static final int MOST_LABELS = 400_000;
  private static final int MOST_SETS = 100_000;
  private static final int FIRST_SHARE = 60;

  private final MasterProblem problem;
  private final List<KindPricer> pricers;
  private final List<Map<BookingSet, Integer>> known;
  private final boolean[] mustServe;
  private final boolean counting;
  private final int limit;
  private final long wayOut;
  private final long enough;
  private int[] columns = new int[0];
  private final List<RowCut> cuts = new ArrayList<>();
  private WeekBound best;
  private MasterLp.Answer last;
  private boolean pricedOut;

  LabelRelaxation(
      MasterProblem problem,
      List<KindPricer> pricers,
      List<Map<BookingSet, Integer>> known,
      boolean counting,
      int limit,
      long wayOut,
      long enough) {
    this.problem = problem;
    this.pricers = pricers;
    this.known = known;
    this.mustServe = new boolean[problem.model().size()];
    this.counting = counting;
    this.limit = limit;
    this.wayOut = wayOut;
    this.enough = enough;
  }

  /** {@return for each kind an empty index of the columns known} */
  static List<Map<BookingSet, Integer>> index(WeekModel model) {
    return model.kinds().stream()
        .map(kind -> (Map<BookingSet, Integer>) new HashMap<BookingSet, Integer>())
        .toList();
  }

  /** Solves with cuts, until none is violated, enough, or the work is spent. */
  void solve() {
    price();
    for (int round = 0; round < MOST_CUT_ROUNDS && pricedOut && !enough(); round++) {
      List<RowCut> found = SubsetRows.violated(problem, columns, last.use(), cuts, CUTS_PER_ROUND);
      if (found.isEmpty() || problem.work().spent()) {
        return;
      }
      dropIdleCuts();
      cuts.addAll(found);
      price();
    }
  }

  private boolean enough() {
    return best != null && best.value() >= enough;
  }

  private void dropIdleCuts() {
    List<RowCut> priced = new ArrayList<>();
    for (int k = 0; k < cuts.size(); k++) {
      if (last.prices().cut()[k] > 0) {
        priced.add(cuts.get(k));
      }
    }
    cuts.clear();
    cuts.addAll(priced);
  }

  private void price() {
    pricedOut = false;
    int share = FIRST_SHARE;
    for (int round = 0; round < MOST_ROUNDS && !problem.work().spent(); round++) {
      Relaxation master = master();
      if (master.answer() == null || !master.answer().usable()) {
        return;
      }
      columns = master.columns();
      last = master.answer();
      RowPrices prices = master.answer().prices();
      int part = share;
      List<KindPricer.Found> found =
          pricers.parallelStream()
              .map(pricer -> pricer.look(prices, counting, part, 0, MOST_LABELS, MOST_SETS))
              .toList();
      long[] least = new long[found.size()];
      boolean bounded = true;
      boolean any = false;
      for (int k = 0; k < least.length; k++) {
        problem.work().count(found.get(k).steps());
        least[k] = found.get(k).least();
        bounded &= least[k] > -PricedDay.NEVER;
        any |= take(k, found.get(k), prices);
      }
      if (bounded) {
        WeekBound bound = WeekBound.from(problem, mustServe, counting, limit, prices, least);
        if (best == null || bound.scaled() > best.scaled()) {
          best = bound;
        }
        if (enough()) {
          return;
        }
      }
      if (!any) {
        if (share == 0) {
          pricedOut = bounded;
          return;
        }
        share = 0;
      } else {
        share = FIRST_SHARE;
      }
    }
  }

  private Relaxation master() {
    NodeState all =
        new NodeState(IntStream.range(0, problem.pool().size()).toArray(), mustServe, List.of());
    Relaxation master =
        new Relaxation(
                problem,
                all,
                counting,
                limit,
                List.copyOf(cuts),
                columns,
                wayOut,
                Long.MAX_VALUE / RowPrices.COUNT_SCALE)
            .unsettled();
    master.solve();
    return master;
  }

  /** Takes the best new sets of a kind; whether there was any. */
  private boolean take(int k, KindPricer.Found found, RowPrices prices) {
    if (found.sweep() == null) {
      return false;
    }
    SetSweep sweep = found.sweep();
    int[] best =
        IntStream.range(0, sweep.size())
            .boxed()
            .sorted(Comparator.comparingLong(sweep::reduced))
            .limit(COLUMNS_PER_KIND)
            .mapToInt(Integer::intValue)
            .toArray();
    // Less than a second of driving, or a thousandth of a booking, is not worth another round.
    long margin = counting ? prices.scale() / 1024 : prices.scale() * 60;
    boolean any = false;
    for (int at : best) {
      int[] bookings = pricers.get(k).bookings(sweep.set(at));
      BookingSet set = BookingSet.of(bookings);
      Integer column = known.get(k).get(set);
      if (column == null) {
        known
            .get(k)
            .put(set, problem.pool().add(k, bookings, sweep.cost(at), ColumnPool.Known.BOUND));
        any |= sweep.reduced(at) < -margin;
      } else if (sweep.cost(at) < problem.pool().cost(column)) {
        problem.pool().lower(column, sweep.cost(at));
        any |= !counting && sweep.reduced(at) < -margin;
      }
    }
    return any;
  }

  /** {@return best whole-number bound; null where there is none} */
  WeekBound bound() {
    return best;
  }

  int[] columns() {
    return columns;
  }

  /** {@return cuts in force} */
  List<RowCut> cuts() {
    return List.copyOf(cuts);
  }
}
