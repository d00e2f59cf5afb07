package dev.dogleg.audit;

import dev.dogleg.itinerary.DayRequest;
import java.util.Arrays;

/**
 * Goes over the sets of visits of a van-day, smaller ones first, and tells what each costs at least
 * by {@link LeastDay}: over sets and the visit that comes last, as Held and Karp do ("A dynamic
 * programming approach to sequencing problems", Journal of SIAM 10:196-210, 1962).
 *
 * <p>Maintainers: a set is passed over where no order of it can be in time even so, or where one
 * visit fewer already is: legs are closed and rules looked at only forbid more of more. Not for
 * several threads.
 */
final class SetSweep {
  /** Visits of a van-day above which no set is looked at: a set is a word of bits. */
  private static final int MOST_VISITS = 62;

  /** Sets of one size that there may be. */
  private static final long MOST_RANKS = 6_000_000;

  /** Sets with a last visit that may be kept at once. */
  private static final int MOST_KEPT = 6_000_000;

  private final DayRequest request;
  private final LeastDay day;
  private final WorkLeft work;

  /** Sets of the size last swept, rising; for each of their visits, rising, what it has last. */
  private long[] sets = {0};

  private int many = 1;
  private Lasts lasts = new Lasts();
  private int size;

  /** Numbers of the sets by rank; -1 where there is none. */
  private int[] byRank = {0};

  /** Ways to choose so many visits of those before a visit: {@code ways[size][visit]}. */
  private final long[][] ways;

  /** Visits of the set looked at, and ranks of it without one of them. */
  private final int[] members = new int[MOST_VISITS + 1];

  private final long[] ranks = new long[MOST_VISITS + 1];

  /** Sets with a last visit: least cost, earliest leaving of its door, the same with the break. */
  private static final class Lasts {
    private int[] cost = new int[64];
    private int[] ready = new int[64];
    private int[] rested = new int[64];

    void reach(int length) {
      if (length > cost.length) {
        cost = Arrays.copyOf(cost, 2 * length);
        ready = Arrays.copyOf(ready, 2 * length);
        rested = Arrays.copyOf(rested, 2 * length);
      }
    }
  }

  /** Is shown each set. */
  interface Look {
    /**
     * Looks at a set that may be possible.
     *
     * @param set bit i for the i-th visit
     * @param least it costs no less
     */
    void at(long set, long least);
  }

  SetSweep(DayRequest request, LeastDay day, WorkLeft work) {
    this.request = request;
    this.day = day;
    this.work = work;
    int n = Math.min(MOST_VISITS, request.visits().size());
    if (request.visits().size() > MOST_VISITS) {
      work.spend(Long.MAX_VALUE);
    }
    ways = new long[n + 2][n + 1];
    for (int visit = 0; visit <= n; visit++) {
      ways[0][visit] = 1;
      for (int k = 1; k <= n + 1 && visit > 0; k++) {
        ways[k][visit] = Math.min(Long.MAX_VALUE / 4, ways[k][visit - 1] + ways[k - 1][visit - 1]);
      }
    }
  }

  /** {@return whether no larger set is possible} */
  boolean done() {
    return !work.spent() && many == 0;
  }

  /** Goes over the sets of one visit more; not wholly where the work is spent. */
  void next(Look look) {
    int wider = size + 1;
    long[] found = new long[64];
    Lasts now = new Lasts();
    int count = 0;
    if (wider > day.visits()) {
      many = 0;
      return;
    }
    long all = ways[wider][day.visits()];
    work.spend(all > MOST_RANKS ? Long.MAX_VALUE : all);
    if (work.spent()) {
      return;
    }
    int[] ranked = new int[(int) all];
    Arrays.fill(ranked, -1);
    // The highest visit outside: so sets come rising, and those looked up lie close together.
    for (int i = 0; i < day.visits() && !work.spent(); i++) {
      for (int s = 0; s < many && sets[s] < 1L << i && !work.spent(); s++) {
        if (count == found.length) {
          found = Arrays.copyOf(found, 2 * count);
        }
        now.reach((count + 1) * wider);
        long set = sets[s] | 1L << i;
        work.spend(20L + 2L * wider * wider);
        if (day.forbidden(set) || !enter(set, now, count * wider)) {
          continue;
        }
        long least = least(now, count * wider);
        if (least < DaySeconds.NEVER) {
          ranked[(int) rank(wider)] = count;
          found[count++] = set;
          look.at(set, least + day.priceOfService(set));
        }
      }
      if ((long) count * wider > MOST_KEPT) {
        work.spend(Long.MAX_VALUE);
      }
    }
    sets = found;
    many = count;
    lasts = now;
    size = wider;
    byRank = ranked;
  }

  /** The rank of the set looked at among those of its size: Lehmer's order of combinations. */
  private long rank(int visits) {
    long rank = 0;
    for (int k = 0; k < visits; k++) {
      rank += ways[k + 1][members[k]];
    }
    return rank;
  }

  /** Tells members and ranks of a set. */
  private void read(long set) {
    int k = 0;
    for (long rest = set; rest != 0; rest &= rest - 1) {
      members[k++] = Long.numberOfTrailingZeros(rest);
    }
    long above = 0;
    for (int j = k - 1; j >= 0; j--) {
      ranks[j] = above;
      above += ways[j][members[j]];
    }
    long below = 0;
    for (int j = 0; j < k; j++) {
      ranks[j] += below;
      below += ways[j + 1][members[j]];
    }
  }

  /** Fills in what a set has with each visit last; false where one visit fewer is impossible. */
  private boolean enter(long set, Lasts now, int to) {
    read(set);
    for (int k = 0; k <= size; k++) {
      if (byRank[(int) ranks[k]] < 0) {
        return false;
      }
    }
    for (int k = 0; k <= size; k++) {
      int at = to + k;
      int last = members[k];
      now.cost[at] = LeastDay.NONE;
      now.ready[at] = LeastDay.NONE;
      now.rested[at] = LeastDay.NONE;
      if (size == 0) {
        long arrive = (long) request.shift().hours().fromSeconds() + day.seconds(day.start(), last);
        now.ready[at] = day.ready(last, arrive);
        now.rested[at] = day.readyRested(last, arrive);
        now.cost[at] = day.cost(day.start(), last);
      } else if (!request.visits().get(last).first()) {
        after(k, byRank[(int) ranks[k]] * size, now, at);
      }
    }
    return true;
  }

  private void after(int k, int from, Lasts now, int at) {
    int arrive = LeastDay.NONE;
    int arriveRested = LeastDay.NONE;
    int least = LeastDay.NONE;
    int last = members[k];
    int b = from;
    for (int m = 0; m <= size; m++) {
      if (m != k) {
        if (lasts.ready[b] < LeastDay.NONE) {
          int leg = day.seconds(members[m], last);
          arrive = Math.min(arrive, lasts.ready[b] + leg);
          arriveRested = Math.min(arriveRested, lasts.rested[b] + leg);
          least = Math.min(least, lasts.cost[b] + day.cost(members[m], last));
        }
        b++;
      }
    }
    if (arrive < LeastDay.NONE) {
      now.ready[at] = day.ready(last, arrive);
      now.rested[at] = Math.min(day.readyRested(last, arrive), day.ready(last, arriveRested));
      now.cost[at] = Math.min(LeastDay.NONE - 1, least);
    }
  }

  /** The least cost of a day; drops those with a last visit that is home too late. */
  private long least(Lasts now, int from) {
    long least = DaySeconds.NEVER;
    for (int k = 0; k <= size; k++) {
      int at = from + k;
      int end = LeastDay.NONE;
      if (now.ready[at] < LeastDay.NONE) {
        end = day.ends(members[k], now.ready[at], now.rested[at], size + 1);
      }
      if (end < LeastDay.NONE) {
        long home = (long) now.cost[at] + day.cost(members[k], day.end()) + day.priceOfEnd(end);
        least = Math.min(least, home);
      } else {
        now.ready[at] = LeastDay.NONE;
      }
    }
    return least;
  }
}
