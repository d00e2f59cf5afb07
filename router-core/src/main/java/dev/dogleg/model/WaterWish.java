package dev.dogleg.model;

import java.util.List;

/**
 * Where and how tanks are filled and emptied during the day.
 *
 * @param atHome whether at home
 * @param places other places
 * @param seconds how long it takes, 0..14,400
 * @param most most water stops a day, 0..4
 */
public record WaterWish(boolean atHome, List<Place> places, int seconds, int most) {
  /** At home, 20 minutes (common practice, no source), once a day. */
  public static final WaterWish STARTER = new WaterWish(true, List.of(), 1_200, 1);

  /** Checks the ranges. */
  public WaterWish {
    places = List.copyOf(places);
    if (seconds < 0 || seconds > 14_400 || most < 0 || most > 4) {
      throw new IllegalArgumentException("water out of range: " + seconds + ", " + most);
    }
  }
}
