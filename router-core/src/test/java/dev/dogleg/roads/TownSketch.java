package dev.dogleg.roads;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * A tiny town in a few lines of text, written as OpenStreetMap XML.
 *
 * <p>Nodes sit on a grid of 100 m at the equator, far out in the ocean: {@code node(1, 2, 3)} is
 * node 1, two hundred metres east and three hundred north.
 */
final class TownSketch {
  /** Degrees of about a hundred metres on the sphere of radius 6,371 km. */
  static final double STEP = 100 / 111_195.08;

  static final double LAT = 0.0;
  static final double LON = -30.0;

  private final List<String> nodes = new ArrayList<>();
  private final List<String> ways = new ArrayList<>();
  private final List<String> relations = new ArrayList<>();
  private int nextWay = 100;

  TownSketch node(int id, double east, double north, String... tags) {
    nodes.add(
        "<node id=\"%d\" lat=\"%.7f\" lon=\"%.7f\">%s</node>"
            .formatted(id, LAT + north * STEP, LON + east * STEP, tags(tags)));
    return this;
  }

  /** A way; {@code refs} like {@code 1 2 3}; returns its id through {@link #lastWay}. */
  TownSketch way(String refs, String... tags) {
    StringBuilder text = new StringBuilder("<way id=\"" + nextWay++ + "\">");
    for (String ref : refs.split(" ")) {
      text.append("<nd ref=\"").append(ref).append("\"/>");
    }
    ways.add(text.append(tags(tags)).append("</way>").toString());
    return this;
  }

  int lastWay() {
    return nextWay - 1;
  }

  /** A turn ban at a node or over a way: {@code ban("no_left_turn", 100, "node", 3, 101)}. */
  TownSketch ban(String kind, long from, String viaType, long via, long to) {
    relations.add(
        ("<relation id=\"%d\"><member type=\"way\" ref=\"%d\" role=\"from\"/>"
                + "<member type=\"%s\" ref=\"%d\" role=\"via\"/>"
                + "<member type=\"way\" ref=\"%d\" role=\"to\"/>%s</relation>")
            .formatted(
                900 + relations.size(),
                from,
                viaType,
                via,
                to,
                tags("type=restriction", "restriction=" + kind)));
    return this;
  }

  private static String tags(String... tags) {
    StringBuilder text = new StringBuilder();
    for (String tag : tags) {
      int at = tag.indexOf('=');
      text.append(
          "<tag k=\"%s\" v=\"%s\"/>"
              .formatted(tag.substring(0, at), tag.substring(at + 1).replace("\"", "&quot;")));
    }
    return text.toString();
  }

  String xml() {
    return "<?xml version='1.0' encoding='UTF-8'?>\n<osm version=\"0.6\">\n"
        + String.join("\n", nodes)
        + "\n"
        + String.join("\n", ways)
        + "\n"
        + String.join("\n", relations)
        + "\n</osm>\n";
  }

  Path write(Path folder) throws IOException {
    return Files.write(folder.resolve("sketch.osm"), xml().getBytes(StandardCharsets.UTF_8));
  }
}
