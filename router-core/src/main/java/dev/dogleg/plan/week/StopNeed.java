package dev.dogleg.plan.week;

import dev.dogleg.schedule.StepTerms;
import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * Whether the tanks may run out before the end of a day that goes on after a set. Mutable, one
 * thread: it remembers the set it was asked of last.
 *
 * <p>Maintainers: what was served, and of what may still come as much as there is time for, by
 * litres a second (Dantzig 1957, Operations Research 5:266-277).
 */
final class StopNeed {
  private static final int NOBODY = -1;

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
  private final int leastHome;
  private long[] goneRows = new long[0];
  private int goneAt;
  private int from;
  private int next = NOBODY;
  private boolean nextKnown;
  private long freshAfterNext;
  private long greyAfterNext;

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
    leastHome = Arrays.stream(day.home).min().orElse(0);
    byFresh = sorted(true);
    byGrey = sorted(false);
  }

  private int[] sorted(boolean fresh) {
    return Arrays.stream(byNeed)
        .boxed()
        .sorted(
            (x, y) ->
                Long.compare(
                    use(y, fresh) * (1L + shortest[x]), use(x, fresh) * (1L + shortest[y])))
        .mapToInt(Integer::intValue)
        .toArray();
  }

  private long use(int j, boolean fresh) {
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
   * Whether they may, from what was used since they were last full and empty; remembers what it was
   * asked, see {@link #next}.
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
    goneRows = rows;
    goneAt = at;
    from = earliest;
    long fresh = freshUsed + most(byFresh, true, -1, earliest);
    return !terms.lasts(fresh, greyMade, 1)
        || !terms.lasts(fresh, greyMade + most(byGrey, false, -1, earliest), 1);
  }

  /** A next visit, of which {@link #lastsAfterNext} is asked then. */
  void next(int j) {
    next = j;
    nextKnown = false;
  }

  /** Finds the most that may still be used after the next visit. */
  private void mostAfterNext() {
    freshAfterNext = most(byFresh, true, next, from + shortest[next]);
    greyAfterNext = most(byGrey, false, next, from + shortest[next]);
    nextKnown = true;
  }

  /** The most that may be used from a time on: those that use most a second, the last in part. */
  private long most(int[] order, boolean fresh, int but, int earliest) {
    long room = (long) day.latestEnd - leastHome - earliest;
    long sum = 0;
    for (int k = 0; k < order.length && room > 0; k++) {
      int j = order[k];
      if (j == but || holds(goneRows, goneAt, j) || earliest + need[j] > day.latestEnd) {
        continue;
      }
      if (shortest[j] > room) {
        return sum + (use(j, fresh) * room + shortest[j] - 1) / shortest[j];
      }
      sum += use(j, fresh);
      room -= shortest[j];
    }
    return sum;
  }

  /** {@return whether tanks with so much in and out can not run out after the next visit} */
  boolean lastsAfterNext(int freshUsed, int greyMade) {
    if (!nextKnown) {
      mostAfterNext();
    }
    return terms.lasts(freshUsed + freshAfterNext, greyMade + greyAfterNext, 1);
  }

  private static boolean holds(long[] rows, int at, int j) {
    return (rows[at + (j >>> 6)] >>> j & 1) != 0;
  }
}
