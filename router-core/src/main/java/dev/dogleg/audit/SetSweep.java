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

  /** Sets with a last visit that may be kept at once. */
  private static final int MOST_KEPT = 4_000_000;

  private final DayRequest request;
  private final LeastDay day;
  private final WorkLeft work;

  /** Sets of the size last swept, by number; for each of their visits, rising, what it has last. */
  private long[] sets = {0};

  private int many = 1;
  private Lasts lasts = new Lasts();
  private int size;

  /** Numbers of the sets by hash; -1 where there is none. */
  private int[] byHash = {0};

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
    if (request.visits().size() > MOST_VISITS) {
      work.spend(Long.MAX_VALUE);
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
    for (int s = 0; s < many && !work.spent(); s++) {
      for (int i = 64 - Long.numberOfLeadingZeros(sets[s]); i < day.visits(); i++) {
        if (count == found.length) {
          found = Arrays.copyOf(found, 2 * count);
        }
        now.reach((count + 1) * wider);
        long set = sets[s] | 1L << i;
        work.spend(4L + (long) wider * wider);
        if (work.spent() || day.forbidden(set) || !enter(set, now, count * wider)) {
          continue;
        }
        long least = least(set, now, count * wider);
        if (least < DaySeconds.NEVER) {
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
    index();
  }

  private void index() {
    byHash = new int[Math.max(2, Integer.highestOneBit(Math.max(1, many)) * 4)];
    Arrays.fill(byHash, -1);
    for (int s = 0; s < many; s++) {
      int at = slot(sets[s]);
      while (byHash[at] >= 0) {
        at = at + 1 & byHash.length - 1;
      }
      byHash[at] = s;
    }
  }

  private int slot(long set) {
    long mixed = set * 0x9E3779B97F4A7C15L; // Knuth's multiplicative hashing.
    return (int) (mixed >>> 40) & byHash.length - 1;
  }

  private int number(long set) {
    int at = byHash.length == 1 ? 0 : slot(set);
    while (byHash[at] >= 0 && sets[byHash[at]] != set) {
      at = at + 1 & byHash.length - 1;
    }
    return byHash[at];
  }

  /** Fills in what a set has with each visit last; false where one visit fewer is impossible. */
  private boolean enter(long set, Lasts now, int to) {
    int at = to;
    for (long rest = set; rest != 0; rest &= rest - 1) {
      int last = Long.numberOfTrailingZeros(rest);
      long without = set ^ 1L << last;
      int before = number(without);
      if (before < 0) {
        return false;
      }
      now.cost[at] = LeastDay.NONE;
      now.ready[at] = LeastDay.NONE;
      now.rested[at] = LeastDay.NONE;
      if (size == 0) {
        long arrive = (long) request.shift().hours().fromSeconds() + day.seconds(day.start(), last);
        now.ready[at] = day.ready(last, arrive);
        now.rested[at] = day.readyRested(last, arrive);
        now.cost[at] = day.cost(day.start(), last);
      } else if (!request.visits().get(last).first()) {
        after(without, before * size, last, now, at);
      }
      at++;
    }
    return true;
  }

  private void after(long without, int from, int last, Lasts now, int at) {
    long arrive = LeastDay.NONE;
    long arriveRested = LeastDay.NONE;
    int least = LeastDay.NONE;
    int b = from;
    for (long rest = without; rest != 0; rest &= rest - 1) {
      int previous = Long.numberOfTrailingZeros(rest);
      if (lasts.ready[b] < LeastDay.NONE) {
        int leg = day.seconds(previous, last);
        arrive = Math.min(arrive, (long) lasts.ready[b] + leg);
        arriveRested = Math.min(arriveRested, (long) lasts.rested[b] + leg);
        least = Math.min(least, lasts.cost[b] + day.cost(previous, last));
      }
      b++;
    }
    if (arrive < LeastDay.NONE) {
      now.ready[at] = day.ready(last, arrive);
      now.rested[at] = Math.min(day.readyRested(last, arrive), day.ready(last, arriveRested));
      now.cost[at] = Math.min(LeastDay.NONE - 1, least);
    }
  }

  /** The least cost of a day; drops those with a last visit that is home too late. */
  private long least(long set, Lasts now, int from) {
    long least = DaySeconds.NEVER;
    int at = from;
    for (long rest = set; rest != 0; rest &= rest - 1) {
      int last = Long.numberOfTrailingZeros(rest);
      int end = LeastDay.NONE;
      if (now.ready[at] < LeastDay.NONE) {
        end = day.ends(last, now.ready[at], now.rested[at], size + 1);
      }
      if (end < LeastDay.NONE) {
        long home = (long) now.cost[at] + day.cost(last, day.end()) + day.priceOfEnd(end);
        least = Math.min(least, home);
      } else {
        now.ready[at] = LeastDay.NONE;
      }
      at++;
    }
    return least;
  }
}
