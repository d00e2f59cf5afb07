package dev.dogleg.plan.week;

import dev.dogleg.schedule.StepTerms;
import java.util.Arrays;

/**
 * Whether the tanks may run out before the end of a day that goes on after a set.
 *
 * <p>Maintainers: what was served, and the thirstiest of what may still come: no more visits than
 * the shortest needs leave time for, and each only where there is time for it alone.
 */
final class StopNeed {
  private final RelaxedDay day;
  private final StepTerms terms;
  private final int[] need;
  private final int[] byNeed;
  private final int[] shortest;
  private final int[] byFresh;
  private final int[] byGrey;
  private final boolean water;

  /**
   * For one kind of van-day.
   *
   * @param need seconds that each visit takes at least after another, home included
   * @param byNeed visits by these
   */
  StopNeed(VanKind kind, int[] need, int[] byNeed) {
    day = kind.relaxed();
    terms = kind.model().steps();
    this.need = need;
    this.byNeed = byNeed;
    water = terms.water() && terms.mostStops() > 0;
    shortest = new int[day.n];
    Arrays.setAll(shortest, j -> need[j] - day.home[j]);
    Arrays.sort(shortest);
    byFresh = sorted(true);
    byGrey = sorted(false);
  }

  private int[] sorted(boolean fresh) {
    return Arrays.stream(byNeed)
        .boxed()
        .sorted((x, y) -> Integer.compare(use(y, fresh), use(x, fresh)))
        .mapToInt(Integer::intValue)
        .toArray();
  }

  private int use(int j, boolean fresh) {
    return fresh ? terms.fresh(j) : terms.grey(j);
  }

  /** {@return whether they may; false where there are no tanks or no water stops} */
  boolean mayBeNeeded(long[] rows, int at, int earliest) {
    if (!water) {
      return false;
    }
    int room = day.latestEnd - earliest;
    int more = 0;
    for (int seconds : shortest) {
      room -= seconds;
      if (room < 0) {
        break;
      }
      more++;
    }
    long fresh = 0;
    long grey = 0;
    int freshLeft = more;
    int greyLeft = more;
    for (int k = 0; k < byFresh.length; k++) {
      int j = byFresh[k];
      if (holds(rows, at, j)) {
        fresh += terms.fresh(j);
      } else if (freshLeft > 0 && earliest + need[j] <= day.latestEnd) {
        fresh += terms.fresh(j);
        freshLeft--;
      }
      j = byGrey[k];
      if (holds(rows, at, j)) {
        grey += terms.grey(j);
      } else if (greyLeft > 0 && earliest + need[j] <= day.latestEnd) {
        grey += terms.grey(j);
        greyLeft--;
      }
    }
    return !terms.lasts(fresh, grey, 1);
  }

  private static boolean holds(long[] rows, int at, int j) {
    return (rows[at + (j >>> 6)] >>> j & 1) != 0;
  }
}
