package dev.dogleg.model;

import java.util.Locale;

/**
 * A point on the ground, WGS 84.
 *
 * @param lat latitude in degrees, -90..90
 * @param lon longitude in degrees, -180..180
 */
public record GeoPoint(double lat, double lon) {
  private static final double EARTH_RADIUS_METRES = 6_371_008.8;

  /** Checks the ranges. */
  public GeoPoint {
    if (!(lat >= -90 && lat <= 90) || !(lon >= -180 && lon <= 180)) {
      throw new IllegalArgumentException("not a point on the earth: " + lat + "," + lon);
    }
  }

  /**
   * Great-circle distance, for judging look-ups and snapping; never a substitute for a road.
   *
   * @param other the other point
   * @return metres on a sphere of the mean radius (haversine formula; at most 0.6 % off the
   *     ellipsoid)
   */
  public double metresTo(GeoPoint other) {
    double dLat = Math.toRadians(other.lat - lat) / 2;
    double dLon = Math.toRadians(other.lon - lon) / 2;
    double h =
        Math.sin(dLat) * Math.sin(dLat)
            + Math.cos(Math.toRadians(lat))
                * Math.cos(Math.toRadians(other.lat))
                * Math.sin(dLon)
                * Math.sin(dLon);
    return 2 * EARTH_RADIUS_METRES * Math.asin(Math.min(1, Math.sqrt(h)));
  }

  /** {@return {@code lat,lon} with six decimals} */
  @Override
  public String toString() {
    return String.format(Locale.ROOT, "%.6f,%.6f", lat, lon);
  }
}
