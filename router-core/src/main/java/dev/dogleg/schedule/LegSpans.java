package dev.dogleg.schedule;

import dev.dogleg.travel.TravelTimes;
import java.util.Arrays;

/**
 * The steady spans of one leg, remembered once asked for.
 *
 * <p>Maintainers: the day is cut into blocks of {@link #BLOCK} seconds; a block is filled on first
 * use. Blocks never change once made, and two threads that make the same one make equal ones, so no
 * lock is needed.
 */
final class LegSpans {
  private static final int BLOCK = 1024;

  /** Longer days are in finer units, where durations change too often to remember. */
  private static final int MOST_BLOCKS = 256;

  /** Spans that touch one block: first second, last second and duration of each. */
  private static final class Block {
    private final int[] until;
    private final int[] seconds;

    Block(TravelTimes travel, int i, int j, int from) {
      int[] ends = new int[4];
      int[] drives = new int[4];
      int count = 0;
      for (long t = from; t < (long) from + BLOCK; t = (long) ends[count - 1] + 1) {
        if (count == ends.length) {
          ends = Arrays.copyOf(ends, count * 2);
          drives = Arrays.copyOf(drives, count * 2);
        }
        drives[count] = travel.driveSeconds(i, j, (int) t);
        ends[count] = travel.steadyUntil(i, j, (int) t);
        count++;
      }
      until = Arrays.copyOf(ends, count);
      seconds = Arrays.copyOf(drives, count);
    }
  }

  private final TravelTimes travel;
  private final int i;
  private final int j;
  private final int from;
  private final Block[] blocks;

  LegSpans(TravelTimes travel, int i, int j, int from, int to) {
    this.travel = travel;
    this.i = i;
    this.j = j;
    this.from = from;
    int count = to < from ? 0 : (to - from) / BLOCK + 1;
    blocks = new Block[count > MOST_BLOCKS ? 0 : count];
  }

  private int index(int leave) {
    return leave < from ? -1 : (leave - from) / BLOCK;
  }

  private Block block(int index) {
    Block block = blocks[index];
    if (block == null) {
      block = new Block(travel, i, j, from + index * BLOCK);
      blocks[index] = block;
    }
    return block;
  }

  int drive(int leave) {
    int index = index(leave);
    if (index < 0 || index >= blocks.length) {
      return travel.driveSeconds(i, j, leave);
    }
    Block block = block(index);
    return block.seconds[find(block, leave)];
  }

  int steadyUntil(int leave) {
    int index = index(leave);
    if (index < 0 || index >= blocks.length) {
      return travel.steadyUntil(i, j, leave);
    }
    Block block = block(index);
    return block.until[find(block, leave)];
  }

  private static int find(Block block, int leave) {
    int low = 0;
    int high = block.until.length - 1;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (block.until[middle] < leave) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
