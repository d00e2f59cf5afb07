package dev.dogleg.audit;

import dev.dogleg.itinerary.BalanceTerms;
import dev.dogleg.itinerary.BreakRule;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.DayShift;
import dev.dogleg.itinerary.Prices;
import dev.dogleg.travel.TravelTimes;

/**
 * The least cost of being ready to leave a door, for every second of a day: driving on, waiting,
 * serving and the break are told second by second, so that no argument about functions of time is
 * needed. Seconds are counted from the shift's start. Not for several threads.
 */
final class DaySeconds {
  /** The cost of what is not possible. */
  static final long NEVER = CostBySecond.NEVER;

  /** Drives of pairs of places that are kept, by second; beyond, they are asked each time. */
  private static final int MOST_DRIVES = 20_000_000;

  /** Seconds of drives that are asked for at once. */
  private static final int BLOCK = 512;

  private final DayShift shift;
  private final BreakRule rule;
  private final Prices prices;
  private final BalanceTerms balance;
  private final TravelTimes travel;
  private final int from;
  private final int seconds;
  private final int blocks;
  private final int[][] drives;
  private final CostBySecond open = new CostBySecond();
  private final CostBySecond taken = new CostBySecond();
  private final CostBySecond doneOpen = new CostBySecond();
  private final CostBySecond doneTaken = new CostBySecond();
  private final CostBySecond doneHere = new CostBySecond();
  private int kept;
  private long work;

  DaySeconds(DayRequest request) {
    shift = request.shift();
    rule = shift.breakRule().orElse(null);
    prices = request.prices();
    balance = request.terms().balance().orElse(null);
    travel = request.travel();
    from = shift.hours().fromSeconds();
    seconds = Math.max(0, shift.latestEndSeconds() - from + 1);
    blocks = seconds / BLOCK + 1;
    long rows = (long) travel.size() * travel.size() * blocks;
    drives = rows <= MOST_DRIVES / 8 ? new int[(int) rows][] : null;
  }

  /** Ready to leave a place: break open, taken before, or taken just now at this door. */
  static final class Ready {
    private final CostBySecond open = new CostBySecond();
    private final CostBySecond taken = new CostBySecond();
    private final CostBySecond here = new CostBySecond();

    /** {@return what it has cost at least, {@link #NEVER} where the place is never left} */
    long least() {
      return Math.min(open.least(), Math.min(taken.least(), here.least()));
    }

    /** {@return seconds it keeps} */
    int cells() {
      return open.room() + taken.room() + here.room();
    }
  }

  /** {@return seconds looked at so far} */
  long work() {
    return work;
  }

  /** Seconds from the shift's start to a second of the day, the last of the shift at most. */
  int second(long ofDay) {
    return (int) Math.max(-1, Math.min(seconds - 1L, ofDay - from));
  }

  /** At the start place, which may be left at any second from the shift's start on. */
  Ready home() {
    Ready ready = new Ready();
    if (seconds > 0) {
      ready.open.reach(0, seconds - 1);
      for (int t = 0; t < seconds; t++) {
        ready.open.lower(t, 0);
      }
    }
    return ready;
  }

  /** Drives of a pair by second of leaving; asked for once where there is room to keep them. */
  private int drive(int a, int b, int t) {
    if (drives == null) {
      return travel.driveSeconds(a, b, from + t);
    }
    int block = (a * travel.size() + b) * blocks + t / BLOCK;
    if (drives[block] == null) {
      if (kept > MOST_DRIVES) {
        return travel.driveSeconds(a, b, from + t);
      }
      int[] row = new int[BLOCK];
      kept += BLOCK;
      for (int u = 0; u < BLOCK; u++) {
        row[u] = travel.driveSeconds(a, b, from + t / BLOCK * BLOCK + u);
      }
      drives[block] = row;
    }
    return drives[block][t % BLOCK];
  }

  /** What the metres of a leg cost. */
  long length(int a, int b) {
    long metres = travel.lengthMetres(a, b);
    return Math.floorDiv(metres * 60L * prices.kilometreSeconds() + 500, 1000);
  }

  /** What so many seconds of driving cost. */
  static long driven(int seconds) {
    return (long) Prices.SIXTIETHS_PER_DRIVE_SECOND * seconds;
  }

  /**
   * A stop that is driven to.
   *
   * @param door where
   * @param service seconds there
   * @param ways ways to keep the clock
   * @param price of going there next, besides
   * @param visit whether it is a visit, at whose door a break may be taken; else a water stop
   * @param notFirst whether a break may be taken before the service
   * @param latest last second at which leaving the door matters
   * @param latestOpen last second at which leaving it without having had the break matters
   */
  record Stop(
      int door,
      int service,
      Iterable<SecondWays> ways,
      long price,
      boolean visit,
      boolean notFirst,
      int latest,
      int latestOpen) {}

  /**
   * Drives on and stays.
   *
   * @param before ready to leave {@code place}
   * @param place where the van stands
   * @param stop where it goes
   * @param after receives when the door may be left, beside what it holds already
   */
  void stay(Ready before, int place, Stop stop, Ready after) {
    if (!travel.reaches(place, stop.door)) {
      return;
    }
    for (SecondWays way : stop.ways) {
      work++;
      int last = (int) Math.min(Math.min(seconds - 1L, stop.latest), (long) way.stayTo() - from);
      int lastOpen = Math.min(last, stop.latestOpen);
      open.clear();
      taken.clear();
      arrive(before.open, place, stop.door, way, last, open);
      arrive(before.taken, place, stop.door, way, last, taken);
      arrive(before.here, place, stop.door, way, last, taken);
      int price = prices.waitingMinuteSeconds();
      work += open.waiting(price, lastOpen);
      if (stop.visit && stop.notFirst) {
        pause(open, taken, last);
      }
      work += taken.waiting(price, last);
      doneOpen.clear();
      doneTaken.clear();
      doneHere.clear();
      long start = (long) way.earliestStart() - from;
      long until = Math.min(last, (long) way.doneBy() - from) - stop.service;
      work += open.give(doneOpen, stop.service, start, until, 0);
      work += taken.give(doneTaken, stop.service, start, until, 0);
      work += doneOpen.waiting(price, lastOpen);
      if (stop.visit) {
        pause(doneOpen, doneHere, last);
      }
      work += doneTaken.waiting(price, last);
      work += doneHere.waiting(price, last);
      long more = way.price() + stop.price;
      work += doneOpen.give(after.open, 0, 0, lastOpen, more);
      work += doneTaken.give(after.taken, 0, 0, last, more);
      work += doneHere.give(after.here, 0, 0, last, more);
    }
  }

  private void arrive(
      CostBySecond before, int place, int door, SecondWays way, int last, CostBySecond at) {
    int earliest = Math.max(0, way.stayFrom() - from);
    int latest = (int) Math.min(last, (long) way.latestArrive() - from);
    if (before.first() > before.last()) {
      return;
    }
    int first = Math.max(earliest, before.first() + drive(place, door, before.first()));
    if (first > latest) {
      return;
    }
    at.reach(first, latest);
    long length = length(place, door);
    for (int t = before.first(); t <= before.last(); t++) {
      work++;
      long cost = before.at(t);
      int drive = drive(place, door, t);
      if (t + drive > latest) {
        break; // First in, first out: whoever leaves later arrives no earlier.
      }
      if (cost < NEVER && t + drive >= earliest) {
        at.lower(t + drive, cost + driven(drive) + length);
      }
    }
  }

  private void pause(CostBySecond without, CostBySecond with, int last) {
    if (rule != null) {
      long start = (long) rule.startWithin().fromSeconds() - from;
      long until = (long) rule.startWithin().toSeconds() - from;
      until = Math.min(until, (long) last - rule.lengthSeconds());
      work += without.give(with, rule.lengthSeconds(), start, until, 0);
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
    if (!travel.reaches(place, shift.endPlace())) {
      return NEVER;
    }
    long least =
        Math.min(end(ready.open, place, visits, false), end(ready.taken, place, visits, true));
    long over = balance == null ? 0 : Math.max(0, served - balance.groomSeconds());
    return least >= NEVER || over == 0 ? least : least + over * balance.groomSixtieths();
  }

  private long end(CostBySecond ready, int place, int visits, boolean rested) {
    long least = NEVER;
    long length = length(place, shift.endPlace());
    for (int t = ready.first(); t <= ready.last(); t++) {
      work++;
      int drive = drive(place, shift.endPlace(), t);
      int end = from + t + drive;
      if (end > shift.latestEndSeconds()) {
        break;
      }
      boolean needed = rule != null && visits >= 2 && end > rule.startWithin().fromSeconds();
      if (ready.at(t) < NEVER && needed == rested) {
        least = Math.min(least, ready.at(t) + driven(drive) + length + atEnd(end));
      }
    }
    return least;
  }

  /** What so late an end costs. */
  long atEnd(int end) {
    long over = Math.max(0, end - shift.hours().toSeconds());
    long cost = over * prices.overtimeMinuteSeconds();
    cost += (long) prices.endMinuteSeconds() * (end - from);
    if (balance != null) {
      cost += (long) balance.endSixtieths() * Math.max(0, end - balance.endSeconds());
    }
    return cost;
  }
}
