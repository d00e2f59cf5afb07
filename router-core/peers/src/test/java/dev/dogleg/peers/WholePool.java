package dev.dogleg.peers;

import dev.dogleg.itinerary.WeekRequest;
import java.util.ArrayList;
import java.util.List;

/**
 * The best week by a pool of all sets of each van-day and a master in whole numbers of a library.
 *
 * <p>Where drives depend on the hour, sets enter with a cost that they have at least. The best week
 * of such a pool costs no more than the true one, so it is the true one as soon as all its own sets
 * have their exact costs; until then more sets are costed exactly and the pool is solved again.
 */
final class WholePool {
  private static final int COSTED_A_ROUND = 300;

  private WholePool() {}

  static SetMaster.Best solve(WeekRequest week, boolean traffic) {
    if (!traffic) {
      List<DaySets> pool = new ArrayList<>();
      for (int day = 0; day < week.days().size(); day++) {
        pool.add(SteadySets.exact(week, day));
      }
      return SetMaster.solve(week, pool);
    }
    List<EngineSets> days = new ArrayList<>();
    for (int day = 0; day < week.days().size(); day++) {
      days.add(new EngineSets(week, day));
    }
    while (true) {
      SetMaster.Best best = SetMaster.solve(week, days.stream().map(EngineSets::known).toList());
      boolean changed = false;
      for (SetMaster.Column column : best.chosen()) {
        changed |= column.day() >= 0 && days.get(column.day()).makeExact(column.set());
      }
      if (!changed) {
        return best;
      }
      best.near().stream()
          .filter(column -> column.day() >= 0)
          .limit(COSTED_A_ROUND)
          .forEach(column -> days.get(column.day()).makeExact(column.set()));
    }
  }
}
