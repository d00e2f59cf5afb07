package dev.dogleg.plan.week;

import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * Takes stretches of visits out of van-days around one booking.
 *
 * <p>Maintainers: string removal as in Christiaens and Vanden Berghe 2020 (Transportation Science
 * 54:417-433, section 5.2), with their split strings; the booking in the middle is, every other
 * time, one of those left out, so that room is made where somebody waits for it. One thread.
 */
final class WeekRuin {
  /** Bookings taken out on average. */
  private static final int REMOVED = 8;

  private static final int MOST_IN_A_ROW = 10;

  private final SearchDays days;
  private final WeekModel model;
  private final SplittableRandom random;
  private final int[][] near;

  WeekRuin(SearchDays days, SplittableRandom random) {
    this.days = days;
    this.model = days.model();
    this.random = random;
    near = days.near();
  }

  void ruin(WeekState week) {
    int serving = 0;
    int visits = 0;
    for (int van = 0; van < days.size(); van++) {
      int served = week.day(van).order().length;
      serving += served > 0 ? 1 : 0;
      visits += served;
    }
    if (visits == 0) {
      return;
    }
    double row = Math.min(MOST_IN_A_ROW, (double) visits / serving);
    double most = 4 * Math.min(REMOVED, visits / 3.0) / (1 + row) - 1;
    int stretches = (int) (1 + random.nextDouble() * Math.max(0, most));
    boolean[] torn = new boolean[days.size()];
    for (int booking : near[centre(week)]) {
      int van = week.vanOf(booking);
      if (van >= 0 && !torn[van]) {
        torn[van] = true;
        tear(week, van, booking, row);
        if (--stretches == 0) {
          return;
        }
      }
    }
  }

  private int centre(WeekState week) {
    if (random.nextBoolean()) {
      int[] out = IntStream.range(0, model.size()).filter(i -> !week.served(i)).toArray();
      if (out.length > 0) {
        return out[random.nextInt(out.length)];
      }
    }
    return random.nextInt(model.size());
  }

  /** Takes a stretch out of a van-day, sometimes with a middle that stays. */
  private void tear(WeekState week, int van, int booking, double row) {
    KnownOrders known = days.of(van);
    VanKind kind = known.kind();
    int[] order = week.day(van).order();
    int length = 1 + random.nextInt((int) Math.max(1, Math.min(order.length, row)));
    int stays = 0;
    if (length > 1 && length < order.length && random.nextBoolean()) {
      stays = 1;
      while (length + stays < order.length && random.nextBoolean()) {
        stays++;
      }
    }
    int at = 0;
    while (kind.booking(order[at]) != booking) {
      at++;
    }
    int span = length + stays;
    int low = Math.max(0, at - span + 1);
    int from = low + random.nextInt(Math.min(at, order.length - span) - low + 1);
    int head = stays == 0 ? span : 1 + random.nextInt(length - 1);
    boolean[] removed = new boolean[kind.size()];
    for (int k = 0; k < span; k++) {
      if (k < head || k >= head + stays) {
        for (int with : known.company(order[from + k])) {
          removed[with] = true;
        }
      }
    }
    KnownOrders.Known shorter = known.without(week.day(van), removed);
    boolean all = !shorter.possible();
    // Fewer visits of the same order may miss a break or a window; then the day starts anew.
    week.set(van, all ? known.home() : shorter);
    for (int local : order) {
      if (all || removed[local]) {
        week.mark(kind.booking(local), -1);
      }
    }
  }
}
