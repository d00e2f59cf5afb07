package dev.dogleg.itinerary;

/**
 * How much whole days and single drives vary.
 *
 * <p>A day has one factor in common, a standard normal D: every groom of the day takes {@code
 * exp(paceLogSpread * D)} times as long and every drive {@code exp(trafficLogSpread * D)} times;
 * each drive has a factor of its own, lognormal with median 1 and {@code legLogSpread}.
 *
 * @param paceLogSpread of the day's grooms, 0..1
 * @param trafficLogSpread of the day's drives, 0..1
 * @param legLogSpread of one drive, 0..1
 */
public record DaySpread(double paceLogSpread, double trafficLogSpread, double legLogSpread) {
  /** Nothing varies. */
  public static final DaySpread NONE = new DaySpread(0, 0, 0);

  /** Starter figures, an estimate without source; the visit log corrects them. */
  public static final DaySpread STARTER = new DaySpread(0.05, 0.10, 0.20);

  /** Checks the ranges. */
  public DaySpread {
    check("paceLogSpread", paceLogSpread);
    check("trafficLogSpread", trafficLogSpread);
    check("legLogSpread", legLogSpread);
  }

  private static void check(String name, double value) {
    if (!(value >= 0 && value <= 1)) {
      throw new IllegalArgumentException(name + " must lie in 0..1, was " + value);
    }
  }
}
