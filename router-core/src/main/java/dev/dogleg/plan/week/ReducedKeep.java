package dev.dogleg.plan.week;

import dev.dogleg.schedule.StepTerms;

/** Keeps the partial days that may still end with a reduced cost of no more than so much. */
final class ReducedKeep implements SetSweep.Keep {
  private static final int ANYBODY = -1;

  private final DayDuals duals;
  private final StepTerms terms;
  private final RestGlance glance;
  private final long most;
  private final long[] gone;
  private int last;
  private boolean single;
  private int mode;

  /** What may still be added to the reduced cost where the day costs nothing so far. */
  private long room;

  /**
   * Sets up.
   *
   * @param priced the van-day and its prices
   * @param most greatest reduced cost of interest, in parts
   */
  ReducedKeep(PricedDay priced, long most) {
    duals = priced.duals();
    terms = priced.step().terms();
    glance = priced.glance();
    this.most = most;
    gone = new long[priced.near().words()];
  }

  @Override
  public void next(long[] set, int lastVisit, long extra) {
    last = lastVisit;
    single = SetSweep.single(set);
    room = most - duals.reduced(set, extra);
    mode = glance.mode(set, 0);
    System.arraycopy(set, 0, gone, 0, gone.length);
    terms.addBlocked(set, 0, gone, 0);
  }

  @Override
  public int left(int freshUsed, int greyMade) {
    return glance.left(freshUsed, greyMade);
  }

  @Override
  public int mayGo(int i, int a, long cost, boolean taken, int left, int service) {
    return glance.mayGo(
        i, a, taken, left, last, service, mode, gone, room - duals.costScale * cost);
  }

  @Override
  public boolean keep(int a, long cost, boolean taken, int left) {
    // The only visit of a day needs no break.
    return (!taken && single)
        || glance.within(last, ANYBODY, a, taken, mode, left, gone, room - duals.costScale * cost);
  }
}
