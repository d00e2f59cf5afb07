package dev.dogleg.plan;

import dev.dogleg.schedule.DayModel;
import dev.dogleg.schedule.StepTerms;
import java.util.Arrays;

/**
 * Every set of visits that one day may serve, each with a cost that no day serving it is below.
 *
 * <p>Maintainers: sets grow visit by visit; for each set and each visit that could come first in it
 * stand the least price of the legs from there on, the least time, and the latest leaving, over all
 * orders. Legs are at their least, the end pays overtime for the least time, break included. A set
 * that no first visit can begin in time is not kept, nor is any that holds it: dropping a visit
 * never makes a day longer, as long as legs with services between obey the triangle inequality;
 * {@link LeastLegs} is closed over detours first, so they do. Services are the least that rules
 * leave; what rules say of sets alone is counted in. A set that could only be the end of a larger
 * day stands in the tables and is not told.
 */
public final class SetBounds {
  private static final int NEVER = Integer.MAX_VALUE / 4;

  private final DayModel day;
  private final LeastLegs legs;
  private final StepTerms terms;
  private final long[] served = new long[1];
  private final int n;
  private final int[] shortest;
  private final long[] cheapest;
  private long[] sets = new long[256];
  private long[] bounds = new long[256];
  private int[] latest;
  private int[] seconds;
  private long[] price;
  private int[] table = new int[1024];
  private int size;
  private boolean complete = true;

  /**
   * All sets of up to so many visits.
   *
   * @param day the day with all visits that may be served, at most 64
   * @param mostVisits most visits in a set
   * @param mostSets sets after which it ends, see {@link #complete}
   */
  public SetBounds(DayModel day, int mostVisits, int mostSets) {
    if (day.size() > Long.SIZE) {
      throw new IllegalArgumentException("at most 64 visits, was " + day.size());
    }
    this.day = day;
    this.legs = new LeastLegs(day);
    this.terms = day.steps();
    n = day.size();
    shortest = new int[(n + 2) * (n + 2)];
    cheapest = new long[(n + 2) * (n + 2)];
    close();
    latest = new int[256 * Math.max(1, n)];
    seconds = new int[256 * Math.max(1, n)];
    price = new long[256 * Math.max(1, n)];
    Arrays.fill(table, -1);
    for (int i = 0; i < n; i++) {
      offer(1L << i);
    }
    int level = 0;
    for (int visits = 2; visits <= Math.min(mostVisits, n) && complete; visits++) {
      int end = size;
      for (int from = level; from < end && complete; from++) {
        for (int i = 0; i < n; i++) {
          long grown = sets[from] | 1L << i;
          if (grown != sets[from] && find(grown) < 0) {
            offer(grown);
            complete = size < mostSets;
          }
        }
      }
      level = end;
    }
    drop();
  }

  /** Drops the sets that no day may serve, which only stood for the ends of larger ones. */
  private void drop() {
    int kept = 0;
    for (int number = 0; number < size; number++) {
      served[0] = sets[number];
      if (bounds[number] < DayValue.NONE && terms.setMay(served, 0)) {
        sets[kept] = sets[number];
        bounds[kept] = bounds[number];
        kept++;
      }
    }
    size = kept;
  }

  /** Least seconds and prices over all detours; a visit on the way costs no service here. */
  private void close() {
    int nodes = n + 2;
    for (int i = 0; i < nodes; i++) {
      for (int j = 0; j < nodes; j++) {
        shortest[i * nodes + j] = Math.min(NEVER, legs.seconds(i, j));
        cheapest[i * nodes + j] = Math.min(DayValue.NONE, legs.price(i, j));
      }
    }
    for (int k = 0; k < n; k++) {
      for (int i = 0; i < nodes; i++) {
        for (int j = 0; j < nodes; j++) {
          int at = i * nodes + j;
          int way = shortest[i * nodes + k] + shortest[k * nodes + j];
          shortest[at] = Math.min(shortest[at], way);
        }
      }
    }
  }

  private void offer(long set) {
    served[0] = set;
    if (!terms.setMayGrow(served, 0)) {
      return;
    }
    room();
    boolean inTime = false;
    int base = size * n;
    long best = DayValue.NONE;
    int bestEnd = NEVER;
    for (long rest = set; rest != 0; rest &= rest - 1) {
      int i = Long.numberOfTrailingZeros(rest);
      first(set, i, base + i);
      int leave = latest[base + i] - day.service(i) - leg(day.start(), i);
      if (price[base + i] < DayValue.NONE
          && Math.min(leave, day.latestArrival(i) - leg(day.start(), i)) >= day.from()) {
        inTime = true;
        best = Math.min(best, cheapest[day.start() * (n + 2) + i] + price[base + i]);
        int there = Math.max(day.from() + leg(day.start(), i), day.earliestService(i));
        bestEnd = Math.min(bestEnd, there + day.service(i) + seconds[base + i]);
      }
    }
    if (inTime) {
      boolean pauses = day.hasBreak() && (set & set - 1) != 0 && bestEnd > day.breakFrom();
      bounds[size] =
          best + day.endCost(pauses ? bestEnd + day.breakLength() : bestEnd) + priceOf(set);
      sets[size] = set;
      put(size++);
    }
  }

  private long priceOf(long set) {
    long price = terms.setPrice(served, 0);
    if (terms.pricesGroom()) {
      long groomed = 0;
      for (long rest = set; rest != 0; rest &= rest - 1) {
        groomed += day.service(Long.numberOfTrailingZeros(rest));
      }
      price += terms.groomPrice(groomed);
    }
    return price;
  }

  /** The rest of a day after {@code i}, which then serves the others of a set. */
  private void first(long set, int i, int at) {
    long others = set & ~(1L << i);
    int until = -1;
    long least = DayValue.NONE;
    int time = NEVER;
    if (others == 0) {
      until = day.latestEnd() - leg(i, day.end());
      least = cheapest[i * (n + 2) + day.end()];
      time = leg(i, day.end());
    } else {
      int sub = find(others);
      for (long rest = sub < 0 ? 0 : others; rest != 0; rest &= rest - 1) {
        int j = Long.numberOfTrailingZeros(rest);
        int next = sub * n + j;
        if (price[next] < DayValue.NONE) {
          int leave = Math.min(day.latestArrival(j), latest[next] - day.service(j)) - leg(i, j);
          until = Math.max(until, leave);
          least = Math.min(least, cheapest[i * (n + 2) + j] + price[next]);
          time = Math.min(time, leg(i, j) + day.service(j) + seconds[next]);
        }
      }
    }
    latest[at] = Math.min(until, day.latestLeave(i));
    boolean possible =
        least < DayValue.NONE && earliest(i) <= latest[at] && earliest(i) + time <= day.latestEnd();
    price[at] = possible ? least : DayValue.NONE;
    seconds[at] = time;
  }

  private int earliest(int i) {
    return Math.max(day.from() + leg(day.start(), i), day.earliestService(i)) + day.service(i);
  }

  private int leg(int i, int j) {
    return shortest[i * (n + 2) + j];
  }

  private void room() {
    if (size == sets.length) {
      sets = Arrays.copyOf(sets, size * 2);
      bounds = Arrays.copyOf(bounds, size * 2);
      latest = Arrays.copyOf(latest, size * 2 * n);
      seconds = Arrays.copyOf(seconds, size * 2 * n);
      price = Arrays.copyOf(price, size * 2 * n);
    }
  }

  private static int slot(long set, int mask) {
    long mixed = set * 0x9E3779B97F4A7C15L;
    return (int) (mixed ^ mixed >>> 32) & mask;
  }

  private int find(long set) {
    int slot = slot(set, table.length - 1);
    while (table[slot] >= 0) {
      if (sets[table[slot]] == set) {
        return table[slot];
      }
      slot = slot + 1 & table.length - 1;
    }
    return -1;
  }

  private void put(int number) {
    if (number * 2 > table.length) {
      table = new int[table.length * 2];
      Arrays.fill(table, -1);
      for (int old = 0; old < number; old++) {
        place(old);
      }
    }
    place(number);
  }

  private void place(int number) {
    int slot = slot(sets[number], table.length - 1);
    while (table[slot] >= 0) {
      slot = slot + 1 & table.length - 1;
    }
    table[slot] = number;
  }

  /** {@return number of sets} */
  public int size() {
    return size;
  }

  /** {@return whether every set that one day may serve is among them} */
  public boolean complete() {
    return complete;
  }

  /**
   * A set.
   *
   * @param number 0..size-1; smaller sets first
   * @return bit v is set where it holds visit v
   */
  public long set(int number) {
    return sets[number];
  }

  /**
   * What serving a set costs at least.
   *
   * @param number 0..size-1
   * @return sixtieths, without prices of what is left out
   */
  public long bound(int number) {
    return bounds[number];
  }
}
