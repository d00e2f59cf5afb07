package dev.dogleg.plan.late;

import java.util.Comparator;

/**
 * How much of what was promised a rest of a day breaks; the first figure that differs decides.
 *
 * @param leftOut booked visits without room
 * @param toldBroken told times broken
 * @param toldLateSeconds seconds late over all told times
 * @param wishesBroken wishes broken that were never told
 * @param wishLateSeconds seconds late over all wishes
 * @param breakLateSeconds seconds by which the break starts after its span
 */
public record Lateness(
    int leftOut,
    int toldBroken,
    int toldLateSeconds,
    int wishesBroken,
    int wishLateSeconds,
    int breakLateSeconds)
    implements Comparable<Lateness> {

  /** Everything is kept. */
  public static final Lateness NONE = new Lateness(0, 0, 0, 0, 0, 0);

  private static final Comparator<Lateness> ORDER =
      Comparator.comparingInt(Lateness::leftOut)
          .thenComparingInt(Lateness::toldBroken)
          .thenComparingInt(Lateness::toldLateSeconds)
          .thenComparingInt(Lateness::wishesBroken)
          .thenComparingInt(Lateness::wishLateSeconds)
          .thenComparingInt(Lateness::breakLateSeconds);

  /** Checks that nothing is negative. */
  public Lateness {
    if (leftOut < 0
        || toldBroken < 0
        || toldLateSeconds < 0
        || wishesBroken < 0
        || wishLateSeconds < 0
        || breakLateSeconds < 0) {
      throw new IllegalArgumentException("counts and seconds are 0 or more");
    }
  }

  @Override
  public int compareTo(Lateness other) {
    return ORDER.compare(this, other);
  }
}
