package dev.dogleg.cli.export;

import dev.dogleg.model.GeoPoint;
import java.time.DayOfWeek;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.text.StringEscapeUtils;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/**
 * A picture of zones, doors and drives as SVG: no client is named.
 *
 * @param zones what is drawn of each zone
 * @param doors doors of clients
 * @param homes where days start and end
 * @param drives lines along the roads
 */
public record ZonesMap(
    List<ZoneShape> zones, List<Door> doors, List<GeoPoint> homes, List<Drive> drives) {
  private static final int WIDTH = 900;
  private static final int LEAST_HEIGHT = 320;
  private static final int MOST_HEIGHT = 900;
  private static final double MARGIN = 0.06;
  private static final double METRES_PER_DEGREE = 111_195;
  private static final GeometryFactory SHAPES = new GeometryFactory();

  /** Fills of zones, in turn; pale, so that doors and drives stand out. */
  private static final List<String> FILLS =
      List.of("#8da0cb", "#a6d854", "#ffd92f", "#e78ac3", "#66c2a5", "#fc8d62");

  /**
   * A colour each weekday that people with any colour vision can tell apart (Okabe and Ito 2008,
   * Color Universal Design; from memory). The letters at the doors say the same.
   */
  private static final List<String> COLOURS =
      List.of("#0072B2", "#D55E00", "#009E73", "#CC79A7", "#B8860B", "#56B4E9", "#000000");

  /** Copies the lists. */
  public ZonesMap {
    zones = List.copyOf(zones);
    doors = List.copyOf(doors);
    homes = List.copyOf(homes);
    drives = List.copyOf(drives);
  }

  /**
   * A zone.
   *
   * @param name its name
   * @param area its polygons; empty where it is said by postcodes or minutes alone
   * @param doors doors in it: they outline a zone without an area
   */
  public record ZoneShape(String name, Optional<Geometry> area, List<GeoPoint> doors) {
    /** Copies the doors. */
    public ZoneShape {
      doors = List.copyOf(doors);
    }
  }

  /**
   * A door.
   *
   * @param point where
   * @param day weekday of its visit; empty where it has none in the plan
   * @param wrongDay whether that is none of its zones' days
   */
  public record Door(GeoPoint point, Optional<DayOfWeek> day, boolean wrongDay) {}

  /**
   * A drive.
   *
   * @param day weekday
   * @param points line along the roads
   */
  public record Drive(DayOfWeek day, List<GeoPoint> points) {
    /** Copies the line. */
    public Drive {
      points = List.copyOf(points);
    }
  }

  /** {@return colour of a weekday, as SVG and HTML write it} */
  static String colour(DayOfWeek day) {
    return COLOURS.get(day.getValue() - 1);
  }

  /** {@return two letters for a weekday} */
  static String letters(DayOfWeek day) {
    String name = day.name();
    return name.charAt(0) + name.substring(1, 2).toLowerCase(Locale.ROOT);
  }

  /**
   * The picture.
   *
   * @param attribution whose map it is
   * @return an svg element
   */
  String svg(String attribution) {
    return new Drawing(box()).svg(attribution);
  }

  private Envelope box() {
    Envelope box = new Envelope();
    doors.forEach(door -> box.expandToInclude(at(door.point())));
    homes.forEach(home -> box.expandToInclude(at(home)));
    drives.forEach(drive -> drive.points().forEach(point -> box.expandToInclude(at(point))));
    zones.forEach(
        zone -> zone.area().ifPresent(area -> box.expandToInclude(area.getEnvelopeInternal())));
    return box;
  }

  private static Coordinate at(GeoPoint point) {
    return new Coordinate(point.lon(), point.lat());
  }

  /** The picture being drawn: degrees of longitude as long as they are in its middle. */
  private final class Drawing {
    private final Envelope box;
    private final double metresPerPixel;
    private final double squeeze;
    private final int height;
    private final StringBuilder svg = new StringBuilder();

    Drawing(Envelope box) {
      this.box = box;
      squeeze = Math.cos(Math.toRadians(box.centre() == null ? 0 : box.centre().y));
      double wide = Math.max(100, box.getWidth() * METRES_PER_DEGREE * squeeze);
      double high = Math.max(100, box.getHeight() * METRES_PER_DEGREE);
      double room = 1 - 2 * MARGIN;
      metresPerPixel = Math.max(wide / (WIDTH * room), high / (MOST_HEIGHT * room));
      height = (int) Math.max(LEAST_HEIGHT, Math.ceil(high / metresPerPixel / room));
    }

    private double x(double lon) {
      return WIDTH / 2.0 + (lon - box.centre().x) * METRES_PER_DEGREE * squeeze / metresPerPixel;
    }

    private double y(double lat) {
      return height / 2.0 - (lat - box.centre().y) * METRES_PER_DEGREE / metresPerPixel;
    }

    private void add(String format, Object... values) {
      svg.append(String.format(Locale.ROOT, format, values)).append('\n');
    }

    String svg(String attribution) {
      add(
          "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %d %d\" width=\"100%%\""
              + " role=\"img\" aria-label=\"Map of zones, doors and drives\""
              + " font-family=\"sans-serif\">",
          WIDTH, height);
      add("<rect width=\"%d\" height=\"%d\" fill=\"#f7f5f0\"/>", WIDTH, height);
      for (int zone = 0; zone < zones.size(); zone++) {
        shape(zones.get(zone), FILLS.get(zone % FILLS.size()));
      }
      for (Drive drive : drives) {
        add(
            "<path d=\"%s\" fill=\"none\" stroke=\"%s\" stroke-width=\"2.5\" stroke-opacity=\"0.6\""
                + " stroke-linejoin=\"round\"/>",
            path(drive.points().stream().map(ZonesMap::at).toArray(Coordinate[]::new)),
            colour(drive.day()));
      }
      doors.stream().filter(door -> door.day().isEmpty()).forEach(this::unplanned);
      doors.stream().filter(door -> door.day().isPresent()).forEach(this::door);
      for (GeoPoint home : homes) {
        add(
            "<rect x=\"%.1f\" y=\"%.1f\" width=\"14\" height=\"14\" fill=\"#222\""
                + " stroke=\"#fff\"/>",
            x(home.lon()) - 7, y(home.lat()) - 7);
      }
      for (ZoneShape zone : zones) {
        label(zone);
      }
      scale();
      add(
          "<text x=\"%d\" y=\"%d\" font-size=\"11\" text-anchor=\"end\" fill=\"#333\">%s</text>",
          WIDTH - 8, height - 8, escaped(attribution));
      return svg.append("</svg>\n").toString();
    }

    private void shape(ZoneShape zone, String fill) {
      Geometry outline = outline(zone);
      if (outline.isEmpty()) {
        return;
      }
      StringBuilder path = new StringBuilder();
      for (int part = 0; part < outline.getNumGeometries(); part++) {
        if (outline.getGeometryN(part) instanceof Polygon polygon) {
          path.append(path(polygon.getExteriorRing().getCoordinates())).append('Z');
          for (int hole = 0; hole < polygon.getNumInteriorRing(); hole++) {
            path.append(path(polygon.getInteriorRingN(hole).getCoordinates())).append('Z');
          }
        }
      }
      add(
          "<path d=\"%s\" fill=\"%s\" fill-opacity=\"0.28\" fill-rule=\"evenodd\" stroke=\"#555\""
              + " stroke-width=\"1.2\"%s/>",
          path, fill, zone.area().isPresent() ? "" : " stroke-dasharray=\"6 5\"");
    }

    /** Its area, or what lies around its doors. */
    private Geometry outline(ZoneShape zone) {
      double reach = 16 * metresPerPixel / METRES_PER_DEGREE;
      return zone.area()
          .orElseGet(
              () ->
                  SHAPES
                      .createMultiPointFromCoords(
                          zone.doors().stream().map(ZonesMap::at).toArray(Coordinate[]::new))
                      .convexHull()
                      .buffer(reach));
    }

    private String path(Coordinate[] points) {
      StringBuilder path = new StringBuilder();
      for (int i = 0; i < points.length; i++) {
        path.append(
            String.format(
                Locale.ROOT, "%s%.1f %.1f", i == 0 ? "M" : "L", x(points[i].x), y(points[i].y)));
      }
      return path.toString();
    }

    private void unplanned(Door door) {
      add(
          "<circle cx=\"%.1f\" cy=\"%.1f\" r=\"4\" fill=\"#fff\" stroke=\"#777\"/>",
          x(door.point().lon()), y(door.point().lat()));
    }

    private void door(Door door) {
      double x = x(door.point().lon());
      double y = y(door.point().lat());
      DayOfWeek day = door.day().orElseThrow();
      if (door.wrongDay()) {
        add(
            "<circle cx=\"%.1f\" cy=\"%.1f\" r=\"14\" fill=\"none\" stroke=\"#c00\""
                + " stroke-width=\"3\"/>",
            x, y);
      }
      add(
          "<circle cx=\"%.1f\" cy=\"%.1f\" r=\"9\" fill=\"%s\" stroke=\"#fff\"/>"
              + "<text x=\"%.1f\" y=\"%.1f\" font-size=\"9\" text-anchor=\"middle\""
              + " fill=\"#fff\">%s</text>",
          x, y, colour(day), x, y + 3, letters(day));
    }

    private void label(ZoneShape zone) {
      Geometry outline = outline(zone);
      if (!outline.isEmpty()) {
        Envelope around = outline.getEnvelopeInternal();
        add(
            "<text x=\"%.1f\" y=\"%.1f\" font-size=\"14\" font-weight=\"bold\""
                + " text-anchor=\"middle\" fill=\"#222\" stroke=\"#f7f5f0\" stroke-width=\"3\""
                + " paint-order=\"stroke\">%s</text>",
            x(around.centre().x), Math.max(16, y(around.getMaxY()) + 16), escaped(zone.name()));
      }
    }

    /** A bar of the longest round length of at most a quarter of the width. */
    private void scale() {
      double most = WIDTH / 4.0 * metresPerPixel;
      double ten = Math.pow(10, Math.floor(Math.log10(most)));
      double metres = most >= 5 * ten ? 5 * ten : most >= 2 * ten ? 2 * ten : ten;
      double pixels = metres / metresPerPixel;
      add(
          "<path d=\"M12 %dh%.1f\" stroke=\"#222\" stroke-width=\"3\"/><text x=\"12\" y=\"%d\""
              + " font-size=\"11\" fill=\"#222\">%s</text>",
          height - 12,
          pixels,
          height - 18,
          metres >= 1_000 ? Math.round(metres / 1_000) + " km" : Math.round(metres) + " m");
    }
  }

  static String escaped(String text) {
    return StringEscapeUtils.escapeHtml4(text).replace("'", "&#39;");
  }
}
