package dev.dogleg.cli.export;

import dev.dogleg.model.GeoPoint;

/** Lines to paste into {@code places.csv}, the file of a book in which addresses are put right. */
public final class PlacesLine {
  /** Name of the file. */
  public static final String FILE = "places.csv";

  /** Its first line, for a book that has none yet. */
  public static final String HEADER = "address,lat,lon";

  private PlacesLine() {}

  /**
   * The line that puts an address at a point.
   *
   * @param typed address as typed
   * @param point where it is
   * @return one line, the address always quoted
   */
  public static String of(String typed, GeoPoint point) {
    return address(typed) + "," + point;
  }

  /**
   * The line for an address whose point a person must find first.
   *
   * @param typed address as typed
   * @return one line with {@code LAT,LON} to be filled in
   */
  public static String blank(String typed) {
    return address(typed) + ",LAT,LON";
  }

  private static String address(String typed) {
    String oneLine = typed.strip().replaceAll("\\s+", " ");
    return '"' + CsvText.free(oneLine).replace("\"", "\"\"") + '"';
  }
}
