package dev.dogleg.address;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Writes tiny maps for tests: one metre is written as a hundred-thousandth of a degree. */
final class SmallMap {
  private static final double DEGREES_PER_METRE = 1e-5;

  private final StringBuilder xml = new StringBuilder("<osm version=\"0.6\">\n");
  private final StringBuilder ways = new StringBuilder();
  private final StringBuilder relations = new StringBuilder();
  private long nextId = 1;

  /** A point; tags as key, value, key, value. */
  long node(int eastMetres, int northMetres, String... tags) {
    long id = nextId++;
    xml.append("<node id=\"").append(id).append("\" lat=\"");
    xml.append(northMetres * DEGREES_PER_METRE).append("\" lon=\"");
    xml.append(eastMetres * DEGREES_PER_METRE).append("\">");
    tags(xml, tags);
    xml.append("</node>\n");
    return id;
  }

  /** A house on one point. */
  long house(int eastMetres, int northMetres, String number, String street, String... more) {
    String[] tags = new String[more.length + 4];
    System.arraycopy(
        new String[] {"addr:housenumber", number, "addr:street", street}, 0, tags, 0, 4);
    System.arraycopy(more, 0, tags, 4, more.length);
    return node(eastMetres, northMetres, tags);
  }

  /** A way through points made before. */
  long way(long[] nodes, String... tags) {
    long id = nextId++;
    ways.append("<way id=\"").append(id).append("\">");
    for (long node : nodes) {
      ways.append("<nd ref=\"").append(node).append("\"/>");
    }
    tags(ways, tags);
    ways.append("</way>\n");
    return id;
  }

  /** A straight street from west to east. */
  long street(String name, int fromEast, int toEast, int north) {
    long[] nodes = {
      node(fromEast, north), node((fromEast + toEast) / 2, north), node(toEast, north)
    };
    return way(nodes, "highway", "residential", "name", name);
  }

  /** A closed box. */
  long box(int west, int south, int east, int north, String... tags) {
    long first = node(west, south);
    long[] nodes = {first, node(east, south), node(east, north), node(west, north), first};
    return way(nodes, tags);
  }

  /** A relation; members as {@code w12:outer}. */
  long relation(String[] members, String... tags) {
    long id = nextId++;
    relations.append("<relation id=\"").append(id).append("\">");
    for (String member : members) {
      String[] parts = member.substring(1).split(":", 2);
      String type =
          switch (member.charAt(0)) {
            case 'n' -> "node";
            case 'w' -> "way";
            default -> "relation";
          };
      relations.append("<member type=\"").append(type).append("\" ref=\"").append(parts[0]);
      relations.append("\" role=\"").append(parts[1]).append("\"/>");
    }
    tags(relations, tags);
    relations.append("</relation>\n");
    return id;
  }

  private static void tags(StringBuilder out, String... tags) {
    for (int i = 0; i < tags.length; i += 2) {
      out.append("<tag k=\"").append(tags[i]).append("\" v=\"");
      out.append(tags[i + 1].replace("&", "&amp;").replace("\"", "&quot;")).append("\"/>");
    }
  }

  String xml() {
    return xml.toString() + ways + relations + "</osm>\n";
  }

  /** Writes the map into a folder and opens its index there. */
  AddressIndex open(Path folder) throws IOException {
    Path file = folder.resolve("small.osm");
    Files.writeString(file, xml(), StandardCharsets.UTF_8);
    return AddressIndex.open(file, folder.resolve("cache"), IndexProgress.SILENT);
  }
}
