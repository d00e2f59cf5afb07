package dev.dogleg.plan;

import dev.dogleg.schedule.DayModel;
import dev.dogleg.schedule.OrderCost;
import java.util.Arrays;

/**
 * The exact engine of one day that must serve all its visits, few of them: what a week asks very
 * often.
 *
 * <p>Maintainers: without a tight limit a partial day has a run for every second in which traffic
 * changes, and that takes all the time. So a day is first looked for roughly; where none is found,
 * on the day without prices, whose partial days are single seconds: that gives one or proves that
 * there is none. Then the exact search looks closely above what {@link SetFloors} say, mostly
 * within a thousandth of the truth, and further only where nothing lies there. One thread.
 */
final class SetEngine {
  /** Sets of each size that a rough look keeps. */
  private static final int BEAM = 3;

  /** Runs of each last visit that it keeps. */
  private static final int RUNS = 2;

  /** A limit within this part of the bound is tight. */
  private static final int NEAR = 256;

  /** Room above a bound, at least: a second of driving. */
  private static final int LEAST_ROOM = 60;

  /** So often a guess is looked at, further each time. */
  private static final int GUESSED_LOOKS = 2;

  /** By how much the room above the bound grows. */
  private static final int WIDER = 4;

  private final DayModel day;
  private final WorkMeter meter;
  private final DayValue value;
  private final int[] visits;
  private final OrderCost costs;
  private final SubsetBound states;
  private int[] order = new int[0];
  private long limit = DayValue.BOOKED;

  /** What the first floors are good for. */
  private long below;

  /**
   * Sets up.
   *
   * @param whole all visits that may be asked for
   * @param visits the visits to serve, rising, from 1 to {@link SubsetBound#MOST}
   * @param legs legs of {@code whole}
   * @param costs costs of orders of {@code whole}
   * @param meter counts steps
   */
  SetEngine(DayModel whole, int[] visits, LegRows legs, OrderCost costs, WorkMeter meter) {
    this.visits = visits;
    this.costs = costs;
    day = whole.part(visits);
    this.meter = meter;
    value = new DayValue(day, true);
    LeastLegs least = LeastLegs.ofPart(whole, visits, day, legs);
    states = new SubsetBound(day, value, least, 0, meter);
  }

  /** {@return the best day, or one of value {@link DayValue#BOOKED} or more where there is none} */
  DayAnswer best() {
    if (states.ofDay() >= DayValue.BOOKED) {
      return none();
    }
    offer(states.order());
    below = limit;
    SetFloors floors = floors(limit);
    if (floors.ofDay() >= limit) {
      return answer(limit);
    }
    if (limit - floors.ofDay() > floors.ofDay() / NEAR) {
      roughly(floors);
      if (limit == DayValue.BOOKED && !possible(floors)) {
        return none();
      }
    }
    return between(floors);
  }

  /** {@return whether some day serves all, at any price; null where the meter was spent first} */
  Boolean fits() {
    if (states.ofDay() >= DayValue.BOOKED) {
      return false;
    }
    offer(states.order());
    if (limit < DayValue.BOOKED) {
      return true;
    }
    DaySearch search = new DaySearch(day.free(), value, states, DayValue.BOOKED, 0, meter);
    search.run();
    if (search.found()) {
      order = whole(search.order());
    }
    return search.found() ? Boolean.TRUE : search.complete() ? Boolean.FALSE : null;
  }

  /** {@return the order found last, in the numbering of the whole day; empty where none was} */
  int[] order() {
    return order;
  }

  /**
   * Searches closely above the bound, then further: where nothing lies there, that is a bound too.
   */
  private DayAnswer between(SetFloors wide) {
    long floor = wide.ofDay();
    long room = floor / NEAR + LEAST_ROOM;
    long within = Math.min(limit, floor + room);
    while (true) {
      SetFloors floors = within < below ? floors(within) : wide;
      DaySearch search = new DaySearch(day, value, floors, within, 0, meter);
      search.run();
      if (search.found()) {
        long lower = search.complete() ? search.best() : Math.max(floor, search.lowerBound());
        return new DayAnswer(whole(search.order()), search.best(), lower);
      }
      if (!search.complete()) {
        return answer(Math.max(floor, Math.min(within, search.lowerBound())));
      }
      if (within == limit) {
        return answer(limit);
      }
      room *= WIDER;
      within = Math.min(limit, floor + room);
    }
  }

  /**
   * The same, where somebody guesses what the day costs.
   *
   * @param guess a cost below or a little above that of the best day, mostly; a bad one costs time
   */
  DayAnswer best(long guess) {
    if (states.ofDay() >= DayValue.BOOKED) {
      return none();
    }
    offer(states.order());
    long room = guess / NEAR + LEAST_ROOM;
    for (int look = 0; look < GUESSED_LOOKS; look++) {
      long within = Math.min(limit, guess + room);
      DaySearch search = new DaySearch(day, value, floors(within), within, 0, meter);
      search.run();
      if (search.found() && search.complete()) {
        return new DayAnswer(whole(search.order()), search.best(), search.best());
      }
      if (search.complete() && within == limit && limit < DayValue.BOOKED) {
        return answer(limit);
      }
      room *= WIDER;
    }
    return best();
  }

  private SetFloors floors(long within) {
    return new SetFloors(day, states, within, new TankNeed(day, value, within), meter);
  }

  private void roughly(SetFloors floors) {
    DaySearch rough = new DaySearch(day, value, floors, limit, BEAM, meter);
    rough.roughly(floors, RUNS).run();
    if (rough.found()) {
      order = whole(rough.order());
      limit = rough.best();
    }
  }

  /** Whether there is a day at any price; the first one found, if the effort is not spent. */
  private boolean possible(SetFloors floors) {
    DaySearch search = new DaySearch(day.free(), value, floors, DayValue.BOOKED, 0, meter);
    search.run();
    if (search.found()) {
      order = whole(search.order());
      limit = Math.min(limit, costs.of(order, limit));
    }
    return search.found() || !search.complete();
  }

  /** Takes an order if it is cheaper; its cost is that of the whole day's order. */
  private void offer(int[] candidate) {
    meter.count(candidate.length + 1L);
    if (candidate.length == visits.length) {
      int[] inWhole = whole(candidate);
      long cost = costs.roughly(inWhole, limit);
      if (cost < limit) {
        limit = cost;
        order = inWhole;
      }
    }
  }

  private int[] whole(int[] part) {
    return Arrays.stream(part).map(visit -> visits[visit]).toArray();
  }

  private DayAnswer answer(long lower) {
    return new DayAnswer(order, limit, lower);
  }

  private DayAnswer none() {
    return answer(DayValue.BOOKED);
  }
}
