package dev.dogleg.sampletown;

import dev.dogleg.sampletown.osm.OsmMap;
import dev.dogleg.sampletown.osm.OsmNode;
import dev.dogleg.sampletown.osm.OsmWay;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import javax.imageio.ImageIO;

/** Draws a map as a picture, for people to judge; not for planning anything. */
final class MapPicture {
  private static final Color SEA = new Color(0xb8d8e8);
  private static final Color LAND = new Color(0xf2efe4);
  private static final Color WOOD = new Color(0xcfdfbf);
  private static final Color HOUSE = new Color(0xc9b8a0);

  private final Map<Long, OsmNode> nodes = new HashMap<>();
  private final View view;
  private final Graphics2D ink;

  /**
   * What part of the earth is shown.
   *
   * @param west longitude in 10⁻⁷ degrees
   * @param north latitude in 10⁻⁷ degrees
   * @param scaleX pixels per unit of longitude
   * @param scaleY pixels per unit of latitude
   */
  record View(double west, double north, double scaleX, double scaleY) {}

  private MapPicture(OsmMap map, BufferedImage image, View view) {
    map.nodes().forEach(node -> nodes.put(node.id(), node));
    this.view = view;
    this.ink = image.createGraphics();
    ink.setColor(SEA);
    ink.fillRect(0, 0, image.getWidth(), image.getHeight());
    ink.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    ink.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
  }

  static void write(OsmMap map, Path file) throws IOException {
    write(map, file, 1500, -48.88, -123.39, 25_600);
  }

  static void write(OsmMap map, Path file, int width, double lat, double lon, double widthMetres)
      throws IOException {
    int height = (int) (width * 0.82);
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    double pixelsPerMetre = width / widthMetres;
    double scaleY = pixelsPerMetre * 111_195 / 1e7;
    double scaleX = scaleY * Math.cos(Math.toRadians(lat));
    View view =
        new View(lon * 1e7 - width / scaleX / 2, lat * 1e7 + height / scaleY / 2, scaleX, scaleY);
    new MapPicture(map, image, view).draw(map, (float) Math.max(1, pixelsPerMetre * 9));
    ImageIO.write(FewColours.of(image), "png", file.toFile());
  }

  private void draw(OsmMap map, float thin) {
    Path2D land = new Path2D.Double();
    map.ways().stream()
        .filter(way -> "coastline".equals(way.tags().get("natural")))
        .forEach(way -> land.append(path(way), false));
    ink.setColor(LAND);
    ink.fill(land);
    ink.setColor(WOOD);
    map.ways().stream()
        .filter(way -> "wood".equals(way.tags().get("natural")))
        .forEach(way -> ink.fill(path(way)));
    ink.setColor(SEA);
    map.ways().stream()
        .filter(way -> "water".equals(way.tags().get("natural")))
        .forEach(way -> ink.fill(path(way)));
    ink.setColor(HOUSE);
    for (OsmNode node : map.nodes()) {
      if (node.tags().containsKey("addr:housenumber")) {
        int size = Math.max(1, (int) thin);
        ink.fillRect((int) x(node), (int) y(node), size, size);
      }
    }
    ink.setColor(new Color(0x9c8a70));
    map.ways().stream()
        .filter(way -> way.tags().containsKey("building"))
        .forEach(way -> ink.fill(path(way)));
    for (RoadLook look : RoadLook.values()) {
      ink.setColor(look.colour());
      ink.setStroke(
          new BasicStroke(look.width() * thin, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
      map.ways().stream().filter(look::fits).forEach(way -> ink.draw(path(way)));
    }
  }

  private double x(OsmNode node) {
    return (node.lonE7() - view.west) * view.scaleX;
  }

  private double y(OsmNode node) {
    return (view.north - node.latE7()) * view.scaleY;
  }

  private Path2D path(OsmWay way) {
    Path2D path = new Path2D.Double();
    boolean first = true;
    for (long id : way.nodeIds()) {
      OsmNode node = nodes.get(id);
      if (first) {
        path.moveTo(x(node), y(node));
      } else {
        path.lineTo(x(node), y(node));
      }
      first = false;
    }
    return path;
  }
}
