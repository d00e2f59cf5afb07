package dev.dogleg.plan.week;

import dev.dogleg.schedule.StepTerms;

/**
 * Whether a partial day may still become one of low reduced cost, told by two floors of its rest,
 * after a visit or before one. Mutable: its floors are those of the prices taken last.
 */
final class RestGlance {
  private final RelaxedDay day;
  private final RestLegs legs;
  private final RestFloor floor;
  private final RestFill fill;
  private long scale;

  /** For one kind of van-day; {@link #take} before use. */
  RestGlance(RelaxedDay day, StepTerms terms) {
    this.day = day;
    legs = new RestLegs(day, terms);
    floor = new RestFloor(legs);
    fill = new RestFill(day, terms);
  }

  /** Takes prices. */
  void take(DayDuals duals) {
    floor.fill(duals.worth, duals.costScale);
    fill.fill(duals.worth, duals.costScale);
    scale = duals.costScale;
  }

  /**
   * Whether a partial day may end in time and within a room.
   *
   * @param i visit just served
   * @param before visit before it, or -1
   * @param a ready to leave it at this second at the earliest
   * @param taken whether the break is behind
   * @param gone visits that can not come any more, one bit each, or some of them
   * @param room most that the rest may add to the reduced cost, in parts
   */
  boolean within(int i, int before, int a, boolean taken, long[] gone, long room) {
    long rest = floor.of(i, before, a, taken);
    return rest < RelaxedDay.NEVER && rest <= room && fill.of(gone, 0, a, taken) <= room;
  }

  /**
   * Whether a partial day that goes on to a visit may end in time and within a room: asked before
   * it is known when the van gets there, and at what cost.
   *
   * @param i visit left
   * @param a ready to leave it at this second at the earliest
   * @param taken whether the break is behind
   * @param j visit driven to
   * @param service its seconds
   * @param gone visits that can not come any more then, one bit each, or some of them
   * @param room most that the drive and the rest may add to the reduced cost, in parts
   */
  boolean mayGo(int i, int a, boolean taken, int j, int service, long[] gone, long room) {
    int drive = legs.driveLater(i, j, a);
    if (drive == RestLegs.NO_WAY) {
      return false;
    }
    long rest = room - scale * legs.ownPrice(i, j, drive);
    int arrive = a + drive;
    int ready = Math.max(arrive, day.open[j]) + service;
    if (ready <= day.latestEnd && within(j, i, ready, taken, gone, rest)) {
      return true;
    }
    if (taken || !day.hasBreak || a > day.breakTo()) {
      return false;
    }
    // At the door the break begins no later than before the drive.
    int rested = Math.max(arrive, day.breakFrom()) + day.breakLength();
    ready = Math.max(rested, day.open[j]) + service;
    return ready <= day.latestEnd && within(j, i, ready, true, gone, rest);
  }
}
