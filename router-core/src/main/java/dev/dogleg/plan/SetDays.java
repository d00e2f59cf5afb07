package dev.dogleg.plan;

import dev.dogleg.schedule.DayModel;
import java.util.Optional;

/**
 * The best day that serves a given set of visits, all of them: exact, for a week that asks often.
 *
 * <p>One thread; legs are remembered from set to set.
 */
public final class SetDays {
  private final DayModel day;

  /**
   * Days of one groomer on one date.
   *
   * @param day all visits that may be asked for, at most 64
   */
  public SetDays(DayModel day) {
    if (day.size() > Long.SIZE) {
      throw new IllegalArgumentException("at most 64 visits, was " + day.size());
    }
    this.day = day;
  }

  /**
   * A best day.
   *
   * @param costSixtieths its cost, in sixtieths of a second of driving
   * @param order numbers of the visits in the order served, in the numbering of the whole day
   * @param proven whether no order of the set costs less; false where the effort was spent first
   */
  @SuppressWarnings("ArrayRecordComponent")
  public record Best(long costSixtieths, int[] order, boolean proven) {}

  /**
   * The best day of a set.
   *
   * @param set bit v is set where visit v of the day must be served; waiting-list visits too
   * @param effort limit in solver steps
   * @return the day; empty where none serves them all, or none was found within the effort
   */
  public Optional<Best> best(long set, long effort) {
    int[] visits = new int[Long.bitCount(set)];
    int k = 0;
    for (long rest = set; rest != 0; rest &= rest - 1) {
      visits[k++] = Long.numberOfTrailingZeros(rest);
    }
    DayModel part = day.part(visits);
    DayAnswer answer = new DayEngine(part).serveAll(new WorkMeter(effort, () -> false));
    if (answer.value() >= DayValue.BOOKED) {
      return Optional.empty();
    }
    int[] order = answer.order();
    for (int at = 0; at < order.length; at++) {
      order[at] = visits[order[at]];
    }
    boolean proven = answer.lowerBound() >= answer.value();
    return Optional.of(new Best(answer.value(), order, proven));
  }
}
