package dev.dogleg.plan.week;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BooleanSupplier;

/**
 * Prices a plain kind of van-day: labels from both ends that meet, and a memory of visits and cuts
 * that grows only where a day seems cheap for want of it.
 *
 * <p>Maintainers: decremental state space (Righini, Salani 2008, Networks 51:155-170) over ng-sets
 * and over memories of cuts. Mutable: the memories, and where the ends meet, are kept from one
 * pricing to the next; one thread.
 */
final class PlainPricer {
  private static final int MEMORY = 8;
  private static final int MOST_DAYS = 120;
  private static final int LEARNING_ROUNDS = 40;

  /** The border moves by one in so many parts of the day towards the end with more labels. */
  private static final int NUDGE = 24;

  /** What serving a visit costs that no day may hold: far more than a day is worth. */
  private static final long PROHIBITIVE = RelaxedDay.NEVER >> 8;

  private final VanKind kind;
  private final NearVisits near;
  private final PlainCuts cuts;
  private final int mostLabels;
  private final BooleanSupplier stop;
  private PlainSide morning;
  private PlainSide evening;
  private int border;
  private long[] worth;
  private long scale;
  private boolean[] gone;
  private long steps;

  /** What was found: whether no day is cheaper than the least, and true days below the limit. */
  record Found(boolean whole, long least, List<FoundDay> days) {}

  PlainPricer(VanKind kind, PlainDay day, int mostLabels, BooleanSupplier stop) {
    this.kind = kind;
    this.mostLabels = mostLabels;
    this.stop = stop;
    morning = PlainSide.of(day);
    evening = PlainSide.of(day.backwards());
    near = new NearVisits(kind.relaxed(), MEMORY);
    cuts = new PlainCuts(kind);
    border = day.length / 2;
    gone = new boolean[kind.week().size()];
  }

  /**
   * Leaves bookings out of days from the next prices on.
   *
   * @param bookings for each booking whether no day may hold it
   */
  void leaveOut(boolean[] bookings) {
    gone = bookings.clone();
  }

  /** Takes prices. */
  void take(RowPrices prices, boolean counting) {
    scale = counting ? 0 : prices.scale();
    worth = new long[kind.size()];
    for (int j = 0; j < worth.length; j++) {
      boolean may = !gone[kind.booking(j)];
      worth[j] =
          may ? prices.cover()[kind.booking(j)] - scale * kind.extraSixtieths(j) : -PROHIBITIVE;
    }
    cuts.take(prices);
    morning = morning.at(worth, scale);
    evening = evening.at(worth, scale);
  }

  /**
   * Days below a reduced cost.
   *
   * @param limit only days below this reduced cost; 0 or less
   * @param quick finds some fast, proves nothing
   */
  Found price(long limit, boolean quick) {
    for (int round = 0; ; round++) {
      PlainLabels early = new PlainLabels(morning, cuts, near, border, limit, quick);
      PlainLabels late =
          new PlainLabels(evening, cuts, near, morning.day().length - border - 1, limit, quick);
      boolean first = early.run(mostLabels, stop);
      boolean whole = late.run(mostLabels, stop) && first;
      steps += early.size() + late.size();
      PlainJoin join = new PlainJoin(morning, evening, cuts, early, late, limit, MOST_DAYS);
      if (quick || whole) {
        join.run();
      }
      balance(early.size(), late.size());
      List<int[]> orders = join.orders();
      List<FoundDay> days = trueDays(orders, limit);
      boolean may = quick || whole;
      if (!may || !days.isEmpty() || round == LEARNING_ROUNDS || !learnt(orders)) {
        return new Found(whole, join.least(), days);
      }
    }
  }

  private void balance(int early, int late) {
    int nudge = morning.day().length / NUDGE;
    if (early > late + late / 2) {
      border = Math.max(nudge, border - nudge);
    } else if (late > early + early / 2) {
      border = Math.min(morning.day().length - nudge, border + nudge);
    }
  }

  private boolean learnt(List<int[]> orders) {
    boolean learnt = false;
    for (int[] order : orders) {
      learnt |= near.learn(order);
      learnt |= cuts.learn(order);
    }
    return learnt;
  }

  private List<FoundDay> trueDays(List<int[]> orders, long limit) {
    List<FoundDay> days = new ArrayList<>();
    Set<BookingSet> sets = new HashSet<>();
    for (int[] order : orders) {
      FoundDay day = new FoundDay(order, cost(order));
      if (day.isTrueDay() && reduced(order, day.costSixtieths()) < limit) {
        if (sets.add(BookingSet.of(order))) {
          days.add(day);
        }
      }
    }
    return days;
  }

  private long reduced(int[] order, long cost) {
    return scale * cost + cuts.charged(order) - Arrays.stream(order).mapToLong(j -> worth[j]).sum();
  }

  private long cost(int[] order) {
    PlainDay day = morning.day();
    long cost = day.startCost[order[0]] + day.endCost[order[order.length - 1]];
    for (int k = 1; k < order.length; k++) {
      cost += day.cost[order[k - 1] * day.n + order[k]];
    }
    return cost;
  }

  /**
   * Every set up to a reduced cost.
   *
   * @param most greatest reduced cost of interest, in parts
   * @param mostSets partial sets kept, after which it gives up
   * @return the sets with their costs; null where there are too many
   */
  ListedSets within(long most, int mostSets) {
    PlainLabels late = new PlainLabels(evening, cuts, near, morning.day().length, most + 1, false);
    boolean whole = late.run(mostLabels, stop);
    steps += late.size();
    if (!whole) {
      return null;
    }
    PlainSets sets = new PlainSets(kind, morning, cuts, late, most);
    boolean complete = sets.run(mostSets, stop);
    steps += sets.steps();
    return complete ? sets.found() : null;
  }

  /** {@return labels made since this was last asked} */
  long takeSteps() {
    long taken = steps;
    steps = 0;
    return taken;
  }
}
