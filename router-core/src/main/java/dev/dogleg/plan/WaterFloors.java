package dev.dogleg.plan;

import dev.dogleg.schedule.CostFloor;
import dev.dogleg.schedule.DayModel;
import dev.dogleg.schedule.FloorStep;
import java.util.Arrays;

/**
 * Bounds by the hour from a door by way of a water stop, whichever visit comes next.
 *
 * <p>Maintainers: made once per set and layer, when first asked for; rules on the pair of visits
 * are left out. Mutable, one thread.
 */
final class WaterFloors {
  /** Bounds at arriving at a visit. */
  interface Arriving {
    /**
     * One of them.
     *
     * @param layer which layer of bounds
     * @param visit the visit
     * @param breakTaken whether the break was taken before
     * @return the bound; null where there is no day
     */
    CostFloor at(int layer, int visit, boolean breakTaken);
  }

  private final DayModel day;
  private final FloorStep step;
  private final CostFloor[] bounds;
  private final boolean[] known;
  private int visits;
  private Arriving to;
  private CostFloor best = new CostFloor(32);
  private CostFloor spare = new CostFloor(32);
  private final CostFloor next = new CostFloor(32);

  WaterFloors(DayModel day, FloorStep step, int layers) {
    this.day = day;
    this.step = step;
    bounds = new CostFloor[2 * layers * day.waterPlaces()];
    known = new boolean[bounds.length];
    for (int k = 0; k < bounds.length; k++) {
      bounds[k] = new CostFloor(32);
    }
  }

  /** Chooses which visits may come next. */
  void choose(int visitsToCome, Arriving arriving) {
    visits = visitsToCome;
    to = arriving;
    Arrays.fill(known, false);
  }

  /**
   * Bound at leaving a door for a water place and on to one of the chosen visits.
   *
   * @param layer layer of the visit's bound
   * @param w which water place
   * @param breakTaken whether the break was taken
   */
  void leaving(int layer, int w, boolean breakTaken, int i, int first, int last, CostFloor out) {
    int at = 2 * (layer * day.waterPlaces() + w) + (breakTaken ? 1 : 0);
    if (!known[at]) {
      fill(layer, w, breakTaken, bounds[at]);
      known[at] = true;
    }
    step.leg(bounds[at], i, day.waterNode(w), first, last, out);
  }

  private void fill(int layer, int w, boolean breakTaken, CostFloor out) {
    int water = day.waterNode(w);
    best.clear();
    for (int rest = visits; rest != 0; rest &= rest - 1) {
      int j = Integer.numberOfTrailingZeros(rest);
      CostFloor arriving = to.at(layer, j, breakTaken);
      if (arriving != null) {
        step.leg(arriving, water, j, day.from(), day.latestEnd(), next);
        if (!next.empty()) {
          spare.lesser(best, next, day.from(), day.latestEnd(), 0);
          CostFloor old = best;
          best = spare;
          spare = old;
        }
      }
    }
    step.linger(best, day.from());
    step.arriving(best, water, day.service(water), out);
  }
}
