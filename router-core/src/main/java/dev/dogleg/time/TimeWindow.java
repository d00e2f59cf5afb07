package dev.dogleg.time;

/**
 * A closed span of a working day: both ends belong to it.
 *
 * @param fromSeconds first second, elapsed since local midnight, from {@link #DAY_START}
 * @param toSeconds last second, inclusive, not before {@code fromSeconds}, to {@link #DAY_END}
 */
public record TimeWindow(int fromSeconds, int toSeconds) implements Comparable<TimeWindow> {

  /** Earliest second a window may name: local midnight. */
  public static final int DAY_START = 0;

  /**
   * Latest second a window may name: 48 hours after local midnight, so that a day may run past the
   * next one.
   */
  public static final int DAY_END = 172_800;

  /** The whole day: no limit. */
  public static final TimeWindow ALWAYS = new TimeWindow(DAY_START, DAY_END);

  /** Checks range and order. */
  public TimeWindow {
    if (fromSeconds < DAY_START || toSeconds > DAY_END || fromSeconds > toSeconds) {
      throw new IllegalArgumentException(
          "window must lie in 0.."
              + DAY_END
              + " and not end before it starts, was "
              + fromSeconds
              + ".."
              + toSeconds);
    }
  }

  /**
   * Whether an instant lies inside.
   *
   * @param seconds elapsed since local midnight
   * @return true at both ends too
   */
  public boolean holds(int seconds) {
    return fromSeconds <= seconds && seconds <= toSeconds;
  }

  /** Orders by start, then by end. */
  @Override
  public int compareTo(TimeWindow other) {
    int byStart = Integer.compare(fromSeconds, other.fromSeconds);
    return byStart != 0 ? byStart : Integer.compare(toSeconds, other.toSeconds);
  }

  /** {@return {@code HH:MM:SS-HH:MM:SS} in elapsed time} */
  @Override
  public String toString() {
    return WorkDay.elapsedText(fromSeconds) + "-" + WorkDay.elapsedText(toSeconds);
  }

  // Written out: what a record brings along spins classes at its first call, anew in each start.

  @Override
  public boolean equals(Object other) {
    return other instanceof TimeWindow window && compareTo(window) == 0;
  }

  @Override
  public int hashCode() {
    return 31 * fromSeconds + toSeconds;
  }
}
