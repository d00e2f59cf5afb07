package dev.dogleg.audit;

import dev.dogleg.itinerary.BalanceTerms;
import dev.dogleg.itinerary.BreakRule;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.DayShift;
import dev.dogleg.itinerary.Prices;
import dev.dogleg.travel.TravelTimes;
import java.util.Arrays;

/**
 * The least cost of being ready to leave a door, for every second of a day: driving on, waiting,
 * serving and the break are told second by second, so that no argument about functions of time is
 * needed. Not for several threads.
 */
final class DaySeconds {
  /** The cost of what is not possible. */
  static final long NEVER = Long.MAX_VALUE / 4;

  /** Cells that drives of pairs of places may fill, by second; beyond, they are asked each time. */
  private static final long MOST_CELLS = 20_000_000;

  private final DayShift shift;
  private final BreakRule rule;
  private final Prices prices;
  private final BalanceTerms balance;
  private final TravelTimes travel;
  private final int from;
  private final int seconds;
  private final int[][] drives;
  private final long[] open;
  private final long[] taken;
  private final long[] doneOpen;
  private final long[] doneTaken;
  private final long[] doneHere;
  private long work;

  DaySeconds(DayRequest request) {
    shift = request.shift();
    rule = shift.breakRule().orElse(null);
    prices = request.prices();
    balance = request.terms().balance().orElse(null);
    travel = request.travel();
    from = shift.hours().fromSeconds();
    seconds = Math.max(0, shift.latestEndSeconds() - from + 1);
    long cells = (long) travel.size() * travel.size() * seconds;
    drives = cells <= MOST_CELLS ? new int[travel.size() * travel.size()][] : null;
    open = new long[seconds];
    taken = new long[seconds];
    doneOpen = new long[seconds];
    doneTaken = new long[seconds];
    doneHere = new long[seconds];
  }

  /** Ready to leave a place: break open, taken before, or taken just now at this door. */
  final class Ready {
    private final long[] open = new long[seconds];
    private final long[] taken = new long[seconds];
    private final long[] here = new long[seconds];

    private void clear() {
      Arrays.fill(open, NEVER);
      Arrays.fill(taken, NEVER);
      Arrays.fill(here, NEVER);
    }
  }

  /** {@return cells looked at so far} */
  long work() {
    return work;
  }

  /** At the start place, which may be left at any second from the shift's start on. */
  Ready home() {
    Ready ready = new Ready();
    ready.clear();
    Arrays.fill(ready.open, 0);
    return ready;
  }

  /** Drives of a pair by second of leaving; computed once where there is room to keep them. */
  private int drive(int a, int b, int t) {
    if (drives == null) {
      return travel.driveSeconds(a, b, from + t);
    }
    int pair = a * travel.size() + b;
    if (drives[pair] == null) {
      int[] row = new int[seconds];
      for (int u = 0; u < seconds; u++) {
        row[u] = travel.driveSeconds(a, b, from + u);
      }
      drives[pair] = row;
    }
    return drives[pair][t];
  }

  private long length(int a, int b) {
    long metres = travel.lengthMetres(a, b);
    return Math.floorDiv(metres * 60L * prices.kilometreSeconds() + 500, 1000);
  }

  private static long driven(int seconds) {
    return (long) Prices.SIXTIETHS_PER_DRIVE_SECOND * seconds;
  }

  /**
   * Drives on and stays.
   *
   * @param before ready to leave {@code place}
   * @param place where the van stands
   * @param door where it goes
   * @param service seconds there
   * @param ways ways to keep the clock
   * @param visit whether it is a visit, at whose door a break may be taken; else a water stop
   * @param notFirst whether a break may be taken before the service
   * @param after receives when the door may be left
   * @return whether it may be left at all
   */
  boolean stay(
      Ready before,
      int place,
      int door,
      int service,
      Iterable<SecondWays> ways,
      boolean visit,
      boolean notFirst,
      Ready after) {
    after.clear();
    boolean possible = false;
    if (!travel.reaches(place, door)) {
      return false;
    }
    for (SecondWays way : ways) {
      work += 4L * seconds;
      int first = Math.max(0, way.stayFrom() - from);
      int last = (int) Math.min(seconds - 1L, (long) way.stayTo() - from);
      if (first > last || !arrive(before, place, door, way, first, last)) {
        continue;
      }
      Arrays.fill(doneOpen, NEVER);
      Arrays.fill(doneTaken, NEVER);
      Arrays.fill(doneHere, NEVER);
      for (int t = first; t <= last; t++) {
        if (visit && notFirst) {
          pause(open, taken, t, last);
        }
        wait(open, t, last);
        wait(taken, t, last);
        serve(open, doneOpen, way, service, t, last);
        serve(taken, doneTaken, way, service, t, last);
      }
      for (int t = first; t <= last; t++) {
        if (visit) {
          pause(doneOpen, doneHere, t, last);
        }
        wait(doneOpen, t, last);
        wait(doneTaken, t, last);
        wait(doneHere, t, last);
        possible |= keep(after, way.price(), t);
      }
    }
    return possible;
  }

  private boolean keep(Ready after, long price, int t) {
    after.open[t] = Math.min(after.open[t], added(doneOpen[t], price));
    after.taken[t] = Math.min(after.taken[t], added(doneTaken[t], price));
    after.here[t] = Math.min(after.here[t], added(doneHere[t], price));
    return after.open[t] < NEVER || after.taken[t] < NEVER || after.here[t] < NEVER;
  }

  private static long added(long cost, long price) {
    return cost >= NEVER ? NEVER : cost + price;
  }

  private boolean arrive(Ready before, int place, int door, SecondWays way, int first, int last) {
    Arrays.fill(open, NEVER);
    Arrays.fill(taken, NEVER);
    boolean any = false;
    long length = length(place, door);
    for (int t = 0; t <= last; t++) {
      long broken = Math.min(before.taken[t], before.here[t]);
      if (before.open[t] >= NEVER && broken >= NEVER) {
        continue;
      }
      int drive = drive(place, door, t);
      int at = t + drive;
      if (at > last || from + at > way.latestArrive()) {
        break; // First in, first out: whoever leaves later arrives no earlier.
      }
      if (at >= first) {
        long leg = driven(drive) + length;
        open[at] = Math.min(open[at], added(before.open[t], leg));
        taken[at] = Math.min(taken[at], added(broken, leg));
        any = true;
      }
    }
    return any;
  }

  private void wait(long[] cells, int t, int last) {
    if (t < last && cells[t] < NEVER) {
      cells[t + 1] = Math.min(cells[t + 1], cells[t] + prices.waitingMinuteSeconds());
    }
  }

  private void serve(long[] here, long[] done, SecondWays way, int service, int t, int last) {
    int start = from + t;
    if (here[t] < NEVER
        && start >= way.earliestStart()
        && (long) start + service <= way.doneBy()
        && (long) t + service <= last) {
      done[t + service] = Math.min(done[t + service], here[t]);
    }
  }

  private void pause(long[] without, long[] with, int t, int last) {
    if (rule != null
        && without[t] < NEVER
        && rule.startWithin().holds(from + t)
        && (long) t + rule.lengthSeconds() <= last) {
      int end = t + rule.lengthSeconds();
      with[end] = Math.min(with[end], without[t]);
    }
  }

  /**
   * The least cost of a day that drives home now, without the prices of its rules.
   *
   * @param ready ready to leave {@code place}, the last door
   * @param place where the van stands
   * @param visits number of visits made
   * @param served seconds served
   * @return sixtieths, or {@link #NEVER}
   */
  long end(Ready ready, int place, int visits, long served) {
    long least = NEVER;
    if (!travel.reaches(place, shift.endPlace())) {
      return least;
    }
    work += seconds;
    long length = length(place, shift.endPlace());
    for (int t = 0; t < seconds; t++) {
      if (ready.open[t] >= NEVER && ready.taken[t] >= NEVER) {
        continue;
      }
      int drive = drive(place, shift.endPlace(), t);
      int end = from + t + drive;
      if (end > shift.latestEndSeconds()) {
        break;
      }
      boolean breakNeeded = rule != null && visits >= 2 && end > rule.startWithin().fromSeconds();
      long cost = breakNeeded ? ready.taken[t] : ready.open[t];
      if (cost < NEVER) {
        least = Math.min(least, cost + driven(drive) + length + atEnd(end));
      }
    }
    long over = balance == null ? 0 : Math.max(0, served - balance.groomSeconds());
    return least >= NEVER || over == 0 ? least : least + over * balance.groomSixtieths();
  }

  private long atEnd(int end) {
    long over = Math.max(0, end - shift.hours().toSeconds());
    long cost = over * prices.overtimeMinuteSeconds();
    cost += (long) prices.endMinuteSeconds() * (end - from);
    if (balance != null) {
      cost += (long) balance.endSixtieths() * Math.max(0, end - balance.endSeconds());
    }
    return cost;
  }
}
