package dev.dogleg.plan;

import dev.dogleg.schedule.CostFloor;
import dev.dogleg.schedule.DayModel;
import dev.dogleg.schedule.FloorStep;
import dev.dogleg.schedule.RunEnvelope;
import java.util.Arrays;

/**
 * Least value of the rest of a day as a function of the hour, for days of few visits.
 *
 * <p>Maintainers: backwards over the (set, last visit) through which {@link SubsetBound} still sees
 * a day below the limit, with {@link FloorStep}: traffic, windows, waiting, break and the price of
 * the end count, so hardly any partial day survives it that is not part of a best one. With tanks
 * there are layers by the number of water stops made and, at least, still to come; a stop is
 * counted only where the tanks can have lasted until then and last afterwards.
 */
final class SetFloors implements CompletionBound {
  /** Flat pieces that differ by less than this part of the limit are one. */
  private static final int PART = 4096;

  private final int n;
  private final DayModel model;
  private final SubsetBound scalars;
  private final SetStates states;
  private final FloorStep step;
  private final WaterFloors water;
  private final TankNeed tanks;
  private final int need;
  private final int layers;
  private final long limit;
  private final int[] slot;
  private Door[] doors = new Door[64];
  private int size;
  private long day;
  private CostFloor open = new CostFloor(32);
  private CostFloor taken = new CostFloor(32);
  private CostFloor spare = new CostFloor(32);
  private final CostFloor next = new CostFloor(32);
  private final CostFloor other = new CostFloor(32);

  /** The floors of one set and last visit: ready to leave, and arriving. */
  private static final class Door {
    private CostFloor open;
    private CostFloor taken;
    private CostFloor arriveOpen;
    private CostFloor arriveTaken;
    private long least;
    private int latest;
  }

  /**
   * Floors below a limit.
   *
   * @param tanks water stops that every day below the limit makes at least
   */
  SetFloors(DayModel model, SubsetBound scalars, long limit, TankNeed tanks, WorkMeter meter) {
    this.model = model;
    this.scalars = scalars;
    states = scalars.states();
    this.limit = limit;
    n = model.size();
    step = new FloorStep(model, (limit % DayValue.BOOKED) / PART / Math.max(1, n));
    int sets = 1 << n;
    this.tanks = tanks;
    boolean stops = model.steps().mostStops() > 0;
    need = stops ? Math.min(tanks.ofDay(), model.steps().mostStops()) : 0;
    layers = (need + 1) * (need + 1);
    water = stops ? new WaterFloors(model, step, layers) : null;
    slot = new int[layers * states.size()];
    for (int set = sets - 1; set > 0; set--) {
      boolean unknown = water != null;
      for (int left = states.holds(set) ? set : 0; left != 0; left &= left - 1) {
        int i = Integer.numberOfTrailingZeros(left);
        if (scalars.alive(set, i, limit)) {
          meter.count(1);
          if (unknown) {
            water.choose(states.grows(set) ? (1 << n) - 1 & ~set : 0, to(set));
            unknown = false;
          }
          layered(set, i);
        }
      }
    }
    day = scalars.mayEnd(0) ? scalars.leftOut(0) : DayValue.NONE;
    for (int j = 0; j < n; j++) {
      int first = slot(layer(0, need), 1 << j, j);
      if (first > 0 && scalars.may(0, n, j)) {
        step.leg(
            doors[first - 1].arriveOpen, model.start(), j, model.from(), model.latestEnd(), next);
        next.raise(scalars.stepPrice(0, n, j));
        day = Math.min(day, next.least(model.from(), model.latestEnd()));
      }
    }
  }

  private int slot(int layer, int set, int last) {
    return slot[layer * states.size() + states.of(set, last)];
  }

  /** Bounds at arriving at the next visit after a set. */
  private WaterFloors.Arriving to(int set) {
    return (layer, j, breakTaken) -> {
      int to = slot(layer, set | 1 << j, j);
      return to == 0 ? null : breakTaken ? doors[to - 1].arriveTaken : doors[to - 1].arriveOpen;
    };
  }

  /** Layer of so many stops made (the last one: or more) and at least so many to come. */
  private int layer(int made, int toCome) {
    int atLeast = Math.max(Math.min(toCome, need), need - Math.min(made, need));
    return Math.min(made, need) * (need + 1) + atLeast;
  }

  private void layered(int set, int i) {
    for (int made = 0; made <= need; made++) {
      if (made == need || tanks.enough(made, set)) {
        for (int toCome = need - made; toCome <= need; toCome++) {
          door(made, toCome, set, i);
        }
      }
    }
  }

  private void door(int made, int toCome, int set, int i) {
    int layer = layer(made, toCome);
    int first = scalars.earliest(set, i);
    int last = scalars.latest(set, i);
    open.clear();
    taken.clear();
    boolean pauses = model.hasBreak();
    if (toCome == 0 && scalars.mayEnd(set, i)) {
      long end = scalars.leftOut(set) + scalars.endPrice(set, i);
      boolean needed = pauses && (set & set - 1) != 0;
      int endBy = needed ? Math.min(model.latestEnd(), model.breakFrom()) : model.latestEnd();
      step.home(i, endBy, first, last, open);
      open.raise(end);
      if (pauses) {
        step.home(i, model.latestEnd(), first, last, taken);
        taken.raise(end);
      }
    }
    for (int rest = states.grows(set) ? (1 << n) - 1 & ~set : 0; rest != 0; rest &= rest - 1) {
      int j = Integer.numberOfTrailingZeros(rest);
      int to = slot(layer, set | 1 << j, j);
      if (to > 0 && scalars.may(set, i, j)) {
        Door door = doors[to - 1];
        long price = scalars.stepPrice(set, i, j);
        step.leg(door.arriveOpen, i, j, first, last, next);
        next.raise(price);
        addOpen(first, last);
        if (pauses) {
          step.leg(door.arriveTaken, i, j, first, last, next);
          next.raise(price);
          addTaken(first, last);
        }
      }
    }
    if (water != null) {
      byWater(layer(made + 1, Math.max(toCome - 1, tanks.afterStop(set))), i, first, last);
    }
    step.linger(taken, first);
    if (pauses) {
      step.breakFirst(taken, next);
      addOpen(first, last);
    }
    step.linger(open, first);
    open.cut(first, limit - scalars.spent(set, i));
    taken.cut(first, limit - scalars.spent(set, i));
    if (!open.empty() || !taken.empty()) {
      keep(layer, set, i, pauses);
    }
  }

  private void byWater(int layer, int i, int first, int last) {
    for (int w = 0; w < model.waterPlaces(); w++) {
      water.leaving(layer, w, false, i, first, last, next);
      addOpen(first, last);
      if (model.hasBreak()) {
        water.leaving(layer, w, true, i, first, last, next);
        addTaken(first, last);
      }
    }
  }

  private void addOpen(int first, int last) {
    if (!next.empty()) {
      spare.lesser(open, next, first, last, 0);
      CostFloor old = open;
      open = spare;
      spare = old;
    }
  }

  private void addTaken(int first, int last) {
    if (!next.empty()) {
      spare.lesser(taken, next, first, last, 0);
      CostFloor old = taken;
      taken = spare;
      spare = old;
    }
  }

  private void keep(int layer, int set, int i, boolean pauses) {
    Door door = new Door();
    door.open = open.trimmed();
    door.taken = pauses ? taken.trimmed() : door.open;
    door.least =
        Math.min(
            open.least(model.from(), model.latestEnd()),
            taken.least(model.from(), model.latestEnd()));
    door.latest = Math.max(open.last(), taken.last());
    step.arriving(open, i, next);
    if (pauses) {
      step.arriving(taken, i, other);
      door.arriveTaken = other.trimmed();
      step.arrivingForBreak(taken, i, other);
      spare.lesser(next, other, model.from(), model.latestEnd(), 0);
      door.arriveOpen = spare.trimmed();
    } else {
      door.arriveOpen = next.trimmed();
    }
    if (size == doors.length) {
      doors = Arrays.copyOf(doors, size * 2);
    }
    doors[size++] = door;
    slot[layer * states.size() + states.of(set, i)] = size;
  }

  private Door door(VisitSets sets, int set, int last, int made, int stops) {
    int bits = (int) sets.bits(set);
    int found = states.holds(bits) ? slot(layer(made, stops), bits, last) : 0;
    return found == 0 ? null : doors[found - 1];
  }

  @Override
  public long after(VisitSets sets, int set, int last, boolean breakTaken, int earliest) {
    long least = DayValue.NONE;
    for (int made = 0; made <= need; made++) {
      least = Math.min(least, after(sets, set, last, breakTaken, earliest, made, 0));
    }
    return least;
  }

  @Override
  public long after(
      VisitSets sets, int set, int last, boolean breakTaken, int earliest, int made, int stops) {
    Door door = door(sets, set, last, made, stops);
    if (door == null) {
      return DayValue.NONE;
    }
    if (earliest <= model.from()) {
      return door.least;
    }
    return (breakTaken ? door.taken : door.open).least(earliest, model.latestEnd());
  }

  @Override
  public int latest(VisitSets sets, int set, int last) {
    int latest = -1;
    for (int made = 0; made <= need; made++) {
      Door door = door(sets, set, last, made, 0);
      latest = door == null ? latest : Math.max(latest, door.latest);
    }
    return latest;
  }

  /** {@return a leaving of the start place for a visit at which a day seems cheapest, or -1} */
  int hopefulStart(int j) {
    int first = slot(layer(0, need), 1 << j, j);
    if (first == 0) {
      return -1;
    }
    step.leg(doors[first - 1].arriveOpen, model.start(), j, model.from(), model.latestEnd(), next);
    return next.empty() ? -1 : next.cheapest(model.from());
  }

  @Override
  public long ofDay() {
    return day;
  }

  @Override
  public boolean timed() {
    return true;
  }

  @Override
  public void clip(
      RunEnvelope runs,
      VisitSets sets,
      int set,
      int last,
      boolean breakTaken,
      long below,
      int made,
      int stops) {
    Door door = door(sets, set, last, made, stops);
    if (door == null) {
      runs.clear();
    } else {
      runs.clip(breakTaken ? door.taken : door.open, below);
    }
  }

  /** {@return number of doors with a floor} */
  int size() {
    return size;
  }
}
