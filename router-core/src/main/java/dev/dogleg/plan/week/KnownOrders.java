package dev.dogleg.plan.week;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Good orders of sets on one kind of van-day, remembered, each timed on the relaxed day.
 *
 * <p>Maintainers: a set's order is its smaller set's order with one visit put in at the best place,
 * then improved by moving single visits; what is remembered is a guess until it is settled. One
 * thread.
 */
final class KnownOrders {
  /** An order and its cost, extra prices included; the cost is NEVER where none was found. */
  static final class Known {
    private final int[] order;
    private final long cost;

    private final boolean exact;

    Known(int[] order, long cost, boolean exact) {
      this.order = order;
      this.cost = cost;
      this.exact = exact;
    }

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
  }

  private static final Known HOME = new Known(new int[0], 0, true);
  private static final Known NONE = new Known(new int[0], RelaxedDay.NEVER, true);

  private final VanKind kind;
  private final RelaxedOrder relaxed;
  private final WorkCount work;
  private final Map<BookingSet, Known> known = new LinkedHashMap<>();

  KnownOrders(VanKind kind, WorkCount work) {
    this.kind = kind;
    this.work = work;
    relaxed = new RelaxedOrder(kind);
  }

  VanKind kind() {
    return kind;
  }

  Known home() {
    return HOME;
  }

  /** {@return the set of a known order and one booking more} */
  Known with(Known base, int local) {
    int[] members = java.util.Arrays.copyOf(base.order, base.order.length + 1);
    members[base.order.length] = local;
    BookingSet set = BookingSet.of(members);
    Known found = known.get(set);
    if (found == null) {
      found = improved(inserted(base, local));
      known.put(set, found);
    }
    return found;
  }

  /** {@return a known order without some bookings} */
  Known without(Known base, boolean[] removed) {
    int[] kept =
        java.util.Arrays.stream(base.order).filter(k -> !removed[kind.booking(k)]).toArray();
    return kept.length == base.order.length ? base : ofOrder(kept);
  }

  /** {@return what is known of a set after an order of it was timed} */
  Known ofOrder(int[] order) {
    if (order.length == 0) {
      return HOME;
    }
    BookingSet set = BookingSet.of(order);
    Known found = known.get(set);
    if (found == null) {
      long timed = timed(order, RelaxedDay.NEVER);
      found = timed < RelaxedDay.NEVER ? improved(new Known(order, timed, false)) : NONE;
      known.put(set, found);
    }
    return found;
  }

  private Known inserted(Known base, int local) {
    Known best = NONE;
    int n = base.order.length;
    for (int at = 0; at <= n; at++) {
      int[] longer = new int[n + 1];
      System.arraycopy(base.order, 0, longer, 0, at);
      longer[at] = local;
      System.arraycopy(base.order, at, longer, at + 1, n - at);
      long timed = timed(longer, best.cost);
      if (timed < best.cost) {
        best = new Known(longer, timed, false);
      }
    }
    return best;
  }

  private Known improved(Known start) {
    Known best = start;
    boolean better = start.possible();
    while (better) {
      better = false;
      int n = best.order.length;
      int[] base = best.order;
      for (int from = 0; from < n; from++) {
        for (int to = 0; to < n; to++) {
          if (to != from && to != from - 1) {
            int[] moved = moved(base, from, to);
            long timed = timed(moved, best.cost);
            if (timed < best.cost) {
              best = new Known(moved, timed, false);
              better = true;
            }
          }
        }
      }
    }
    return best;
  }

  private static int[] moved(int[] base, int from, int to) {
    int[] moved = base.clone();
    int visit = base[from];
    if (from < to) {
      System.arraycopy(base, from + 1, moved, from, to - from);
    } else {
      System.arraycopy(base, to, moved, to + 1, from - to);
    }
    moved[to] = visit;
    return moved;
  }

  private long timed(int[] order, long limit) {
    work.count(order.length);
    return relaxed.of(order, limit);
  }

  /** Says that no day serves the set of an order, whatever the relaxed day says. */
  void forbid(Known day) {
    known.put(BookingSet.of(day.order), NONE);
  }

  /** Puts a set's exact cost in the place of the relaxed one. */
  Known settle(Known day, long exactCost) {
    Known settled = new Known(day.order, exactCost, true);
    known.put(BookingSet.of(day.order), settled);
    return settled;
  }

  /** {@return every set with an order, in the order of becoming known} */
  List<Known> inOrder() {
    return known.values().stream().filter(Known::possible).toList();
  }
}
