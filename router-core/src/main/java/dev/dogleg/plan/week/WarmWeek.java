package dev.dogleg.plan.week;

import dev.dogleg.itinerary.WeekPlan;
import dev.dogleg.itinerary.WeekRequest;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/**
 * A week that everybody must be served in, bounded once, so that the same week with one more
 * booking is proven at little cost: its prices, cuts, best columns and listed sets are kept.
 *
 * <p>Made once, then read only: any number of threads may ask.
 *
 * <p>Maintainers: what a set of bookings costs on a van-day hangs on nothing but the set and the
 * van-day, so a newcomer changes no cost that is kept; it only brings new sets, those that hold it.
 * What the kept prices say of the week with the newcomer is worked out anew, see {@link WarmLists}.
 * Where promises have a price the week is kept without it; it is 0 or more, so a week best without
 * it and with none to pay is best.
 */
public final class WarmWeek {
  private static final int MOST_LABELS = 3_000_000;

  /** Partial sets of a van-day looked at for its list. */
  static final int MOST_LISTED = 400_000;

  private static final int CUT_ROUNDS = 6;
  private static final int KEPT_COLUMNS = 240;

  /** The lists reach over the bound by its so-many-th part, or less where they get too long. */
  private static final int FARTHEST = 10;

  private static final int NEAREST = 160;

  private final WeekModel model;
  private final WeekBound bound;
  private final List<KeptKind> kinds = new ArrayList<>();
  private final List<KeptColumn> columns;
  private final long reach;
  private final long[] excesses;

  /**
   * What is kept of a kind of van-day.
   *
   * @param kind the kind
   * @param duals the kept prices as it sees them
   * @param sets every set whose reduced cost is within the reach of the least
   */
  record KeptKind(VanKind kind, DayDuals duals, ListedSets sets) {}

  /**
   * A set that is cheap at the kept prices.
   *
   * @param vanDay a van-day of its kind
   * @param bookings numbers of its bookings in the kept week, rising
   * @param cost what it costs
   * @param known how that is meant
   */
  record KeptColumn(int vanDay, List<Integer> bookings, long cost, ColumnPool.Known known) {}

  private WarmWeek(MasterProblem seen, WeekBound bound, long reach, List<ListedSets> lists) {
    model = seen.model();
    this.bound = bound;
    this.reach = reach;
    for (VanKind kind : model.kinds()) {
      DayDuals duals = new DayDuals(kind, bound.prices(), false);
      kinds.add(new KeptKind(kind, duals, lists.get(kind.number())));
    }
    columns = columns(seen.pool());
    excesses =
        kinds.stream()
            .flatMapToLong(
                kept ->
                    Arrays.stream(kept.sets().reduced(kept.duals()))
                        .map(reduced -> reduced - bound.least(kept.kind().number())))
            .sorted()
            .toArray();
  }

  private List<KeptColumn> columns(ColumnPool pool) {
    return IntStream.range(0, pool.size())
        .filter(c -> pool.cost(c) < RelaxedDay.NEVER)
        .boxed()
        .sorted(
            Comparator.comparingLong((Integer c) -> bound.excess(pool, c)).thenComparingInt(c -> c))
        .limit(KEPT_COLUMNS)
        .map(
            c ->
                new KeptColumn(
                    model.kinds().get(pool.kind(c)).vanDays().get(0),
                    Arrays.stream(pool.bookings(c)).boxed().toList(),
                    pool.cost(c),
                    pool.isExact(c) ? ColumnPool.Known.EXACT : ColumnPool.Known.GUESS))
        .toList();
  }

  /**
   * Works out what is kept of a week.
   *
   * @param request the week; every booking counted
   * @param stop asked now and then; once true, nothing is kept
   * @return what is kept; empty where the effort was spent first, where the sets are too many, and
   *     where nobody is booked
   */
  public static Optional<WarmWeek> of(WeekRequest request, BooleanSupplier stop) {
    WeekModel model = new WeekModel(PromisedWeek.withoutPrices(request));
    if (model.size() == 0) {
      return Optional.empty();
    }
    WorkCount work = new WorkCount(request.effort(), stop);
    SetCosts costs = new SetCosts(model, work);
    WorkCount share = new WorkCount(Math.max(1, request.effort() / 4), work::signalledNow);
    WeekSearch search = new WeekSearch(model, costs, request.seed(), share);
    WeekChoice best = search.run(WeekSolver.searchRounds(model.size()), week -> {});
    work.count(share.steps());
    MasterProblem seen = WeekSolver.seen(model, search.orders(), costs, work);
    List<DayPricer> pricers =
        model.kinds().stream().map(kind -> new DayPricer(kind, MOST_LABELS, stop)).toList();
    long wayOut = 4 * Math.max(best.costSixtieths(), 1L << 12);
    ColumnGeneration cost =
        new ColumnGeneration(
            seen, pricers, false, 0, List.of(), seen.pool().singles(), wayOut, CostCeiling.FAR);
    cost.solve();
    cost.cut(CUT_ROUNDS);
    WeekBound bound = cost.bound();
    for (int part = FARTHEST; bound != null && part <= NEAREST && !work.spent(); part *= 2) {
      long most = bound.value() + bound.value() / part;
      List<Optional<ListedSets>> lists =
          new RoomSweep(seen, bound, most, MOST_LISTED).lists(pricers);
      if (lists.stream().allMatch(Optional::isPresent)) {
        long reach = most * bound.prices().scale() - bound.scaled();
        return Optional.of(
            new WarmWeek(seen, bound, reach, lists.stream().map(Optional::orElseThrow).toList()));
      }
    }
    return Optional.empty();
  }

  /**
   * Plans the week with one more booking.
   *
   * @param request the kept week with the newcomer in it, the same van-days; all counted
   * @param newcomerId id of the newcomer
   * @param known van-day of each booking in a week that serves all, or all but the newcomer
   * @param stop asked now and then
   * @return the plan, proven best, or one that leaves somebody out with the proof that every week
   *     does; empty where it came to no end, so that the week has to be planned from scratch
   */
  public Optional<WeekPlan> with(
      WeekRequest request, String newcomerId, Map<String, Integer> known, BooleanSupplier stop) {
    return new WarmStart(this, PromisedWeek.withoutPrices(request), newcomerId, stop)
        .plan(known)
        .filter(plan -> plan.leftOutCounted() > 0 || PromisedWeek.paysNothing(request, plan));
  }

  WeekModel model() {
    return model;
  }

  /** {@return the bound without the newcomer, and its prices} */
  WeekBound bound() {
    return bound;
  }

  /** {@return how far above the least of its kind a set is listed, in parts} */
  long reach() {
    return reach;
  }

  /** {@return the greatest room, within the reach, that so many sets of all kinds lie in} */
  long roomOf(int sets) {
    return sets < excesses.length ? excesses[sets] : reach;
  }

  /** {@return what is kept of a van-day's kind} */
  KeptKind kindOf(int vanDay) {
    return kinds.get(model.kindOf(vanDay).number());
  }

  List<KeptColumn> columns() {
    return columns;
  }
}
