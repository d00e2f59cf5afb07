package dev.dogleg.plan.week;

import dev.dogleg.schedule.RuleModes;

/**
 * Whether a partial day may still become one of low reduced cost, told by two floors of its rest,
 * after a visit or before one. Mutable: its floors are those of the prices taken last.
 */
final class RestGlance {
  private static final int MOST_MODES = 9;

  /** Bits of the ways to a visit: straight there, or by water. */
  static final int STRAIGHT = 1;

  static final int BY_WATER = 2;

  private final RelaxedDay day;
  private final RestLegs legs;
  private final RestTanks tanks;
  private final RuleModes modes;
  private final RestFloor floor;
  private final RestFill fill;
  private long scale;
  private boolean known;

  private RestGlance(RestLegs legs, RunStep step, RestTanks tanks, RuleModes modes) {
    this.legs = legs;
    this.tanks = tanks;
    this.modes = modes;
    day = legs.day;
    floor = new RestFloor(legs, tanks, modes);
    fill = new RestFill(day, step.terms());
  }

  /** One that is soon ready and lets much pass; {@link #remember} before use. */
  static RestGlance rough(RestLegs legs, RunStep step) {
    return new RestGlance(legs, step, new RestTanks(legs.day, step, false), step.terms().modes(1));
  }

  /** One that knows tanks, for prices by which costs do not count; {@link #remember} before use. */
  static RestGlance counting(RestLegs legs, RunStep step, RestTanks tanks) {
    return new RestGlance(legs, step, tanks, step.terms().modes(1));
  }

  /** One that knows tanks and rules; {@link #remember} before use. */
  static RestGlance fine(RestLegs legs, RunStep step, RestTanks tanks) {
    return new RestGlance(legs, step, tanks, step.terms().modes(MOST_MODES));
  }

  /** The prices have changed. */
  void forget() {
    known = false;
  }

  /** Makes the floors for some prices, where they have changed. */
  void remember(DayDuals duals) {
    if (!known) {
      floor.fill(duals.worth, duals.costScale);
      fill.fill(duals.worth, duals.costScale);
      scale = duals.costScale;
      known = true;
    }
  }

  /** {@return what is left of the tanks, see {@link RestTanks#left}} */
  int left(int freshUsed, int greyMade) {
    return tanks.left(freshUsed, greyMade);
  }

  /** {@return what rules ask of the rest once a set was served, see {@link RuleModes#of}} */
  int mode(long[] rows, int at) {
    return modes.size() == 1 ? 0 : modes.of(rows, at);
  }

  /**
   * Whether a partial day may end in time and within a room.
   *
   * @param i visit just served
   * @param before visit before it, or -1
   * @param a ready to leave it at this second at the earliest
   * @param taken whether the break is behind
   * @param mode what rules ask of the rest
   * @param left what is left of the tanks
   * @param gone visits that can not come any more, one bit each, or some of them
   * @param room most that the rest may add to the reduced cost, in parts
   */
  boolean within(
      int i, int before, int a, boolean taken, int mode, int left, long[] gone, long room) {
    long rest = floor.of(i, before, a, taken, mode, left);
    return rest < RelaxedDay.NEVER && rest <= room && fill.of(gone, 0, a, taken) <= room;
  }

  /**
   * The ways by which a partial day that goes on to a visit may end in time and within a room:
   * asked before it is known when the van gets there, and at what cost.
   *
   * @param i visit left
   * @param a ready to leave it at this second at the earliest
   * @param taken whether the break is behind
   * @param left what is left of the tanks then
   * @param j visit driven to
   * @param service its seconds
   * @param mode what rules ask of the rest after it
   * @param gone visits that can not come any more then, one bit each, or some of them
   * @param room most that the drive and the rest may add to the reduced cost, in parts
   * @return {@link #STRAIGHT} and {@link #BY_WATER}, as far as the day may
   */
  int mayGo(
      int i, int a, boolean taken, int left, int j, int service, int mode, long[] gone, long room) {
    int drive = legs.driveLater(i, j, a);
    if (drive == RestLegs.NO_WAY) {
      return 0;
    }
    int then = left - tanks.use[j];
    long rest = room - scale * legs.ownPrice(i, j, drive);
    int ways = 0;
    if (then >= 0 && mayArrive(i, a, a + drive, taken, then, j, service, mode, gone, rest)) {
      ways = STRAIGHT;
    }
    if (!tanks.ways || tanks.seconds(i, j) == RestTanks.NO_WAY) {
      return ways;
    }
    int arrive = a + tanks.seconds(i, j);
    then = tanks.full() - tanks.use[j];
    rest = room - scale * tanks.price(i, j);
    return mayArrive(i, a, arrive, taken, then, j, service, mode, gone, rest)
        ? ways | BY_WATER
        : ways;
  }

  private boolean mayArrive(
      int i,
      int a,
      int arrive,
      boolean taken,
      int left,
      int j,
      int service,
      int mode,
      long[] gone,
      long room) {
    int ready = Math.max(arrive, day.open[j]) + service;
    if (ready <= day.latestEnd && within(j, i, ready, taken, mode, left, gone, room)) {
      return true;
    }
    if (taken || !day.hasBreak || a > day.breakTo()) {
      return false;
    }
    // At the door the break begins no later than before the drive.
    int rested = Math.max(arrive, day.breakFrom()) + day.breakLength();
    ready = Math.max(rested, day.open[j]) + service;
    return ready <= day.latestEnd && within(j, i, ready, true, mode, left, gone, room);
  }
}
