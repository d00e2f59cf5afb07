package dev.dogleg.plan.week;

import java.util.SplittableRandom;

/**
 * Small changes of a week: a booking goes to another van-day; where it has no room there, one
 * served there makes room and goes to a third, to the van-day that the first one left, or out.
 *
 * <p>Most of what is asked here was asked before, so that a change costs a few look-ups. One
 * thread.
 */
final class WeekMoves {
  /** One of so many who make room takes the place that was left, or goes out. */
  private static final int STRAIGHT_SWAP = 10;

  private static final int MOST = 3;

  private final SearchDays days;
  private final WeekModel model;
  private final SplittableRandom random;

  /** The change under way: van-days and their orders then, bookings and their van-days then. */
  private final int[] van = new int[MOST];

  private final KnownOrders.Known[] next = new KnownOrders.Known[MOST];
  private int changed;

  /** Sixtieths that are left of what the change may cost. */
  private double room;

  WeekMoves(SearchDays days, SplittableRandom random) {
    this.days = days;
    this.model = days.model();
    this.random = random;
  }

  /**
   * Tries one change.
   *
   * @param week week to be changed
   * @param slack sixtieths by which the week may become dearer
   * @param leftOut what leaving out a counted booking counts for, in sixtieths
   * @return whether it was made
   */
  boolean move(WeekState week, double slack, long leftOut) {
    int booking = random.nextInt(model.size());
    int to = anyVan(booking);
    int from = week.vanOf(booking);
    changed = 0;
    room = slack + (from < 0 ? price(booking, leftOut) : 0);
    if (to < 0 || to == from || (from >= 0 && !give(week, from, booking))) {
      return false;
    }
    int other = -1;
    int third = -1;
    if (!take(week, to, booking)) {
      int[] order = week.day(to).order();
      if (order.length == 0) {
        return false;
      }
      other = model.kindOf(to).booking(order[random.nextInt(order.length)]);
      third = anyVan(other);
      third = third == to || random.nextInt(STRAIGHT_SWAP) == 0 ? from : third;
      room -= third < 0 ? price(other, leftOut) : 0;
      boolean fits = give(week, to, other) && take(week, to, booking);
      if (!fits || (third >= 0 && !take(week, third, other))) {
        return false;
      }
    }
    if (room <= 0) {
      return false;
    }
    for (int k = 0; k < changed; k++) {
      week.set(van[k], next[k]);
    }
    week.mark(booking, to);
    if (other >= 0) {
      week.mark(other, third);
    }
    return true;
  }

  private int anyVan(int booking) {
    int[] vans = days.vans(booking);
    return vans.length == 0 ? -1 : vans[random.nextInt(vans.length)];
  }

  private long price(int booking, long leftOut) {
    return model.counted(booking) ? leftOut : model.leftOutSixtieths(booking);
  }

  private KnownOrders.Known day(WeekState week, int of) {
    for (int k = 0; k < changed; k++) {
      if (van[k] == of) {
        return next[k];
      }
    }
    return week.day(of);
  }

  /** Takes a booking out of a van-day; false where the rest cannot be, or others must go too. */
  private boolean give(WeekState week, int of, int booking) {
    KnownOrders known = days.of(of);
    int local = known.kind().local(booking);
    return known.company(local).length == 1
        && change(week, of, known.without(day(week, of), local));
  }

  /** Puts a booking into a van-day; false where it has no room, or is surely too dear. */
  private boolean take(WeekState week, int of, int booking) {
    KnownOrders known = days.of(of);
    int local = known.kind().local(booking);
    if (local < 0 || known.company(local).length != 1) {
      return false;
    }
    KnownOrders.Known day = day(week, of);
    return known.leastMore(day, local) < room && change(week, of, known.with(day, local));
  }

  private boolean change(WeekState week, int of, KnownOrders.Known to) {
    if (!to.possible()) {
      return false;
    }
    room -= to.cost() - day(week, of).cost();
    int k = 0;
    while (k < changed && van[k] != of) {
      k++;
    }
    van[k] = of;
    next[k] = to;
    changed = Math.max(changed, k + 1);
    return true;
  }
}
