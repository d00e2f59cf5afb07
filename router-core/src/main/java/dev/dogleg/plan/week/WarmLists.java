package dev.dogleg.plan.week;

import dev.dogleg.plan.week.WarmWeek.KeptColumn;
import dev.dogleg.plan.week.WarmWeek.KeptKind;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A bound of a week with a newcomer, and every set that a week within a gap above it may hold, from
 * what is kept of the week without.
 *
 * <p>Maintainers, why nothing is missing. Let {@code z} be the kept bound in parts, {@code least}
 * the least reduced cost of each kind, all at the kept prices, which value the newcomer at 0. Let
 * {@code m} be the least excess over {@code least} of a set that holds the newcomer ({@link
 * #nearest}). Valued at {@code m}, such sets have no reduced cost below {@code least}, and the
 * others keep theirs: so {@code z + m} bounds the week with the newcomer ({@link WeekBound}; nobody
 * is left out: the limit is 0, so that the price of the limit may be as high as any cover and costs
 * nothing). A week that costs at most {@code z + m + gap} holds only sets whose excess at these
 * prices is at most {@code gap}. Those without the newcomer are kept where {@code gap} is at most
 * the reach of the lists; those with it have at the kept prices an excess of at most {@code m +
 * gap} and are swept for just so far: valued at {@code m + gap}, they alone come to {@code least}
 * or below, so the sweep drops every partial day that cannot take the newcomer any more.
 */
final class WarmLists {
  /** Columns of each kind with the newcomer that the first LP knows. */
  private static final int FIRST_OF_KIND = 24;

  private final WarmWeek warm;
  private final WeekModel model;
  private final List<DayPricer> pricers;
  private final int newcomer;
  private final long scale;

  /** Sets with the newcomer by kind, and the excess up to which none is missing. */
  private List<ListedSets> with = List.of();

  private long sweptTo = -1;
  private long nearest;

  /**
   * Sets up.
   *
   * @param warm what is kept
   * @param model the week with the newcomer
   * @param pricers of its kinds
   * @param newcomer number of the newcomer in it
   */
  WarmLists(WarmWeek warm, WeekModel model, List<DayPricer> pricers, int newcomer) {
    this.warm = warm;
    this.model = model;
    this.pricers = pricers;
    this.newcomer = newcomer;
    scale = warm.bound().prices().scale();
  }

  /**
   * Sweeps until a set with the newcomer is found.
   *
   * @param from excess that is looked up to first
   * @param most excess from which none is of interest
   * @return whether one was found
   */
  boolean find(long from, long most) {
    for (long to = from; ; to *= 2) {
      if (!sweep(Math.min(to, most))) {
        return false;
      }
      if (nearest <= sweptTo || to >= most) {
        return nearest <= sweptTo;
      }
    }
  }

  /** {@return least excess of a set with the newcomer, in parts; once one is found} */
  long nearest() {
    return nearest;
  }

  /** {@return no week with the newcomer costs less, in sixtieths} */
  long least() {
    return -Math.floorDiv(-(warm.bound().scaled() + nearest), scale);
  }

  /** Lists every set with the newcomer up to an excess; false where there are too many. */
  private boolean sweep(long to) {
    RowPrices prices = prices(to);
    List<ListedSets> found = new ArrayList<>();
    long least = Long.MAX_VALUE;
    for (VanKind kind : model.kinds()) {
      ListedSets own = new ListedSets(words(kind));
      int local = kind.local(newcomer);
      if (local >= 0) {
        DayPricer pricer = pricers.get(kind.number());
        pricer.take(prices, false);
        ListedSets sets = pricer.within(leastOf(kind), WarmWeek.MOST_LISTED);
        if (sets == null) {
          return false;
        }
        long[] reduced = sets.reduced(new DayDuals(kind, prices, false));
        for (int s = 0; s < sets.size(); s++) {
          if (Arrays.binarySearch(sets.set(s), local) >= 0) {
            own.add(SetBits.of(sets.set(s), words(kind)), 0, sets.cost(s));
            least = Math.min(least, reduced[s] + to - leastOf(kind));
          }
        }
      }
      found.add(own);
    }
    with = found;
    sweptTo = to;
    nearest = least;
    return true;
  }

  /**
   * Sees to it that no set is missing that a week within a gap above the bound may hold.
   *
   * @param gap in parts, at most the reach of the kept lists
   * @return false where there are too many
   */
  boolean reach(long gap) {
    return Math.addExact(nearest, gap) <= sweptTo || sweep(nearest + gap);
  }

  /** {@return the bound of the week with the newcomer} */
  WeekBound bound(MasterProblem seen) {
    long[] least = model.kinds().stream().mapToLong(this::leastOf).toArray();
    boolean[] mayBeLeft = new boolean[model.size()];
    return WeekBound.from(seen, mayBeLeft, false, 0, prices(nearest), least);
  }

  /**
   * Every set of a week within a gap above the bound, by kind.
   *
   * @param gap as {@link #reach} was asked for
   */
  List<ListedSets> lists(long gap) {
    RowPrices prices = prices(nearest);
    List<ListedSets> lists = new ArrayList<>();
    for (VanKind kind : model.kinds()) {
      KeptKind kept = warm.kindOf(kind.vanDays().get(0));
      long most = leastOf(kind) + gap;
      ListedSets all = new ListedSets(words(kind));
      ListedSets without = kept.sets().upTo(kept.duals(), most);
      for (int s = 0; s < without.size(); s++) {
        int[] locals = without.set(s);
        for (int k = 0; k < locals.length; k++) {
          locals[k] = kind.local(here(kept.kind().booking(locals[k])));
        }
        all.add(SetBits.of(locals, words(kind)), 0, without.cost(s));
      }
      ListedSets own = with.get(kind.number()).upTo(new DayDuals(kind, prices, false), most);
      for (int s = 0; s < own.size(); s++) {
        all.add(SetBits.of(own.set(s), words(kind)), 0, own.cost(s));
      }
      lists.add(all);
    }
    return lists;
  }

  /** Puts columns to begin with into an empty pool: the kept ones, and the nearest new ones. */
  void fill(ColumnPool pool) {
    for (KeptColumn column : warm.columns()) {
      int[] bookings = column.bookings().stream().mapToInt(this::here).toArray();
      pool.add(model.kindOf(column.vanDay()).number(), bookings, column.cost(), column.known());
    }
    RowPrices prices = prices(nearest);
    for (VanKind kind : model.kinds()) {
      ListedSets sets = with.get(kind.number());
      long[] reduced = sets.reduced(new DayDuals(kind, prices, false));
      IntStream.range(0, sets.size())
          .boxed()
          .sorted(Comparator.comparingLong((Integer s) -> reduced[s]).thenComparingInt(s -> s))
          .limit(FIRST_OF_KIND)
          .forEach(
              s ->
                  pool.add(
                      kind.number(),
                      Arrays.stream(sets.set(s)).map(kind::booking).toArray(),
                      sets.cost(s),
                      ColumnPool.Known.BOUND));
    }
  }

  /** The kept prices, and one of the newcomer. */
  private RowPrices prices(long ofNewcomer) {
    RowPrices kept = warm.bound().prices();
    long[] cover = new long[model.size()];
    for (int i = 0; i < kept.cover().length; i++) {
      cover[here(i)] = kept.cover()[i];
    }
    cover[newcomer] = ofNewcomer;
    List<RowCut> cuts =
        kept.cuts().stream()
            .map(cut -> new RowCut(here(cut.first()), here(cut.second()), here(cut.third())))
            .toList();
    long limit = Math.max(0, Arrays.stream(cover).max().orElse(0));
    return new RowPrices(kept.scale(), cover, limit, cuts, kept.cut());
  }

  /** Number in the week with the newcomer of a booking of the kept week. */
  private int here(int kept) {
    return kept < newcomer ? kept : kept + 1;
  }

  private long leastOf(VanKind kind) {
    return warm.bound().least(warm.kindOf(kind.vanDays().get(0)).kind().number());
  }

  private static int words(VanKind kind) {
    return Math.max(1, (kind.size() + Long.SIZE - 1) / Long.SIZE);
  }
}
