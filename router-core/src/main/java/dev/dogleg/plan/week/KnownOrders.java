package dev.dogleg.plan.week;

import dev.dogleg.itinerary.DayRule;
import dev.dogleg.schedule.OrderCost;
import dev.dogleg.schedule.StepTerms;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * Good orders of sets on one kind of van-day, remembered, each with an estimated cost until it is
 * settled by the day engine.
 *
 * <p>Maintainers: a set's order is its smaller set's order with one visit put in at the best place;
 * only the orders of weeks worth it are improved. Each order remembers what became of it with one
 * visit more, so that a search asks the same thing once. Visits that must be served together are
 * put in together. One thread.
 */
final class KnownOrders {
  /** Orders remembered, in visits of the kind, above which those not kept are forgotten. */
  private static final long MOST_REMEMBERED = 6_000_000;

  /** An order and its cost, extra prices included; the cost is NEVER where none was found. */
  static final class Known {
    private int[] order;
    private long cost;
    private boolean improved;
    private boolean exact;
    private boolean kept;
    private Known[] longer;
    private Known[] shorter;
    private int need = -1;
    private long fresh;
    private long grey;
    private long floor = -1;

    Known(int[] order, long cost) {
      this.order = order;
      this.cost = cost;
    }

    /** {@return whether the day engine told the cost} */
    boolean exact() {
      return exact;
    }

    int[] order() {
      return order;
    }

    long cost() {
      return cost;
    }

    boolean possible() {
      return cost < RelaxedDay.NEVER;
    }

    /** Forgets what became of it with another set, which may be forgotten itself. */
    private void forget() {
      longer = null;
      shorter = null;
    }

    private int[] locals() {
      int[] locals = order.clone();
      Arrays.sort(locals);
      return locals;
    }
  }

  private static final Known NONE = new Known(new int[0], RelaxedDay.NEVER);

  private final VanKind kind;
  private final Known home;
  private final OrderEstimate estimate;
  private final StepTerms terms;
  private final SetCosts costs;
  private OrderCost exactOrder;
  private final int[][] company;
  private final Map<BookingSet, Known> known = new LinkedHashMap<>();
  private final List<Known> kept = new ArrayList<>();

  KnownOrders(VanKind kind, LegTable legs, SetCosts costs) {
    this.kind = kind;
    this.costs = costs;
    estimate = new OrderEstimate(kind, legs);
    terms = kind.model().steps();
    home = new Known(new int[0], 0);
    home.exact = true;
    home.improved = true;
    company = company();
  }

  /** For each visit those that must be served with it, itself first; none where one is missing. */
  private int[][] company() {
    int n = kind.size();
    int[] group = new int[n];
    boolean[] missing = new boolean[n];
    Arrays.setAll(group, j -> j);
    for (DayRule rule : kind.day().terms().rules()) {
      if (rule instanceof DayRule.Together together && together.must()) {
        int[] named =
            IntStream.range(0, n)
                .filter(j -> together.visits().contains(kind.visit(j).id()))
                .toArray();
        for (int j : named) {
          int from = group[j];
          int to = group[named[0]];
          boolean lost = missing[from] || missing[to] || named.length < together.visits().size();
          for (int k = 0; k < n; k++) {
            group[k] = group[k] == from ? to : group[k];
          }
          missing[to] = lost;
        }
      }
    }
    int[][] company = new int[n][];
    for (int j = 0; j < n; j++) {
      int self = j;
      company[j] =
          missing[group[j]]
              ? new int[0]
              : IntStream.range(0, n)
                  .filter(k -> group[k] == group[self])
                  .boxed()
                  .sorted(Comparator.comparing((Integer k) -> k != self).thenComparing(k -> k))
                  .mapToInt(Integer::intValue)
                  .toArray();
    }
    return company;
  }

  VanKind kind() {
    return kind;
  }

  Known home() {
    return home;
  }

  /** {@return steps made so far} */
  long steps() {
    return estimate.steppedVisits();
  }

  /**
   * {@return the visits that must be served with one, itself first; empty where it cannot be
   * served}
   */
  int[] company(int local) {
    return company[local];
  }

  /** {@return the set of a known order and one booking more, with those that must go with it} */
  Known with(Known base, int local) {
    if (base.order.length > 0 && !room(base, local)) {
      return NONE;
    }
    if (base.longer == null) {
      base.longer = new Known[kind.size()];
    }
    Known found = base.longer[local];
    if (found == null) {
      found = longer(base, local);
      // Where too many were remembered, the one at hand may have forgotten what became of it.
      if (base.longer != null) {
        base.longer[local] = found;
      }
    }
    return found;
  }

  private boolean room(Known base, int local) {
    if (base.need < 0) {
      base.need = 0;
      for (int visit : base.order) {
        base.need += estimate.need(visit);
        base.fresh += terms.fresh(visit);
        base.grey += terms.grey(visit);
      }
    }
    int room = estimate.room(base.fresh + terms.fresh(local), base.grey + terms.grey(local));
    return base.need + estimate.need(local) <= room;
  }

  /** {@return what a known order costs more with one booking: at least so much} */
  long leastMore(Known base, int local) {
    if (base.longer != null && base.longer[local] != null) {
      return base.longer[local].cost - base.cost;
    }
    if (base.floor < 0) {
      base.floor = estimate.floor(base.order);
    }
    return base.floor + estimate.detour(base.order, local) - base.cost;
  }

  private Known longer(Known base, int local) {
    int[] more = company[local];
    int[] members = Arrays.copyOf(base.order, base.order.length + more.length);
    System.arraycopy(more, 0, members, base.order.length, more.length);
    BookingSet set = BookingSet.of(members);
    Known found = known.get(set);
    if (found != null && (found.possible() || found.exact)) {
      return found;
    }
    if (!mayGrow(members)) {
      return found == null ? NONE : found;
    }
    int[] order = base.order;
    long cost = RelaxedDay.NEVER;
    for (int k = 0; k < more.length; k++) {
      cost = estimate.insert(order, more[k], RelaxedDay.NEVER, k == more.length - 1);
      if (cost >= RelaxedDay.NEVER) {
        return found == null ? NONE : found;
      }
      order = inserted(order, more[k], estimate.bestPlace());
    }
    if (found == null) {
      return remember(set, new Known(order, cost));
    }
    offer(found, order, cost);
    return found;
  }

  /** Whether rules that speak of sets alone let some visits be together. */
  private boolean mayGrow(int[] members) {
    if (terms.free()) {
      return true;
    }
    long[] rows = new long[kind.size() / Long.SIZE + 1];
    for (int visit : members) {
      rows[visit >>> 6] |= 1L << visit;
    }
    return terms.setMayGrow(rows, 0);
  }

  private static void offer(Known known, int[] order, long cost) {
    if (cost < known.cost) {
      known.order = order;
      known.cost = cost;
      known.floor = -1;
      known.forget();
    }
  }

  private Known remember(BookingSet set, Known fresh) {
    if ((long) known.size() * kind.size() >= MOST_REMEMBERED) {
      known.values().removeIf(each -> !each.kept && !each.exact);
      known.values().forEach(Known::forget);
      home.forget();
    }
    known.put(set, fresh);
    return fresh;
  }

  /** {@return a known order without some visits, by local number} */
  Known without(Known base, boolean[] removed) {
    int[] order = new int[base.order.length];
    int left = 0;
    for (int visit : base.order) {
      if (!removed[visit]) {
        order[left++] = visit;
      }
    }
    return ofOrder(Arrays.copyOf(order, left));
  }

  private Known ofOrder(int[] order) {
    if (order.length == 0) {
      return home;
    }
    BookingSet set = BookingSet.of(order);
    Known found = known.get(set);
    return found != null
        ? found
        : remember(set, new Known(order, estimate.of(order, RelaxedDay.NEVER)));
  }

  /** {@return a known order without one visit} */
  Known without(Known base, int local) {
    if (base.shorter == null) {
      base.shorter = new Known[kind.size()];
    }
    Known found = base.shorter[local];
    if (found == null) {
      boolean[] removed = new boolean[kind.size()];
      removed[local] = true;
      found = without(base, removed);
      if (base.shorter != null) {
        base.shorter[local] = found;
      }
    }
    return found;
  }

  /** Improves an order: single visits elsewhere, stretches turned round, until nothing helps. */
  void improve(Known day) {
    while (!day.improved) {
      day.improved = !(moved(day) || turned(day));
    }
  }

  private boolean moved(Known day) {
    for (int from = 0; from < day.order.length && day.order.length > 1; from++) {
      int visit = day.order[from];
      int[] shorter = new int[day.order.length - 1];
      System.arraycopy(day.order, 0, shorter, 0, from);
      System.arraycopy(day.order, from + 1, shorter, from, shorter.length - from);
      long cost = estimate.insert(shorter, visit, day.cost, true);
      if (cost < day.cost) {
        offer(day, inserted(shorter, visit, estimate.bestPlace()), cost);
        return true;
      }
    }
    return false;
  }

  private boolean turned(Known day) {
    int n = day.order.length;
    for (int from = 0; from < n - 1; from++) {
      for (int to = from + 1; to < n; to++) {
        int[] order = day.order.clone();
        for (int k = from; k <= to; k++) {
          order[k] = day.order[to - (k - from)];
        }
        long cost = estimate.of(order, day.cost);
        if (cost < day.cost) {
          offer(day, order, cost);
          return true;
        }
      }
    }
    return false;
  }

  private static int[] inserted(int[] base, int visit, int at) {
    int[] longer = new int[base.length + 1];
    System.arraycopy(base, 0, longer, 0, at);
    longer[at] = visit;
    System.arraycopy(base, at, longer, at + 1, base.length - at);
    return longer;
  }

  /** Keeps a set for whoever puts sets together anew. */
  void keep(Known day) {
    if (!day.kept && day.order.length > 0) {
      day.kept = true;
      kept.add(day);
    }
  }

  /**
   * Asks the day engine; afterwards the cost is that of a day that can be driven, or NEVER.
   *
   * @return whether the set can be served
   */
  boolean settle(Known day) {
    if (!day.exact) {
      improve(day);
      if (exactOrder == null) {
        exactOrder = new OrderCost(kind.model());
      }
      day.cost = exactCost(day);
      day.exact = true;
    }
    return day.possible();
  }

  private long exactCost(Known day) {
    long extra = kind.extraSixtieths(day.order);
    long guess = day.cost - extra;
    for (int part = 128; part >= 8; part /= 4) {
      long cost = exactOrder.of(day.order, guess + guess / part + 1);
      if (cost < OrderCost.IMPOSSIBLE) {
        return cost + extra;
      }
    }
    return costs.of(kind, day.locals());
  }

  /** {@return every set kept that can be served, in the order of being kept} */
  List<Known> inOrder() {
    return kept.stream().filter(Known::possible).toList();
  }
}
