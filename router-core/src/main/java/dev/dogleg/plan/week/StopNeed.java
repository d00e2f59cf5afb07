package dev.dogleg.plan.week;

import dev.dogleg.schedule.StepTerms;
import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * Whether the tanks may run out before the end of a day that goes on after a set.
 *
 * <p>Maintainers: what was served, and the thirstiest of what may still come: no more visits than
 * the shortest needs leave time for, and each only where there is time for it alone.
 */
final class StopNeed {
  /** For each visit the seconds that it takes at least after another, home included. */
  final int[] need;

  /** Visits by these. */
  final int[] byNeed;

  private final RelaxedDay day;
  private final StepTerms terms;
  private final int[] shortest;
  private final int[] byFresh;
  private final int[] byGrey;
  private final boolean water;

  /** For one kind of van-day. */
  StopNeed(VanKind kind) {
    day = kind.relaxed();
    terms = kind.model().steps();
    water = terms.water() && terms.mostStops() > 0;
    need = new int[day.n];
    for (int j = 0; j < day.n; j++) {
      int way = Integer.MAX_VALUE / 4;
      for (int i = 0; i < day.n; i++) {
        if (i != j && day.legs.reaches(i, j)) {
          way = Math.min(way, day.legs.least(i, j));
        }
      }
      need[j] = way + day.service[j] + day.home[j];
    }
    byNeed =
        IntStream.range(0, day.n)
            .boxed()
            .sorted(Comparator.comparingInt((Integer j) -> need[j]).thenComparingInt(j -> j))
            .mapToInt(Integer::intValue)
            .toArray();
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
    long fresh = 0;
    long grey = 0;
    for (int j = 0; j < day.n; j++) {
      if (holds(rows, at, j)) {
        fresh += terms.fresh(j);
        grey += terms.grey(j);
      }
    }
    return mayBeNeeded(fresh, grey, rows, at, earliest);
  }

  /**
   * Whether they may, from what was used since they were last full and empty.
   *
   * @param freshUsed fresh water used, in millilitres
   * @param greyMade grey water made, in millilitres
   * @param rows words of sets
   * @param at first word of the visits that will not come any more
   * @param earliest the day goes on at this second at the earliest
   */
  boolean mayBeNeeded(long freshUsed, long greyMade, long[] rows, int at, int earliest) {
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
    long fresh = freshUsed;
    long grey = greyMade;
    int freshLeft = more;
    int greyLeft = more;
    for (int k = 0; k < byFresh.length && freshLeft + greyLeft > 0; k++) {
      int j = byFresh[k];
      if (freshLeft > 0 && !holds(rows, at, j) && earliest + need[j] <= day.latestEnd) {
        fresh += terms.fresh(j);
        freshLeft--;
      }
      j = byGrey[k];
      if (greyLeft > 0 && !holds(rows, at, j) && earliest + need[j] <= day.latestEnd) {
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
