package dev.dogleg.model;

import java.util.OptionalLong;

/**
 * What things are worth to the business, in seconds of driving, the planner's one currency.
 *
 * @param kilometreSeconds one kilometre, 0..3,600
 * @param waitingMinuteSeconds one minute of waiting, 0..3,600
 * @param overtimeMinuteSeconds one minute after the shift's end, 0..36,000
 * @param endMinuteSeconds one minute of ending the day later, 0..3,600
 * @param changeSeconds moving a visit that a former plan had placed, 0..36,000
 * @param hourMinor money that an hour is worth, minor units, 1 or more
 * @param waitingVisitSeconds a waiting-list visit without a price, 0..86,400
 */
public record Worth(
    int kilometreSeconds,
    int waitingMinuteSeconds,
    int overtimeMinuteSeconds,
    int endMinuteSeconds,
    int changeSeconds,
    long hourMinor,
    int waitingVisitSeconds) {

  /** Checks the ranges. */
  public Worth {
    check("kilometreSeconds", kilometreSeconds, 3_600);
    check("waitingMinuteSeconds", waitingMinuteSeconds, 3_600);
    check("overtimeMinuteSeconds", overtimeMinuteSeconds, 36_000);
    check("endMinuteSeconds", endMinuteSeconds, 3_600);
    check("changeSeconds", changeSeconds, 36_000);
    check("waitingVisitSeconds", waitingVisitSeconds, 86_400);
    if (hourMinor < 1 || hourMinor > 1_000_000_000L) {
      throw new IllegalArgumentException("hourMinor must lie in 1..10^9, was " + hourMinor);
    }
  }

  private static void check(String name, int value, int most) {
    if (value < 0 || value > most) {
      throw new IllegalArgumentException(name + " must lie in 0.." + most + ", was " + value);
    }
  }

  /**
   * What serving a waiting-list visit is worth.
   *
   * @param priceMinor its price in minor units, or empty where unknown
   * @return seconds of driving: price through the worth of an hour, rounded down, at most 10^9
   */
  public long waitingSeconds(OptionalLong priceMinor) {
    if (priceMinor.isEmpty()) {
      return waitingVisitSeconds;
    }
    long most = 1_000_000_000L;
    long price = Math.min(priceMinor.getAsLong(), Long.MAX_VALUE / 3_600);
    return Math.min(most, price * 3_600 / hourMinor);
  }
}
