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
}
