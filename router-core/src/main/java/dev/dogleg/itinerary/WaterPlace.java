package dev.dogleg.itinerary;

/**
 * Where tanks may be filled and emptied.
 *
 * @param place a number of the request's travel times
 * @param seconds how long it takes there, 0..14,400
 */
public record WaterPlace(int place, int seconds) {
  /** Checks the ranges. */
  public WaterPlace {
    if (place < 0 || seconds < 0 || seconds > 14_400) {
      throw new IllegalArgumentException("water place out of range: " + place + ", " + seconds);
    }
  }
}
