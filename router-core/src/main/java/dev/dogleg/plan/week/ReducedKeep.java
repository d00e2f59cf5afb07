package dev.dogleg.plan.week;

/** Keeps the partial days that may still end with a reduced cost of no more than so much. */
final class ReducedKeep implements SetSweep.Keep {
  private final DayDuals duals;
  private final RestFloor floor;
  private final RestFill fill;
  private final long most;

  /**
   * Sets up.
   *
   * @param duals prices
   * @param floor floor of rests, filled with the same prices
   * @param fill another floor of rests, filled with the same prices
   * @param most greatest reduced cost of interest, in parts
   */
  ReducedKeep(DayDuals duals, RestFloor floor, RestFill fill, long most) {
    this.duals = duals;
    this.floor = floor;
    this.fill = fill;
    this.most = most;
  }

  @Override
  public boolean keep(long[] set, int last, int a, int b, long cost, boolean taken) {
    // The only visit of a day needs no break.
    if (!taken && SetSweep.single(set)) {
      return true;
    }
    long rest = floor.of(last, -1, a, taken);
    long reduced = duals.reduced(set, cost);
    return rest < RelaxedDay.NEVER
        && reduced + rest <= most
        && reduced + fill.of(set, 0, a, taken) <= most;
  }
}
