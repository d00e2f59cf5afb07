package dev.dogleg.plan.week;

import dev.dogleg.schedule.StepTerms;
import java.util.Arrays;

/**
 * The legs of a relaxed day for floors of its rests: time cut into cells, and for each leg the
 * least drive while a cell lasts.
 */
final class RestLegs {
  /** Cells times pairs of visits, at the most. */
  private static final int MOST_WORK = 2_500_000;

  private static final int MOST_CELLS = 200;

  /** A leg is taken to be as short as at its shortest over 2^8 seconds. */
  private static final int SLOT_BITS = 8;

  /** Where no road leads in time. */
  static final int NO_WAY = -1;

  final RelaxedDay day;
  final int n;

  /** Seconds of a cell, and how many there are from the start of the day on. */
  final int cell;

  final int cells;
  private final int cellBits;

  /** By visit: nobody is ready to leave it in an earlier cell. */
  private final int[] firstCell;

  /** By leg: what rules charge at least for it. */
  private final long[] toll;

  /** By leg: price of its kilometres. */
  private final long[] length;

  /** By leg: the least service after it. */
  private final int[] service;

  /** By leg and slot: its least seconds. */
  private final int[] drive;

  /** By leg and slot: the least of it and of all later ones. */
  private final int[] later;

  /** By leg: a later start can not be in time. */
  private final int[] latest;

  private final int slots;

  /** Tabulates the legs of a day. */
  RestLegs(RelaxedDay day, StepTerms terms) {
    this.day = day;
    n = day.n;
    int span = Math.max(1, day.latestEnd - day.from + 1);
    int most = Math.max(24, Math.min(MOST_CELLS, MOST_WORK / Math.max(1, n * n)));
    int bits = 0;
    while (span >> bits > most) {
      bits++;
    }
    cellBits = bits;
    cell = 1 << bits;
    cells = ((span - 1) >> cellBits) + 1;
    slots = ((span + cell) >> SLOT_BITS) + 2;
    drive = new int[n * (n + 1) * slots];
    later = new int[drive.length];
    latest = new int[n * (n + 1)];
    firstCell = firstCells();
    toll = new long[latest.length];
    length = new long[latest.length];
    service = new int[latest.length];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j <= n; j++) {
        describe(i, j, terms);
      }
    }
  }

  /**
   * For each visit the cell in which it may be left at the earliest, whatever was served before.
   */
  private int[] firstCells() {
    int[] ready = new int[n];
    for (int j = 0; j < n; j++) {
      ready[j] = day.legs.reaches(day.start(), j) ? ready(day.start(), day.from, j) : day.latestEnd;
    }
    boolean sooner = true;
    while (sooner) {
      sooner = false;
      for (int j = 0; j < n; j++) {
        for (int i = 0; i < n; i++) {
          if (day.legs.reaches(i, j) && ready(i, ready[i], j) < ready[j]) {
            ready[j] = ready(i, ready[i], j);
            sooner = true;
          }
        }
      }
    }
    return Arrays.stream(ready).map(each -> cellOf(Math.min(each, day.latestEnd))).toArray();
  }

  private int ready(int i, int leave, int j) {
    return Math.max(leave + day.legs.least(i, j), day.open[j]) + day.service[j];
  }

  /** Tabulates a leg to a visit, or (n) to the end of the day. */
  private void describe(int i, int j, StepTerms terms) {
    int leg = i * (n + 1) + j;
    int node = j == n ? day.end() : j;
    int[] ends = i == j || !terms.leg(i, node) ? null : day.legs.spanEnds(i, node);
    if (ends == null || (j < n && day.first[j])) {
      latest[leg] = Integer.MIN_VALUE;
      return;
    }
    toll[leg] = terms.leastPrice(i, node);
    length[leg] = day.legs.price(i, node);
    service[leg] = j == n ? 0 : Math.max(day.service[j], terms.leastService(i, j));
    int[] seconds = day.legs.spanSeconds(i, node);
    int span = 0;
    for (int slot = 0; slot < slots; slot++) {
      while (ends[span] < day.from + (slot << SLOT_BITS)) {
        span++;
      }
      int shortest = seconds[span];
      for (int k = span; ends[k] < day.from + ((slot + 1) << SLOT_BITS) - 1; k++) {
        shortest = Math.min(shortest, seconds[k + 1]);
      }
      drive[leg * slots + slot] = shortest;
    }
    int least = Integer.MAX_VALUE;
    for (int slot = slots - 1; slot >= 0; slot--) {
      least = Math.min(least, drive[leg * slots + slot]);
      later[leg * slots + slot] = least;
    }
    int arriveBy = day.latestEnd;
    if (j < n) {
      int readyBy = Math.min(day.doneBy[j], day.latestEnd - day.home[j]);
      arriveBy = Math.min(day.close[j], readyBy - service[leg]);
    }
    latest[leg] = Math.min(day.leaveBy[i], arriveBy - day.legs.least(i, node));
  }

  private int cellOf(int second) {
    return (second - day.from) >> cellBits;
  }

  /** {@return the cell in which a visit is left that somebody is ready to leave at a second} */
  int cellOf(int i, int second) {
    return Math.max(firstCell[i], cellOf(second));
  }

  /** {@return the first second of a cell} */
  int start(int k) {
    return day.from + k * cell;
  }

  /** Least drive of a leg left within the cell that begins with a time. */
  private int driveFrom(int leg, int leave) {
    int first = drive[leg * slots + ((leave - day.from) >> SLOT_BITS)];
    int last = drive[leg * slots + ((leave + cell - 1 - day.from) >> SLOT_BITS)];
    return Math.min(first, last);
  }

  /** Whether the van can be at a visit so in a cell with the break behind (1) or ahead (0). */
  boolean matters(int i, int k, int free) {
    return k >= firstCell[i] && matters(k, free);
  }

  private boolean matters(int k, int free) {
    if (!day.hasBreak) {
      return free == 1;
    }
    int start = start(k);
    return free == 0
        ? start <= Math.max(day.breakTo(), day.breakFrom())
        : start + cell > day.breakFrom() + day.breakLength();
  }

  /** {@return whether a visit left at a second may be followed by another} */
  boolean inTime(int i, int j, int leave) {
    return leave <= latest[i * (n + 1) + j];
  }

  /**
   * Least drive to another visit.
   *
   * @param i visit left
   * @param j visit driven to
   * @param leave leaving within a cell's length from this second on
   * @return seconds; {@link #NO_WAY} where it would be too late
   */
  int drive(int i, int j, int leave) {
    int leg = i * (n + 1) + j;
    if (leave > latest[leg]) {
      return NO_WAY;
    }
    int seconds = driveFrom(leg, leave);
    return leave + seconds > day.close[j] ? NO_WAY : seconds;
  }

  /**
   * Least drive to another visit.
   *
   * @param i visit left
   * @param j visit driven to
   * @param leave leaving at this second at the earliest
   * @return seconds; {@link #NO_WAY} where it would be too late
   */
  int driveLater(int i, int j, int leave) {
    int leg = i * (n + 1) + j;
    return leave > latest[leg] ? NO_WAY : later[leg * slots + ((leave - day.from) >> SLOT_BITS)];
  }

  /**
   * When the van is ready to leave a visit at the earliest.
   *
   * @param i the visit before it
   * @param j the visit
   * @param arrive arrival
   * @param breakThere whether the break is taken before the service
   * @return second; {@link #NO_WAY} where it would be too late
   */
  int ready(int i, int j, int arrive, boolean breakThere) {
    int begin = arrive;
    if (breakThere) {
      if (arrive > day.breakTo()) {
        return NO_WAY;
      }
      begin = Math.max(arrive, day.breakFrom()) + day.breakLength();
    }
    int ready = Math.max(begin, day.open[j]) + service[i * (n + 1) + j];
    return ready > day.doneBy[j] || ready > day.latestEnd ? NO_WAY : ready;
  }

  /** {@return least price of a leg of so many seconds and of what rules charge for it} */
  long price(int i, int j, int seconds) {
    return ownPrice(i, j, seconds) + toll(i, j);
  }

  /** {@return what rules charge at least for a leg} */
  long toll(int i, int j) {
    return toll[i * (n + 1) + j];
  }

  /** {@return price of a leg of so many seconds without what rules charge for it} */
  long ownPrice(int i, int j, int seconds) {
    return day.driveCost(seconds) + length[i * (n + 1) + j];
  }

  /** {@return least cost of ending the day after a visit left within a cell; or never} */
  long end(int i, int k, int free) {
    int leg = i * (n + 1) + n;
    int start = start(k);
    if (start > latest[leg]) {
      return RelaxedDay.NEVER;
    }
    int seconds = driveFrom(leg, start);
    int endBy =
        day.hasBreak && free == 0 ? Math.min(day.latestEnd, day.breakFrom()) : day.latestEnd;
    return start + seconds > endBy
        ? RelaxedDay.NEVER
        : price(i, n, seconds) + day.endCost(start + seconds);
  }
}
