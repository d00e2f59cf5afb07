package dev.dogleg.schedule;

import java.util.function.IntPredicate;

/**
 * How much later an event may be without breaking a hard limit of it or of a later event.
 *
 * <p>Maintainers: inside one van window a later arrival can only make less possible (an earlier van
 * could wait at the door), so the largest delay is found by halving, from the last window down.
 */
final class SpareTime {
  private final DayModel day;
  private final OrderChain chain;
  private final int[] order;
  private final int slot;

  SpareTime(DayModel day, int[] order, int slot) {
    this.day = day;
    this.chain = new OrderChain(day.free(), 1);
    this.chain.choose(order);
    this.order = order;
    this.slot = slot;
  }

  /** Delay of leaving the start place at {@code leave}. */
  int ofLeaving(int leave) {
    int most = day.latestEnd() - leave;
    int[] vanTo = day.doors.vanTo[order[0]];
    for (int v = vanTo.length - 1; v >= 0; v--) {
      int vanFrom = day.doors.vanFrom[order[0]][v];
      int until = vanTo[v];
      int least = largest(-1, most, delay -> arriveFirst(leave + delay) < vanFrom) + 1;
      int last = largest(least, most, delay -> arriveFirst(leave + delay) <= until);
      IntPredicate possible =
          delay -> chain.spareFromArrival(0, arriveFirst(leave + delay), false, slot);
      if (least <= last && arriveFirst(leave + least) <= until && possible.test(least)) {
        return largest(least, last, possible);
      }
    }
    return 0;
  }

  private int arriveFirst(int leave) {
    return leave + day.drive(day.start(), order[0], leave);
  }

  /** Delay of arriving at the door of position {@code k}. */
  int ofArrival(int k, int arrive) {
    boolean taken = slot >= 0 && slot < 2 * k - 1;
    int[] vanTo = day.doors.vanTo[order[k]];
    IntPredicate possible = delay -> chain.spareFromArrival(k, arrive + delay, taken, slot);
    for (int v = vanTo.length - 1; v >= 0; v--) {
      int least = Math.max(0, day.doors.vanFrom[order[k]][v] - arrive);
      int last = Math.min(vanTo[v], day.latestEnd()) - arrive;
      if (least <= last && possible.test(least)) {
        return largest(least, last, possible);
      }
    }
    return 0;
  }

  /** Delay of the end of the service after which position {@code k} has its break. */
  int ofBreakAfter(int k, int serviceEnd, int vanTo) {
    return largest(
        0,
        Math.min(vanTo, day.latestEnd()) - serviceEnd,
        delay -> {
          int start = Math.max(serviceEnd + delay, day.breakFrom());
          int ready = start + day.breakLength();
          return start <= day.breakTo()
              && ready <= vanTo
              && chain.spareFromReady(k, ready, vanTo, true, slot);
        });
  }

  /** Delay of arriving at the end place. */
  int ofEnd(int end) {
    return day.latestEnd() - end;
  }

  /** The largest number up to {@code most} that passes, where {@code holds} does. */
  private static int largest(int holds, int most, IntPredicate possible) {
    int passes = holds;
    int fails = most + 1;
    while (fails - passes > 1) {
      int middle = passes + (fails - passes) / 2;
      if (possible.test(middle)) {
        passes = middle;
      } else {
        fails = middle;
      }
    }
    return passes;
  }
}
