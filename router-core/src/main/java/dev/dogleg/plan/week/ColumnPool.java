package dev.dogleg.plan.week;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Day sets of a week in flat arrays: kind of van-day, set of bookings, and a cost that serving just
 * this set there cannot be below; once asked for, the exact cost.
 *
 * <p>The empty set of each kind is not stored; it always exists and costs nothing. A set hides its
 * width: it is a row of 64-bit words. Costs hold the extra prices of the choices. One thread.
 */
final class ColumnPool {
  /** What a column's cost is. */
  enum Known {
    /** That of some day: the set may cost less. */
    GUESS,
    /** What the set costs at least. */
    BOUND,
    /** What it costs. */
    EXACT
  }

  private final int words;
  private int size;
  private int[] kind = new int[64];
  private long[] cost = new long[64];
  private Known[] known = new Known[64];
  private long[] sets;

  /** An empty pool for so many bookings. */
  ColumnPool(int bookingCount) {
    words = Math.max(1, (bookingCount + Long.SIZE - 1) / Long.SIZE);
    sets = new long[64 * words];
  }

  /**
   * Adds a set; no set may be added twice to one kind.
   *
   * @param onKind kind of van-day
   * @param bookings numbers of the bookings it serves, at least one
   * @param costOrBound what serving just them costs
   * @param what how that is meant
   * @return number of the column
   */
  int add(int onKind, int[] bookings, long costOrBound, Known what) {
    if (size == kind.length) {
      kind = Arrays.copyOf(kind, 2 * size);
      cost = Arrays.copyOf(cost, 2 * size);
      known = Arrays.copyOf(known, 2 * size);
      sets = Arrays.copyOf(sets, 2 * size * words);
    }
    kind[size] = onKind;
    cost[size] = costOrBound;
    known[size] = what;
    for (int booking : bookings) {
      sets[size * words + (booking >>> 6)] |= 1L << booking;
    }
    return size++;
  }

  /** Takes the column added last away again. */
  void dropLast() {
    size--;
    Arrays.fill(sets, size * words, (size + 1) * words, 0);
  }

  int size() {
    return size;
  }

  int kind(int column) {
    return kind[column];
  }

  long cost(int column) {
    return cost[column];
  }

  boolean isExact(int column) {
    return known[column] == Known.EXACT;
  }

  /** Puts the exact cost in the place of a guess or a bound. */
  void settle(int column, long exactCost) {
    if (exactCost < cost[column] && known[column] == Known.BOUND) {
      throw new IllegalStateException(
          "a bound was above the cost it bounds: " + cost[column] + " > " + exactCost);
    }
    cost[column] = exactCost;
    known[column] = Known.EXACT;
  }

  /**
   * Puts a bound, or a better guess, in the place of a guess.
   *
   * @param column a column
   * @param costOrBound what its set costs in some order, or at least
   * @param what which of the two
   * @return whether its cost is another one now
   */
  boolean lower(int column, long costOrBound, Known what) {
    if (known[column] != Known.GUESS) {
      return false;
    }
    boolean lower = costOrBound < cost[column];
    known[column] = what;
    cost[column] = Math.min(costOrBound, cost[column]);
    return lower;
  }

  /** {@return the columns of one booking} */
  int[] singles() {
    return IntStream.range(0, size).filter(column -> bookings(column).length == 1).toArray();
  }

  boolean serves(int column, int booking) {
    return (sets[column * words + (booking >>> 6)] >>> booking & 1) != 0;
  }

  /** {@return booking numbers, rising} */
  int[] bookings(int column) {
    return SetBits.members(sets, column * words, words);
  }

  /** Sum of prices of the bookings that a column serves. */
  long sum(int column, long[] price) {
    long sum = 0;
    for (int w = 0; w < words; w++) {
      for (long rest = sets[column * words + w]; rest != 0; rest &= rest - 1) {
        sum += price[Long.SIZE * w + Long.numberOfTrailingZeros(rest)];
      }
    }
    return sum;
  }

  /** Whether a column serves two or three of a cut's bookings. */
  boolean counts(int column, RowCut cut) {
    if (words == 1) {
      return Long.bitCount(sets[column] & cut.mask()) > 1;
    }
    int served = serves(column, cut.first()) ? 1 : 0;
    served += serves(column, cut.second()) ? 1 : 0;
    return served == 2 || (served == 1 && serves(column, cut.third()));
  }

  /** Whether two columns serve a booking both. */
  boolean meet(int column, int other) {
    for (int w = 0; w < words; w++) {
      if ((sets[column * words + w] & sets[other * words + w]) != 0) {
        return true;
      }
    }
    return false;
  }
}
