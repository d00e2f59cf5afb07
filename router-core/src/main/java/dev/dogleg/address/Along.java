package dev.dogleg.address;

import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.linearref.LengthIndexedLine;
import org.locationtech.jts.operation.linemerge.LineMerger;

/** Places between two known places, following the street where it is known. */
final class Along {
  private static final double METRES_PER_DEGREE = 111_195;
  private static final double FARTHEST_FROM_STREET_METRES = 120;

  private static final GeometryFactory SHAPES = new GeometryFactory();

  private Along() {}

  /**
   * The place a share of the way from one house to another: along the street's line that passes
   * both, as far off it as they are; straight between them where no line passes both.
   */
  static long between(long low, long high, double share, List<Hit> ways) {
    double cosine = Math.cos(Math.toRadians(NodePlaces.lat(low)));
    Coordinate from = plane(low, cosine);
    Coordinate to = plane(high, cosine);
    LineMerger merger = new LineMerger();
    for (Hit way : ways) {
      long[] places = way.shape().places();
      Coordinate[] points = new Coordinate[places.length];
      for (int i = 0; i < places.length; i++) {
        points[i] = plane(places[i], cosine);
      }
      if (points.length > 1) {
        merger.add(SHAPES.createLineString(points));
      }
    }
    Coordinate best = null;
    double bestOff = FARTHEST_FROM_STREET_METRES;
    for (Object merged : merger.getMergedLineStrings()) {
      LengthIndexedLine line = new LengthIndexedLine((Geometry) merged);
      double a = line.project(from);
      double b = line.project(to);
      double offA = side(line, a, from);
      double offB = side(line, b, to);
      double off = Math.max(Math.abs(offA), Math.abs(offB));
      double straight = from.distance(to);
      boolean direct = Math.abs(b - a) <= 2 * straight + 30;
      if (off < bestOff && direct) {
        bestOff = off;
        double offset = offA + (offB - offA) * share;
        best = line.extractPoint(a + (b - a) * share, offset);
      }
    }
    if (best == null) {
      best = new Coordinate(from.x + (to.x - from.x) * share, from.y + (to.y - from.y) * share);
    }
    return NodePlaces.pack(best.y / METRES_PER_DEGREE, best.x / (METRES_PER_DEGREE * cosine));
  }

  /** The place a share of the length along packed places. */
  static long on(long[] places, int from, int to, double share) {
    double length = 0;
    for (int i = from; i < to; i++) {
      length += Hit.metresBetween(places[i], places[i + 1]);
    }
    double left = length * share;
    for (int i = from; i < to; i++) {
      double step = Hit.metresBetween(places[i], places[i + 1]);
      if (left <= step && step > 0) {
        double part = left / step;
        return NodePlaces.pack(
            mix(NodePlaces.lat(places[i]), NodePlaces.lat(places[i + 1]), part),
            mix(NodePlaces.lon(places[i]), NodePlaces.lon(places[i + 1]), part));
      }
      left -= step;
    }
    return places[to];
  }

  private static double mix(double a, double b, double share) {
    return a + (b - a) * share;
  }

  private static Coordinate plane(long place, double cosine) {
    return new Coordinate(
        NodePlaces.lon(place) * METRES_PER_DEGREE * cosine,
        NodePlaces.lat(place) * METRES_PER_DEGREE);
  }

  /** Distance from the line, positive on its left. */
  private static double side(LengthIndexedLine line, double at, Coordinate house) {
    Coordinate foot = line.extractPoint(at);
    Coordinate before = line.extractPoint(Math.max(line.getStartIndex(), at - 1));
    Coordinate after = line.extractPoint(Math.min(line.getEndIndex(), at + 1));
    double turn =
        (after.x - before.x) * (house.y - before.y) - (after.y - before.y) * (house.x - before.x);
    return turn >= 0 ? foot.distance(house) : -foot.distance(house);
  }
}
