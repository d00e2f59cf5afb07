package dev.dogleg.itinerary;

/**
 * Water of one visit.
 *
 * @param freshMillilitres fresh water used, 0..2,000,000
 * @param greyMillilitres grey water made, 0..2,000,000
 */
public record WaterUse(int freshMillilitres, int greyMillilitres) {
  /** No water. */
  public static final WaterUse NONE = new WaterUse(0, 0);

  /** Checks the ranges. */
  public WaterUse {
    if (freshMillilitres < 0
        || freshMillilitres > 2_000_000
        || greyMillilitres < 0
        || greyMillilitres > 2_000_000) {
      throw new IllegalArgumentException("water must lie in 0..2,000,000 ml");
    }
  }
}
