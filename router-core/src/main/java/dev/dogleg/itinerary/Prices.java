package dev.dogleg.itinerary;

/**
 * What things are worth, in the planner's one currency: seconds of driving.
 *
 * <p>A cost is a whole number of <i>sixtieths</i>: 60 sixtieths are one second of driving. One
 * second of driving costs 60; one waiting second {@code waitingMinuteSeconds}; one second of
 * overtime {@code overtimeMinuteSeconds}; one second by which the day ends later {@code
 * endMinuteSeconds}; a leg of m metres {@code round(m * kilometreSeconds * 60 / 1000)}, halves up,
 * leg by leg.
 *
 * @param kilometreSeconds seconds of driving that one kilometre is worth, 0..3600
 * @param waitingMinuteSeconds seconds of driving that one minute of waiting is worth, 0..3600
 * @param overtimeMinuteSeconds seconds of driving that one minute after the shift's end is worth,
 *     0..36,000
 * @param endMinuteSeconds seconds of driving that one minute of ending the day later is worth,
 *     counted from the shift's start, 0..3600
 */
public record Prices(
    int kilometreSeconds,
    int waitingMinuteSeconds,
    int overtimeMinuteSeconds,
    int endMinuteSeconds) {

  /** Starter prices: a kilometre 20 s, a waiting minute 20 s, an overtime minute 120 s. */
  public static final Prices STARTER = new Prices(20, 20, 120, 0);

  /** Only driving counts. */
  public static final Prices DRIVE_ONLY = new Prices(0, 0, 0, 0);

  /** Sixtieths in one second of driving. */
  public static final int SIXTIETHS_PER_DRIVE_SECOND = 60;

  /** Checks the ranges. */
  public Prices {
    check("kilometreSeconds", kilometreSeconds, 3600);
    check("waitingMinuteSeconds", waitingMinuteSeconds, 3600);
    check("overtimeMinuteSeconds", overtimeMinuteSeconds, 36_000);
    check("endMinuteSeconds", endMinuteSeconds, 3600);
  }

  private static void check(String name, int value, int most) {
    if (value < 0 || value > most) {
      throw new IllegalArgumentException(name + " must lie in 0.." + most + ", was " + value);
    }
  }
}
