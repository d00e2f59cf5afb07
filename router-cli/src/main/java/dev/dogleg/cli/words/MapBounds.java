package dev.dogleg.cli.words;

import dev.dogleg.model.GeoPoint;

/**
 * The box a map covers; lets a reader see that latitude and longitude were swapped.
 *
 * @param south least latitude
 * @param west least longitude
 * @param north most latitude
 * @param east most longitude
 */
public record MapBounds(double south, double west, double north, double east) {
  /** Checks the order. */
  public MapBounds {
    if (!(south <= north) || !(west <= east)) {
      throw new IllegalArgumentException("a map's box must not be turned round");
    }
  }

  /**
   * Whether a point lies inside.
   *
   * @param point the point
   * @return true on the edge too
   */
  public boolean holds(GeoPoint point) {
    return point.lat() >= south
        && point.lat() <= north
        && point.lon() >= west
        && point.lon() <= east;
  }
}
