package dev.dogleg.sampletown.town;

import java.util.Locale;

/**
 * A place that tests and the README speak of.
 *
 * @param name key, lower case with underscores
 * @param latE7 latitude in units of 10⁻⁷ degrees
 * @param lonE7 longitude in units of 10⁻⁷ degrees
 * @param what why it is of interest, without commas
 * @param address number, street and district or village, without commas; empty if it has none
 */
public record Landmark(String name, int latE7, int lonE7, String what, String address) {

  /** {@return the line of the landmarks file} */
  public String line() {
    return String.format(
        Locale.ROOT, "%s,%.7f,%.7f,%s,%s", name, latE7 / 1e7, lonE7 / 1e7, what, address);
  }
}
