package dev.dogleg.plan;

import dev.dogleg.travel.TravelTimes;

/**
 * Travel times of whole minutes with steps at whole minutes, for comparing with a search by
 * minutes.
 *
 * <p>Each pair takes one duration before its step and another from it on. Where the second is
 * shorter, whoever leaves shortly before the step arrives with the first to leave after it (first
 * in, first out).
 */
public final class StepTravel implements TravelTimes {
  private final int[][] before;
  private final int[][] after;
  private final int step;

  /**
   * Negative seconds mean no road.
   *
   * @param before seconds before the step
   * @param after seconds from the step on
   * @param step when the duration changes
   */
  public StepTravel(int[][] before, int[][] after, int step) {
    this.before = before;
    this.after = after;
    this.step = step;
  }

  /** {@return the same without the step} */
  public StepTravel steady() {
    return new StepTravel(before, before, step);
  }

  @Override
  public int size() {
    return before.length;
  }

  @Override
  public boolean reaches(int from, int to) {
    return before[from][to] >= 0;
  }

  @Override
  public int driveSeconds(int from, int to, int leave) {
    if (!reaches(from, to)) {
      throw new IllegalArgumentException("no road");
    }
    if (leave >= step) {
      return after[from][to];
    }
    return Math.min(before[from][to], step - leave + after[from][to]);
  }

  @Override
  public int steadyUntil(int from, int to, int leave) {
    if (leave >= step || before[from][to] == after[from][to]) {
      return FOREVER;
    }
    if (before[from][to] < after[from][to]) {
      return step - 1;
    }
    return Math.max(leave, step + after[from][to] - before[from][to]);
  }

  @Override
  public int leastDriveSeconds(int from, int to) {
    return Math.min(before[from][to], after[from][to]);
  }

  @Override
  public int lengthMetres(int from, int to) {
    return from == to ? 0 : before[from][to] * 10 + from + to;
  }
}
