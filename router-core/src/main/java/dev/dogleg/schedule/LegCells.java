package dev.dogleg.schedule;

import dev.dogleg.travel.TravelTimes;
import java.util.Arrays;

/**
 * One leg seen roughly: the day cut into few cells, each with the least duration in it.
 *
 * <p>Maintainers: a straight stretch ({@link TravelTimes#straightUntil}) is cut so that durations
 * of one cell differ by little; short neighbours that hardly differ become one cell. What is
 * computed with cells is never above the truth. Immutable.
 */
final class LegCells {
  /** Durations of one cell differ by about this part of the least one. */
  private static final int PART = 256;

  /** Cells of which the rest of a day that changes ever on becomes one. */
  private static final int MOST = 512;

  final int size;
  final int[] until;
  final int[] least;
  final int[] most;

  /** Cells of a leg between two places, left within a span of the day. */
  static LegCells of(TravelTimes travel, int i, int j, int from, int to, int leastDrive) {
    Growing cells = new Growing(leastDrive / PART + 1);
    for (long t = from; t <= to; ) {
      if (cells.spans > MOST) {
        cells.add(to, leastDrive, Integer.MAX_VALUE / 2);
        break;
      }
      int start = (int) t;
      int end = Math.min(to, travel.straightUntil(i, j, start));
      int low = travel.driveSeconds(i, j, start);
      int high = end == start ? low : travel.driveSeconds(i, j, end);
      int parts = Math.abs(high - low) / cells.within + 1;
      int before = low;
      for (int part = 1; part <= parts; part++) {
        int last = start + (int) ((long) (end - start) * part / parts);
        int there = part == parts ? high : travel.driveSeconds(i, j, last);
        cells.add(last, Math.min(before, there), Math.max(before, there) + 1);
        before = part == parts ? there : travel.driveSeconds(i, j, last + 1);
      }
      t = (long) end + 1;
    }
    return new LegCells(cells);
  }

  private LegCells(Growing cells) {
    size = cells.size;
    until = Arrays.copyOf(cells.until, size);
    least = Arrays.copyOf(cells.least, size);
    most = Arrays.copyOf(cells.most, size);
  }

  /** Cells while they are found. */
  private static final class Growing {
    private final int within;
    private int spans;
    private int size;
    private int[] until = new int[16];
    private int[] least = new int[16];
    private int[] most = new int[16];

    Growing(int within) {
      this.within = within;
    }

    void add(int last, int low, int high) {
      spans++;
      if (size > 0) {
        int both = Math.min(low, least[size - 1]);
        int top = Math.max(high, most[size - 1]);
        if (top - both <= within) {
          until[size - 1] = last;
          least[size - 1] = both;
          most[size - 1] = top;
          return;
        }
      }
      if (size == until.length) {
        until = Arrays.copyOf(until, size * 2);
        least = Arrays.copyOf(least, size * 2);
        most = Arrays.copyOf(most, size * 2);
      }
      until[size] = last;
      least[size] = low;
      most[size] = high;
      size++;
    }
  }

  /** {@return the cell of a leaving time} */
  int at(int leave) {
    int low = 0;
    int high = size - 1;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (until[middle] < leave) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
