package dev.dogleg.cli.export;

import dev.dogleg.address.Match;
import java.util.Locale;

/** Links that a map program opens: {@code geo:} with the uncertainty in metres (RFC 5870). */
public final class GeoLink {
  private GeoLink() {}

  /**
   * Link to a place that an address may mean.
   *
   * @param match the place
   * @return {@code geo:lat,lon;u=metres}, WGS 84
   */
  public static String of(Match match) {
    return String.format(
        Locale.ROOT, "geo:%s;u=%d", match.point().toString(), match.distanceEstimateMetres());
  }
}
