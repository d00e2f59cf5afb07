package dev.dogleg.address;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.zip.GZIPOutputStream;

/**
 * A land of invented towns as large as wanted, written in one stream. A town has a hundred streets
 * of twenty houses and a boundary; towns stand 3 km apart and repeat their streets' names.
 */
final class MadeUpLand {
  static final int HOUSES_PER_STREET = 20;
  static final int STREETS_PER_TOWN = 100;
  private static final int TOWNS_PER_ROW = 100;
  private static final double DEGREES_PER_METRE = 1e-5;
  private static final List<String> FIRST =
      List.of("Alder", "Bram", "Corn", "Dun", "Elder", "Fal", "Gorse", "Hazel", "Iver", "Juni");
  private static final List<String> SECOND =
      List.of("brook", "croft", "dale", "field", "gate", "holm", "ley", "mere", "stead", "wick");

  private final int towns;
  private long id;

  /** A land of at least so many houses. */
  MadeUpLand(int houses) {
    int each = HOUSES_PER_STREET * STREETS_PER_TOWN;
    this.towns = (houses + each - 1) / each;
  }

  int houses() {
    return towns * STREETS_PER_TOWN * HOUSES_PER_STREET;
  }

  /** An address of the land by its number, 0 to {@link #houses} - 1. */
  String address(int house) {
    int street = house / HOUSES_PER_STREET % STREETS_PER_TOWN;
    int town = house / (HOUSES_PER_STREET * STREETS_PER_TOWN);
    return number(house) + " " + street(street) + ", " + postcode(town) + " " + town(town);
  }

  double lat(int house) {
    int street = house / HOUSES_PER_STREET % STREETS_PER_TOWN;
    int town = house / (HOUSES_PER_STREET * STREETS_PER_TOWN);
    return southOf(town) + (street * 20 + (house % 2 == 0 ? 8 : 12)) * DEGREES_PER_METRE;
  }

  double lon(int house) {
    int town = house / (HOUSES_PER_STREET * STREETS_PER_TOWN);
    return westOf(town) + house % HOUSES_PER_STREET * 30 * DEGREES_PER_METRE;
  }

  private static int number(int house) {
    return house % HOUSES_PER_STREET + 1;
  }

  private static String street(int street) {
    return FIRST.get(street / 10) + SECOND.get(street % 10) + " Lane";
  }

  private static String town(int town) {
    StringBuilder name = new StringBuilder("Q");
    for (int rest = town + 10; rest > 0; rest /= 10) {
      name.append("ab eb ib ob ub ad ed id od ud".split(" ")[rest % 10]);
    }
    return name.toString();
  }

  private static String postcode(int town) {
    return Integer.toString(10_000 + town);
  }

  private static double southOf(int town) {
    return town / TOWNS_PER_ROW * 3000 * DEGREES_PER_METRE;
  }

  private static double westOf(int town) {
    return town % TOWNS_PER_ROW * 3000 * DEGREES_PER_METRE;
  }

  /** Writes the land as {@code .osm.gz}. */
  void write(Path file) throws IOException {
    try (Writer out =
        new OutputStreamWriter(
            new BufferedOutputStream(new GZIPOutputStream(Files.newOutputStream(file), 1 << 16)),
            StandardCharsets.UTF_8)) {
      out.write("<osm version=\"0.6\">\n");
      for (int house = 0; house < houses(); house++) {
        int town = house / (HOUSES_PER_STREET * STREETS_PER_TOWN);
        int street = house / HOUSES_PER_STREET % STREETS_PER_TOWN;
        node(
            out,
            lat(house),
            lon(house),
            tag("addr:housenumber", Integer.toString(number(house)))
                + tag("addr:street", street(street))
                + tag("addr:postcode", postcode(town)));
      }
      long firstLine = id + 1;
      for (int town = 0; town < towns; town++) {
        for (int street = 0; street < STREETS_PER_TOWN; street++) {
          double lat = southOf(town) + (street * 20 + 10) * DEGREES_PER_METRE;
          node(out, lat, westOf(town), "");
          node(out, lat, westOf(town) + 600 * DEGREES_PER_METRE, "");
        }
      }
      long firstCorner = id + 1;
      for (int town = 0; town < towns; town++) {
        double south = southOf(town) - 100 * DEGREES_PER_METRE;
        double west = westOf(town) - 100 * DEGREES_PER_METRE;
        double side = 2500 * DEGREES_PER_METRE;
        node(out, south, west, "");
        node(out, south, west + side, "");
        node(out, south + side, west + side, "");
        node(out, south + side, west, "");
      }
      for (int street = 0; street < towns * STREETS_PER_TOWN; street++) {
        String tags =
            tag("highway", "residential") + tag("name", street(street % STREETS_PER_TOWN));
        way(out, tags, firstLine + 2L * street, firstLine + 2L * street + 1);
      }
      for (int town = 0; town < towns; town++) {
        long corner = firstCorner + 4L * town;
        String tags =
            tag("boundary", "administrative") + tag("admin_level", "8") + tag("name", town(town));
        way(out, tags, corner, corner + 1, corner + 2, corner + 3, corner);
      }
      out.write("</osm>\n");
    }
  }

  private void node(Writer out, double lat, double lon, String tags) throws IOException {
    out.write("<node id=\"" + ++id + "\" lat=\"" + (float) lat + "\" lon=\"" + (float) lon + "\">");
    out.write(tags + "</node>\n");
  }

  private void way(Writer out, String tags, long... nodes) throws IOException {
    out.write("<way id=\"" + ++id + "\">");
    for (long node : nodes) {
      out.write("<nd ref=\"" + node + "\"/>");
    }
    out.write(tags + "</way>\n");
  }

  private static String tag(String key, String value) {
    return "<tag k=\"" + key + "\" v=\"" + value + "\"/>";
  }
}
