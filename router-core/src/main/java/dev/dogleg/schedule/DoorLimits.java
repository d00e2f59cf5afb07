package dev.dogleg.schedule;

import dev.dogleg.itinerary.DayRule;
import dev.dogleg.time.TimeWindow;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * What the clock says of one stay, in one way to keep liked hours or pay for them.
 *
 * <p>An arrival at {@code t} belongs to the first of the arrival windows whose end is not before
 * {@code t}; its service starts no earlier than that window, which may begin after its own end (a
 * liked hour inside a promised one). The stay lies in one of the van windows. Immutable; the arrays
 * are not handed out.
 */
final class DoorLimits {
  final int[] arriveFrom;
  final int[] arriveTo;
  final int doneBy;
  final int[] vanFrom;
  final int[] vanTo;
  final long price;

  DoorLimits(int[] arriveFrom, int[] arriveTo, int doneBy, int[] vanFrom, int[] vanTo, long price) {
    this.arriveFrom = arriveFrom;
    this.arriveTo = arriveTo;
    this.doneBy = doneBy;
    this.vanFrom = vanFrom;
    this.vanTo = vanTo;
    this.price = price;
  }

  /** No limit at all. */
  static DoorLimits none() {
    int[] zero = {0};
    int[] end = {TimeWindow.DAY_END};
    return new DoorLimits(zero, end, TimeWindow.DAY_END, zero, end, 0);
  }

  /** {@return every way to keep or pay for the liked hours of a visit with these limits} */
  DoorLimits[] ways(String id, List<DayRule> rules) {
    List<DoorLimits> ways = new ArrayList<>(List.of(this));
    for (DayRule rule : rules) {
      if (rule instanceof DayRule.Clock clock && clock.visits().contains(id)) {
        ways = ways(ways, clock);
      }
    }
    return ways.toArray(DoorLimits[]::new);
  }

  private static List<DoorLimits> ways(List<DoorLimits> ways, DayRule.Clock clock) {
    List<DoorLimits> more = new ArrayList<>();
    for (DoorLimits way : ways) {
      DoorLimits kept = way.keeping(clock);
      if (kept.sameAs(way)) {
        more.add(way);
      } else {
        more.add(way.dearer(clock.ratherSixtieths().orElseThrow()));
        if (kept.arriveFrom.length > 0 && kept.vanFrom.length > 0) {
          more.add(kept);
        }
      }
    }
    return more;
  }

  private boolean sameAs(DoorLimits other) {
    return doneBy == other.doneBy
        && Arrays.equals(arriveFrom, other.arriveFrom)
        && Arrays.equals(arriveTo, other.arriveTo)
        && Arrays.equals(vanFrom, other.vanFrom)
        && Arrays.equals(vanTo, other.vanTo);
  }

  private DoorLimits dearer(long more) {
    return new DoorLimits(arriveFrom, arriveTo, doneBy, vanFrom, vanTo, price + more);
  }

  /** {@return the same limits, its price times a scale} */
  DoorLimits priced(long scale) {
    long scaled = Math.multiplyExact(price, scale);
    return new DoorLimits(arriveFrom, arriveTo, doneBy, vanFrom, vanTo, scaled);
  }

  private DoorLimits keeping(DayRule.Clock clock) {
    return switch (clock.kind()) {
      case ARRIVE -> {
        List<int[]> both = both(arriveFrom, arriveTo, clock.windows());
        yield new DoorLimits(column(both, 0), column(both, 1), doneBy, vanFrom, vanTo, price);
      }
      case DONE_BY -> {
        int by = Math.min(doneBy, clock.windows().get(0).toSeconds());
        yield new DoorLimits(arriveFrom, arriveTo, by, vanFrom, vanTo, price);
      }
      case VAN -> {
        List<int[]> both = both(vanFrom, vanTo, clock.windows());
        both.removeIf(span -> span[0] > span[1]);
        yield new DoorLimits(arriveFrom, arriveTo, doneBy, column(both, 0), column(both, 1), price);
      }
    };
  }

  /** Every pair of windows as one, sorted; none that another makes useless. */
  private static List<int[]> both(int[] from, int[] to, List<TimeWindow> liked) {
    List<int[]> pairs = new ArrayList<>();
    for (int w = 0; w < from.length; w++) {
      for (TimeWindow window : liked) {
        int start = Math.max(from[w], window.fromSeconds());
        pairs.add(new int[] {start, Math.min(to[w], window.toSeconds())});
      }
    }
    pairs.sort(Comparator.<int[]>comparingInt(span -> span[0]).thenComparingInt(span -> -span[1]));
    List<int[]> kept = new ArrayList<>();
    for (int[] span : pairs) {
      if (kept.isEmpty() || span[1] > kept.get(kept.size() - 1)[1]) {
        kept.add(span);
      }
    }
    return kept;
  }

  private static int[] column(List<int[]> spans, int which) {
    return spans.stream().mapToInt(span -> span[which]).toArray();
  }

  /**
   * {@return every pairing of a van window with an arrival window that an arrival may fall into}
   */
  List<DoorGate> gates() {
    List<DoorGate> gates = new ArrayList<>();
    for (int v = 0; v < vanFrom.length; v++) {
      int low = vanFrom[v];
      for (int w = 0; w < arriveFrom.length; w++) {
        int high = Math.min(arriveTo[w], vanTo[v]);
        if (low <= high) {
          int done = Math.min(doneBy, vanTo[v]);
          gates.add(new DoorGate(low, high, arriveFrom[w], done, vanTo[v], price));
        }
        low = Math.max(low, arriveTo[w] + 1);
      }
    }
    return gates;
  }

  /** Last second at which a door may be reached, and a service begun and ended in time. */
  int latestArrival(int service) {
    int latestDone = Math.min(doneBy, latestLeave());
    return Math.min(arriveTo[arriveTo.length - 1], latestDone - service);
  }

  /** Last second at which a door may be left. */
  int latestLeave() {
    return vanTo[vanTo.length - 1];
  }
}
