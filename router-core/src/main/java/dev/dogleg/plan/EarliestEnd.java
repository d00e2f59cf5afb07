package dev.dogleg.plan;

import dev.dogleg.schedule.DayModel;

/**
 * Days on which only the end costs: every better day ends earlier, so the latest end is drawn in
 * after each better plan, and windows and relaxed ends with it.
 *
 * <p>Maintainers: a day ends no earlier than now plus the least driving and all services to come,
 * so {@link NgBound} on driving alone bounds the end.
 */
final class EarliestEnd {
  private static final int PER_SECOND = 100;
  private static final int SHARE = 50;

  private final DayModel day;
  private final DayValue value;
  private final WorkMeter meter;

  EarliestEnd(DayModel day, DayValue value, WorkMeter meter) {
    this.day = day;
    this.value = value;
    this.meter = meter;
  }

  /** Whether a day is of this kind. */
  static boolean fits(DayModel day) {
    return day.drivePrice() == 0 && day.waitPrice() == 0 && day.endCost(day.from() + 1) > 0;
  }

  /** Improves an order that serves every booked visit until none is better. */
  DayAnswer improve(int[] order, long known, long tableSteps, int beam) {
    int[] best = order;
    long least = known;
    while (true) {
      DayModel tight = day.endingBy(latestBetter(least));
      if (tight.latestEnd() < day.from()) {
        return new DayAnswer(best, least, least);
      }
      DayModel driving = tight.drivingAt(PER_SECOND);
      NgBound drives =
          new NgBound(driving, new LeastLegs(driving), value, upper(tight), meter, tableSteps);
      CompletionBound bound = new EndBound(tight, drives);
      long limit = least;
      DaySearch found = search(tight, bound, limit, beam, meter.share(SHARE));
      if (!found.found()) {
        found = search(tight, bound, limit, 0, meter.share(SHARE));
        if (!found.found() && !found.complete()) {
          drives.sharpen(upper(tight));
          found = search(tight, bound, limit, 0, meter.share(1));
        }
      }
      if (!found.found()) {
        return new DayAnswer(best, least, Math.min(least, found.lowerBound()));
      }
      best = found.order();
      least = found.best();
    }
  }

  private DaySearch search(
      DayModel tight, CompletionBound bound, long limit, int beam, WorkMeter part) {
    DaySearch search = new DaySearch(tight, value, bound, limit, beam, part);
    search.run();
    meter.count(part.steps());
    return search;
  }

  /** What driving can cost at most on a day that ends in time. */
  private static long upper(DayModel tight) {
    long busy = 0;
    for (int j = 0; j < tight.size(); j++) {
      busy += tight.visit(j).booked() ? tight.service(j) : 0;
    }
    return PER_SECOND * (tight.latestEnd() - tight.from() - busy) + 1;
  }

  /** The end as it follows from driving and services to come. */
  private static final class EndBound implements CompletionBound {
    private final DayModel day;
    private final NgBound drives;

    EndBound(DayModel day, NgBound drives) {
      this.day = day;
      this.drives = drives;
    }

    @Override
    public long after(VisitSets sets, int set, int last, boolean taken, int earliest) {
      long least = drives.after(sets, set, last, taken, earliest);
      if (least >= DayValue.BOOKED) {
        return DayValue.NONE;
      }
      long end = earliest + (Math.max(0, least) + PER_SECOND - 1) / PER_SECOND;
      for (int j = 0; j < day.size(); j++) {
        if (!sets.holds(set, j) && day.visit(j).booked()) {
          end += day.service(j);
        }
      }
      return end > day.latestEnd() ? DayValue.NONE : day.endCost((int) end);
    }

    @Override
    public int latest(VisitSets sets, int set, int last) {
      return day.latestEnd();
    }

    @Override
    public long ofDay() {
      return 0;
    }
  }

  /** The last end that costs less than a value. */
  private int latestBetter(long cost) {
    int cheaper = day.from() - 1;
    int dearer = day.latestEnd() + 1;
    while (dearer - cheaper > 1) {
      int middle = cheaper + (dearer - cheaper) / 2;
      if (day.endCost(middle) < cost) {
        cheaper = middle;
      } else {
        dearer = middle;
      }
    }
    return cheaper;
  }
}
