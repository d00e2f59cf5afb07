package dev.dogleg.schedule;

import java.util.Arrays;

/**
 * A lower bound on what the rest of a day costs, as a function of time: straight pieces.
 *
 * <p>Piece k holds the seconds after piece k-1 until its own last one, {@code until}; its line is
 * given by the value there and a whole slope per second. Before the first piece its line goes on;
 * after the last there is no day. A value of {@link #NONE} or more means that there is no day
 * either. Mutable until handed out; one thread.
 */
public final class CostFloor {
  /** No day; sums of two still fit. */
  public static final long NONE = 1L << 61;

  private static final long IMPOSSIBLE = 1L << 60;

  int size;
  int[] until;
  long[] value;
  long[] slope;

  /**
   * No day at any time.
   *
   * @param room pieces to make room for
   */
  public CostFloor(int room) {
    until = new int[room];
    value = new long[room];
    slope = new long[room];
  }

  /** {@return a copy no larger than needed} */
  public CostFloor trimmed() {
    CostFloor copy = new CostFloor(0);
    copy.size = size;
    copy.until = Arrays.copyOf(until, size);
    copy.value = Arrays.copyOf(value, size);
    copy.slope = Arrays.copyOf(slope, size);
    return copy;
  }

  /** Forgets all pieces. */
  public void clear() {
    size = 0;
  }

  /** Gives its pieces for another's. */
  void swap(CostFloor other) {
    int[] otherUntil = other.until;
    long[] otherValue = other.value;
    long[] otherSlope = other.slope;
    int otherSize = other.size;
    other.until = until;
    other.value = value;
    other.slope = slope;
    other.size = size;
    until = otherUntil;
    value = otherValue;
    slope = otherSlope;
    size = otherSize;
  }

  /** {@return whether no time is possible} */
  public boolean empty() {
    return size == 0;
  }

  /** Adds a piece after the last one; flat neighbours that differ by at most {@code near} join. */
  void add(int last, long valueThere, long slopeThere, long near) {
    long line = valueThere >= IMPOSSIBLE ? 0 : slopeThere;
    long at = valueThere >= IMPOSSIBLE ? NONE : valueThere;
    if (size > 0) {
      int k = size - 1;
      if (last <= until[k]) {
        return;
      }
      if (slope[k] == line && at < IMPOSSIBLE == value[k] < IMPOSSIBLE) {
        long shift = at - line * (last - until[k]) - value[k];
        if (line == 0 ? Math.abs(shift) <= near || at >= IMPOSSIBLE : shift == 0) {
          value[k] = line == 0 ? Math.min(value[k], at) : at;
          until[k] = last;
          return;
        }
      }
    }
    room();
    until[size] = last;
    value[size] = at;
    slope[size] = line;
    size++;
  }

  void room() {
    if (size == until.length) {
      int room = Math.max(8, size * 2);
      until = Arrays.copyOf(until, room);
      value = Arrays.copyOf(value, room);
      slope = Arrays.copyOf(slope, room);
    }
  }

  /** Drops impossible pieces at the end. */
  void close() {
    while (size > 0 && value[size - 1] >= IMPOSSIBLE) {
      size--;
    }
  }

  /** {@return last second with a piece} */
  public int last() {
    return size == 0 ? Integer.MIN_VALUE : until[size - 1];
  }

  /** {@return the piece of a second not after {@link #last()}} */
  int piece(int time) {
    int k = 0;
    while (until[k] < time) {
      k++;
    }
    return k;
  }

  long in(int piece, int time) {
    return value[piece] >= IMPOSSIBLE ? NONE : value[piece] - slope[piece] * (until[piece] - time);
  }

  /**
   * The bound at one second.
   *
   * @param time elapsed second
   * @return cost, {@link #NONE} or more where there is no day
   */
  public long at(int time) {
    return time > last() ? NONE : in(piece(time), time);
  }

  /**
   * The least bound over a span.
   *
   * @param first first second
   * @param end last second
   * @return cost, {@link #NONE} or more where there is no day
   */
  public long least(int first, int end) {
    long best = NONE;
    int stop = Math.min(end, last());
    if (first > stop) {
      return best;
    }
    int start = first;
    for (int k = piece(first); start <= stop; k++) {
      int tail = Math.min(stop, until[k]);
      best = Math.min(best, Math.min(in(k, start), in(k, tail)));
      start = tail + 1;
    }
    return best;
  }

  /**
   * Where it is least.
   *
   * @param first first second of the first piece
   * @return a second of the least bound, the first one that a piece begins or ends with
   */
  public int cheapest(int first) {
    long best = NONE;
    int at = first;
    int start = first;
    for (int k = 0; k < size; k++) {
      if (in(k, start) < best) {
        best = in(k, start);
        at = start;
      }
      if (value[k] < best) {
        best = value[k];
        at = until[k];
      }
      start = until[k] + 1;
    }
    return at;
  }

  /** {@return the first second of a span whose bound is below a limit; {@code end + 1} if none} */
  int firstBelow(int first, int end, long limit) {
    int stop = Math.min(end, last());
    int start = first;
    for (int k = first > stop ? 0 : piece(first); start <= stop; k++) {
      int tail = Math.min(stop, until[k]);
      long there = in(k, start);
      if (there < limit) {
        return start;
      }
      if (slope[k] < 0 && in(k, tail) < limit) {
        return start + (int) ((there - limit) / -slope[k] + 1);
      }
      start = tail + 1;
    }
    return end == Integer.MAX_VALUE ? end : end + 1;
  }

  /** {@return the last second of a span whose bound is below a limit; {@code first - 1} if none} */
  int lastBelow(int first, int end, long limit) {
    int stop = Math.min(end, last());
    if (first > stop) {
      return first - 1;
    }
    int tail = stop;
    for (int k = piece(stop); tail >= first; k--) {
      int start = Math.max(first, k == 0 ? first : until[k - 1] + 1);
      long there = in(k, tail);
      if (there < limit) {
        return tail;
      }
      if (slope[k] > 0 && in(k, start) < limit) {
        return tail - (int) ((there - limit) / slope[k] + 1);
      }
      tail = start - 1;
    }
    return first - 1;
  }

  /**
   * Adds to every value.
   *
   * @param more cost
   */
  public void raise(long more) {
    for (int k = 0; k < size; k++) {
      value[k] = value[k] >= IMPOSSIBLE ? NONE : value[k] + more;
    }
  }

  /**
   * Drops what is of no use at its end.
   *
   * @param first first second of the first piece
   * @param limit a bound of this or more is of no use
   */
  public void cut(int first, long limit) {
    int last = lastBelow(first, last(), limit);
    while (size > 0 && (size > 1 ? until[size - 2] >= last : last < first)) {
      size--;
    }
    if (size > 0 && until[size - 1] > last) {
      value[size - 1] = in(size - 1, last);
      until[size - 1] = last;
    }
  }

  /**
   * Makes this the lesser of two bounds.
   *
   * @param x one
   * @param y the other
   * @param first first second
   * @param end last second
   * @param near flat pieces that differ by at most this much become one
   */
  public void lesser(CostFloor x, CostFloor y, int first, int end, long near) {
    clear();
    int start = first;
    int i = 0;
    int j = 0;
    int stop = Math.min(end, Math.max(x.last(), y.last()));
    while (start <= stop) {
      while (i < x.size && x.until[i] < start) {
        i++;
      }
      while (j < y.size && y.until[j] < start) {
        j++;
      }
      int tail = stop;
      tail = i < x.size ? Math.min(tail, x.until[i]) : tail;
      tail = j < y.size ? Math.min(tail, y.until[j]) : tail;
      boolean xOpen = i < x.size && x.value[i] < IMPOSSIBLE;
      boolean yOpen = j < y.size && y.value[j] < IMPOSSIBLE;
      if (!xOpen || !yOpen) {
        if (xOpen) {
          add(tail, x.in(i, tail), x.slope[i], near);
        } else if (yOpen) {
          add(tail, y.in(j, tail), y.slope[j], near);
        } else {
          add(tail, NONE, 0, near);
        }
      } else {
        cross(x, i, y, j, start, tail, near);
      }
      start = tail + 1;
    }
    close();
  }

  private void cross(CostFloor x, int i, CostFloor y, int j, int start, int tail, long near) {
    long headGap = x.in(i, start) - y.in(j, start);
    long tailGap = x.in(i, tail) - y.in(j, tail);
    if (headGap <= 0 && tailGap <= 0) {
      add(tail, x.in(i, tail), x.slope[i], near);
    } else if (headGap >= 0 && tailGap >= 0) {
      add(tail, y.in(j, tail), y.slope[j], near);
    } else {
      long rate = Math.abs(x.slope[i] - y.slope[j]);
      int middle = start + (int) (Math.abs(headGap) / rate);
      CostFloor before = headGap < 0 ? x : y;
      CostFloor after = headGap < 0 ? y : x;
      int k = headGap < 0 ? i : j;
      int l = headGap < 0 ? j : i;
      add(middle, before.in(k, middle), before.slope[k], near);
      add(tail, after.in(l, tail), after.slope[l], near);
    }
  }
}
