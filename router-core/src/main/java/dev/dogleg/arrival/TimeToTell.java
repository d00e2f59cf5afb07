package dev.dogleg.arrival;

import dev.dogleg.time.TimeWindow;
import java.util.Objects;

/**
 * A span to tell an owner: the van is at the door not after its end, and the service starts not
 * before its start.
 *
 * @param visitId whose door
 * @param arriveWithin the span, elapsed seconds of the day
 * @param keptPermille odds of being there not after its end, thousandths, rounded down
 * @param meanWaitSeconds mean waiting of the van for its start
 * @param atTarget whether the odds reach the target; false where what was told before, or what the
 *     client asked for, ends too early
 */
public record TimeToTell(
    String visitId,
    TimeWindow arriveWithin,
    int keptPermille,
    int meanWaitSeconds,
    boolean atTarget) {
  /** Checks the range. */
  public TimeToTell {
    Objects.requireNonNull(visitId, "visitId");
    Objects.requireNonNull(arriveWithin, "arriveWithin");
    if (keptPermille < 0 || keptPermille > 1000 || meanWaitSeconds < 0) {
      throw new IllegalArgumentException("out of range: " + keptPermille + ", " + meanWaitSeconds);
    }
  }

  /**
   * A span that holds the planned arrival, so that the plan as it is keeps every span of its day: a
   * later start would make the van wait, and a door after it might be reached too late.
   *
   * @param arriveSeconds planned arrival, elapsed seconds
   * @param roundSeconds an earlier start lies on a multiple of this
   * @return the span, wider where it must be
   */
  public TimeWindow holding(int arriveSeconds, int roundSeconds) {
    return new TimeWindow(
        Math.min(arriveWithin.fromSeconds(), arriveSeconds / roundSeconds * roundSeconds),
        Math.max(arriveWithin.toSeconds(), arriveSeconds));
  }
}
