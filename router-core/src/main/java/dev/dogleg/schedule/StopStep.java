package dev.dogleg.schedule;

/**
 * Carries runs over one leg and one stop, exactly as {@code docs/TIMING.md} says.
 *
 * <p>Maintainers: a leg is walked in its steady spans, so a run comes out as one run per span that
 * it touches; beyond its unpaid part only the first second of a later span can pay (lingering at a
 * served door until traffic eases). The <i>key</i> of such an option is its cost less the waiting
 * price of its arrival time: waiting at the next door leaves the key as it is, so an option pays
 * only where its key is less than that of every earlier one. Early arrival is never worse, except
 * that a stay may not begin before its van window: then the waiting is done at the door before, and
 * an option counts only if it can arrive inside the last van window. Where waiting costs more than
 * driving, driving slowly later can be cheaper than waiting, so no early stop then. Cost: one pass
 * over the spans touched. Mutable only in its log; one thread.
 */
public final class StopStep {
  /** Receives the least costly ends of days. */
  public interface EndSink {
    /**
     * A day can end.
     *
     * @param end arrival at the end place
     * @param cost cost of the whole day, the end's price included
     * @param trail trail of the run it came from
     */
    void end(int end, long cost, int trail);
  }

  private final DayModel day;
  private final MissLog log;
  private int readyBy = Integer.MAX_VALUE;
  private long costBelow = Long.MAX_VALUE;
  private long longestLinger = Long.MAX_VALUE;

  /**
   * For planners.
   *
   * @param day the day
   */
  public StopStep(DayModel day) {
    this(day, null);
  }

  StopStep(DayModel day, MissLog log) {
    this.day = day;
    this.log = log;
  }

  /**
   * Says what is of no use any more in the steps that follow.
   *
   * @param latestReady later readiness to leave the visit is useless
   * @param limit a cost of this or more is useless
   */
  public void limit(int latestReady, long limit) {
    readyBy = latestReady;
    costBelow = limit;
  }

  /**
   * Says how long paid waiting at a served door can be of use in the steps that follow.
   *
   * @param seconds seconds
   */
  public void linger(long seconds) {
    longestLinger = seconds;
  }

  /**
   * Carries one run from a door or the start place to the end of a visit's own service, with no
   * price but those of driving and waiting.
   *
   * @param source function the run belongs to
   * @param run which run
   * @param i node left
   * @param j visit reached
   * @param breakAt where the break is taken, if on this way
   * @param target function that receives the runs
   * @param trail trail of the new runs
   */
  public void toVisit(
      RunEnvelope source, int run, int i, int j, BreakAt breakAt, RunEnvelope target, int trail) {
    toVisit(source, run, i, j, breakAt, day.doors.service[j], 0, target, trail);
  }

  /**
   * Carries one run from a door or the start place to the end of a service.
   *
   * @param source function the run belongs to
   * @param run which run
   * @param i node left
   * @param j visit or water place reached
   * @param breakAt where the break is taken, if on this way
   * @param service seconds of the service there
   * @param price what the step costs besides driving and waiting
   * @param target function that receives the runs
   * @param trail trail of the new runs
   */
  public void toVisit(
      RunEnvelope source,
      int run,
      int i,
      int j,
      BreakAt breakAt,
      int service,
      long price,
      RunEnvelope target,
      int trail) {
    int a = source.earliest(run);
    int b = source.unpaidUntil(run);
    int m = source.leaveBy(run);
    long c = source.cost(run);
    if (breakAt == BreakAt.BEFORE_LEAVING) {
      if (a > day.breakTo()) {
        miss("break", a - day.breakTo());
        return;
      }
      if (b < day.breakFrom()) {
        c += day.waitPrice() * (day.breakFrom() - b);
      }
      a = Math.max(a, day.breakFrom()) + day.breakLength();
      b = Math.min(Math.max(b, day.breakFrom()), day.breakTo()) + day.breakLength();
      if (a > m) {
        miss("van-within", a - m);
        return;
      }
      b = Math.min(b, m);
    }
    if (!day.reaches(i, j)) {
      miss("no-road", 0);
      return;
    }
    if (longestLinger < m - b) {
      m = Math.max(a, b + (int) longestLinger);
    }
    long fixed = c + price + day.legPrice(i, j);
    long least = fixed + day.drivePrice() * day.leastDrive(i, j);
    if (least >= costBelow) {
      return;
    }
    int lastVanFrom = lastVanFrom(day.doors.ways[j]);
    long leastKey = Long.MAX_VALUE;
    for (int t = a; t <= m; ) {
      int drive = day.drive(i, j, t);
      int until = Math.min(day.steadyUntil(i, j, t), m);
      long cost = fixed + day.drivePrice() * drive + day.waitPrice() * Math.max(0, t - b);
      int unpaid = Math.max(t, Math.min(b, until)) + drive;
      long key = cost - day.waitPrice() * unpaid;
      if (t <= b || key < leastKey) {
        arrive(t + drive, unpaid, until + drive, cost, j, breakAt, service, target, trail);
      }
      if (until + drive >= lastVanFrom) {
        leastKey = Math.min(leastKey, key);
      }
      if (until == m || t + drive > readyBy) {
        return;
      }
      t = until + 1;
      if (least + day.waitPrice() * Math.max(0, t - b) >= costBelow) {
        return;
      }
      if (t > b && leastKey != Long.MAX_VALUE && cannotFall(i, j, t, fixed, b, leastKey)) {
        return;
      }
    }
  }

  /** Whether no leaving from {@code t} on can have a smaller key than the least so far. */
  private boolean cannotFall(int i, int j, int t, long fixed, int b, long leastKey) {
    long perDriveSecond = day.drivePrice() - day.waitPrice();
    if (perDriveSecond < 0) {
      return false;
    }
    long least = day.leastDrive(i, j, t, Math.max(t, day.latestEnd()));
    return fixed - day.waitPrice() * b + perDriveSecond * least >= leastKey;
  }

  private static int lastVanFrom(DoorLimits[] ways) {
    int last = ways[0].vanFrom[ways[0].vanFrom.length - 1];
    for (int w = 1; w < ways.length; w++) {
      last = Math.max(last, ways[w].vanFrom[ways[w].vanFrom.length - 1]);
    }
    return last;
  }

  /**
   * Carries an arrival at a door to the end of the service: arrivals in {@code a..b} cost {@code
   * c}, later ones until {@code m} waiting more.
   */
  void arrive(
      int a,
      int b,
      int m,
      long c,
      int j,
      BreakAt breakAt,
      int service,
      RunEnvelope target,
      int trail) {
    for (DoorLimits way : day.doors.ways[j]) {
      arrive(way, a, b, m, c + way.price, breakAt, service, target, trail);
    }
  }

  private void arrive(
      DoorLimits door,
      int a,
      int b,
      int m,
      long c,
      BreakAt breakAt,
      int service,
      RunEnvelope target,
      int trail) {
    for (int v = 0; v < door.vanFrom.length; v++) {
      int vanFrom = door.vanFrom[v];
      int vanTo = door.vanTo[v];
      if (m < vanFrom) {
        miss("van-within", vanFrom - m);
      } else if (a > vanTo) {
        miss("van-within", a - vanTo);
      } else {
        int low = vanFrom;
        for (int w = 0; w < door.arriveFrom.length; w++) {
          int high = Math.min(door.arriveTo[w], vanTo);
          if (low <= high && low <= m) {
            if (a <= high) {
              long cost = c + day.waitPrice() * Math.max(0, low - b);
              int first = Math.max(a, low);
              int last = Math.max(first, Math.min(b, high));
              int open = door.arriveFrom[w];
              serve(first, last, vanTo, open, cost, door.doneBy, service, breakAt, target, trail);
            } else {
              miss("arrive-within", a - high);
            }
          }
          low = Math.max(low, door.arriveTo[w] + 1);
        }
        int lastArrival = door.arriveTo[door.arriveTo.length - 1];
        if (vanFrom > lastArrival) {
          miss("arrive-within", vanFrom - lastArrival);
        }
      }
    }
  }

  private void serve(
      int arriveA,
      int arriveB,
      int vanTo,
      int windowStart,
      long arriveCost,
      int doneBy,
      int service,
      BreakAt breakAt,
      RunEnvelope target,
      int trail) {
    int a = arriveA;
    int b = arriveB;
    long c = arriveCost;
    if (breakAt == BreakAt.ON_ARRIVAL) {
      if (a > day.breakTo()) {
        miss("break", a - day.breakTo());
        return;
      }
      c += day.waitPrice() * Math.max(0, day.breakFrom() - b);
      a = Math.max(a, day.breakFrom()) + day.breakLength();
      b = Math.min(Math.max(b, day.breakFrom()), day.breakTo()) + day.breakLength();
    }
    c += day.waitPrice() * Math.max(0, windowStart - b);
    a = Math.max(a, windowStart) + service;
    b = Math.max(b, windowStart) + service;
    if (a > doneBy) {
      miss("done-by", a - doneBy);
    } else if (a > vanTo) {
      miss("van-within", a - vanTo);
    } else if (a <= readyBy && c < costBelow) {
      target.add(a, Math.min(Math.min(b, readyBy), Math.min(doneBy, vanTo)), vanTo, c, trail);
    }
  }

  /**
   * Carries one run to the end place.
   *
   * @param source function the run belongs to
   * @param run which run
   * @param i node left
   * @param endBy last second at which the end place may be reached
   * @param sink receives each end that may be the cheapest
   */
  public void toEnd(RunEnvelope source, int run, int i, int endBy, EndSink sink) {
    int j = day.end();
    if (!day.reaches(i, j)) {
      miss("no-road", 0);
      return;
    }
    int a = source.earliest(run);
    int b = source.unpaidUntil(run);
    int m = source.leaveBy(run);
    long fixed = source.cost(run) + day.legPrice(i, j);
    long least = Long.MAX_VALUE;
    long leastDrivePrice = -1;
    for (int t = a; t <= m; ) {
      int drive = day.drive(i, j, t);
      if (t + drive > endBy) {
        miss("day-end", t + drive - endBy);
        return;
      }
      long cost =
          fixed
              + day.drivePrice() * drive
              + day.waitPrice() * Math.max(0, t - b)
              + day.endCost(t + drive);
      if (cost < least) {
        least = cost;
        sink.end(t + drive, cost, source.trail(run));
      }
      int steady = day.steadyUntil(i, j, t);
      if (steady >= m) {
        return;
      }
      int end = t + drive;
      t = steady + 1;
      if (leastDrivePrice < 0) {
        leastDrivePrice = day.drivePrice() * day.leastDrive(i, j, t, Math.max(t, endBy));
      }
      long waited = day.waitPrice() * Math.max(0, t - b);
      if (fixed + leastDrivePrice + waited + day.endCost(end) >= least) {
        return;
      }
    }
  }

  private void miss(String rule, int seconds) {
    if (log != null) {
      log.note(rule, seconds);
    }
  }
}
