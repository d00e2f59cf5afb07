package dev.dogleg.cli.words;

import dev.dogleg.model.GeoPoint;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a point pasted by hand: {@code lat,lon} in decimal degrees, also as {@code geo:lat,lon}
 * (RFC 5870), in brackets, or with N S E W.
 */
public final class PointGrammar {
  private static final String DEGREES = "([-+]?\\d{1,3}(?:\\.\\d{1,15})?)\\s*°?\\s*([nsew])?";
  private static final Pattern POINT =
      Pattern.compile(
          "(?:geo:)?\\(?\\s*" + DEGREES + "(?:\\s*[,;]\\s*|\\s+)" + DEGREES + "\\s*\\)?(?:;u=.*)?");
  private static final Pattern NUMBER = Pattern.compile("[-+]?\\d{1,3}(?:[.]\\d{1,15})?");

  private PointGrammar() {}

  /**
   * Reads one cell that holds both.
   *
   * @param cell its text, not blank
   * @param bounds bounds of the map, or empty where not known yet
   * @return the point; codes {@code bad-pin}, {@code swapped-lat-lon}
   */
  public static Reading<GeoPoint> read(String cell, Optional<MapBounds> bounds) {
    Matcher point = POINT.matcher(cell.strip().toLowerCase(Locale.ROOT));
    if (!point.matches()) {
      return Reading.none(bad("latitude and longitude like 40.7128,-74.0060 were expected", ""));
    }
    double first = degrees(point.group(1), point.group(2));
    double second = degrees(point.group(3), point.group(4));
    boolean eastFirst = isEastWest(point.group(2)) || isNorthSouth(point.group(4));
    return eastFirst ? checked(second, first, bounds) : checked(first, second, bounds);
  }

  /**
   * Reads two cells.
   *
   * @param lat latitude, not blank
   * @param lon longitude, not blank
   * @param bounds bounds of the map, or empty where not known yet
   * @return the point; codes as {@link #read(String, Optional)}
   */
  public static Reading<GeoPoint> read(String lat, String lon, Optional<MapBounds> bounds) {
    if (!NUMBER.matcher(lat.strip()).matches() || !NUMBER.matcher(lon.strip()).matches()) {
      return Reading.none(
          bad("decimal degrees with a point were expected", "for example 40.7128 and -74.0060"));
    }
    return checked(Double.parseDouble(lat.strip()), Double.parseDouble(lon.strip()), bounds);
  }

  private static Reading<GeoPoint> checked(double lat, double lon, Optional<MapBounds> bounds) {
    boolean onEarth = Math.abs(lat) <= 90 && Math.abs(lon) <= 180;
    boolean swappedOnEarth = Math.abs(lon) <= 90 && Math.abs(lat) <= 180;
    boolean swapped =
        swappedOnEarth
            && (!onEarth
                || (bounds.isPresent()
                    && !bounds.get().holds(new GeoPoint(lat, lon))
                    && bounds.get().holds(new GeoPoint(lon, lat))));
    if (swapped) {
      return Reading.none(
          Remark.aside(
              "swapped-lat-lon",
              "latitude first, then longitude was expected",
              "write " + plain(lon) + "," + plain(lat)));
    }
    if (!onEarth) {
      return Reading.none(
          bad("latitude -90..90 and longitude -180..180 were expected", "is a digit too many?"));
    }
    return Reading.of(new GeoPoint(lat, lon));
  }

  private static String plain(double degrees) {
    return java.math.BigDecimal.valueOf(degrees).toPlainString();
  }

  private static double degrees(String number, String side) {
    double value = Double.parseDouble(number);
    return "s".equals(side) || "w".equals(side) ? -value : value;
  }

  private static boolean isEastWest(String side) {
    return "e".equals(side) || "w".equals(side);
  }

  private static boolean isNorthSouth(String side) {
    return "n".equals(side) || "s".equals(side);
  }

  private static Remark bad(String expected, String hint) {
    return Remark.aside("bad-pin", expected, hint);
  }
}
