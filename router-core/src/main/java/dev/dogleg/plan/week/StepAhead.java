package dev.dogleg.plan.week;

import java.util.Arrays;

/**
 * What comes after a visit of an order: until when it may be left or reached for all of it to be in
 * time, what the way home costs at least, how much water it takes.
 *
 * <p>Maintainers: limits are told by the number of water stops that are still to be made, for each
 * of them takes its time. Estimates, as all of {@link DaySteps}. One thread.
 */
final class StepAhead {
  /** Last seconds at which the visit may be left, the break before one, by water stops to come. */
  final int[] leaveOpen;

  /** The same with the break behind one. */
  final int[] leaveTaken;

  /** Least sixtieths from the visit home, by water stops to come. */
  final long[] home;

  /** Water of the visits to come, in millilitres. */
  int fresh;

  int grey;

  /** Whether no visit comes after. */
  boolean last;

  private final int[] reachOpen;
  private final int[] reachTaken;
  private int ownFresh;
  private int ownGrey;

  /** Where up to so many water stops may be made. */
  StepAhead(int mostStops) {
    leaveOpen = new int[mostStops + 1];
    leaveTaken = new int[mostStops + 1];
    reachOpen = new int[mostStops + 1];
    reachTaken = new int[mostStops + 1];
    home = new long[mostStops + 1];
  }

  /**
   * Is the end place.
   *
   * @param steps steps of the day
   * @param single whether at most one visit comes before it
   */
  void end(DaySteps steps, boolean single) {
    Arrays.fill(reachTaken, -1);
    Arrays.fill(reachOpen, -1);
    Arrays.fill(home, RelaxedDay.NEVER);
    reachTaken[0] = steps.latestEnd(true, single);
    reachOpen[0] = steps.latestEnd(false, single);
    home[0] = 0;
    fresh = 0;
    grey = 0;
    ownFresh = 0;
    ownGrey = 0;
    last = false;
  }

  /**
   * Is a visit.
   *
   * @param steps steps of the day
   * @param i the visit
   * @param service its service in seconds, or less where it is not known
   * @param next what comes after it
   * @param j node of {@code next}
   * @param stops water stops up to which limits are wanted
   * @param isLast whether it is the last visit of the day whatever becomes of it
   */
  void visit(DaySteps steps, int i, int service, StepAhead next, int j, int stops, boolean isLast) {
    fresh = next.fresh + next.ownFresh;
    grey = next.grey + next.ownGrey;
    ownFresh = steps.fresh(i);
    ownGrey = steps.grey(i);
    last = isLast;
    for (int f = 0; f <= stops; f++) {
      home[f] = Math.min(RelaxedDay.NEVER, steps.least(i, j) + next.home[f]);
      if (f > 0) {
        home[f] = Math.min(home[f], steps.leastByWell(i, j) + next.home[f - 1]);
      }
      leaveTaken[f] = steps.latestLeave(i, j, next.reachTaken[f]);
      leaveOpen[f] = steps.latestLeave(i, j, next.reachOpen[f]);
      if (f > 0) {
        leaveTaken[f] =
            Math.max(leaveTaken[f], steps.latestLeaveByWell(i, j, next.reachTaken[f - 1]));
        leaveOpen[f] = Math.max(leaveOpen[f], steps.latestLeaveByWell(i, j, next.reachOpen[f - 1]));
      }
      if (!isLast) {
        leaveOpen[f] = Math.max(leaveOpen[f], steps.latestBeforeBreak(leaveTaken[f]));
      }
      reachTaken[f] = steps.latestArrival(i, service, leaveTaken[f]);
      reachOpen[f] =
          Math.max(
              steps.latestArrival(i, service, leaveOpen[f]),
              steps.latestArrivalForBreak(i, service, leaveTaken[f]));
    }
  }

  /** {@return the last second at which the visit may be reached, the break before one} */
  int reachOpen() {
    return reachOpen[0];
  }

  /** {@return the last second at which the visit may be reached at all} */
  int reach() {
    return Math.max(reachOpen[0], reachTaken[0]);
  }
}
