package dev.dogleg.address;

import java.util.List;
import org.locationtech.jts.geom.Coordinate;

/** Places between two known places, following the street where it is known. */
final class Along {
  private static final double METRES_PER_DEGREE = 111_195;

  /** A house farther off does not follow the street's line. */
  private static final double FARTHEST_FROM_STREET_METRES = 60;

  private static final double LONGEST_DETOUR = 2;
  private static final double SHORT_WAY_METRES = 30;

  private Along() {}

  /**
   * The place a share of the way from one house to another: along the street, as far off it as they
   * are; straight between them where the street does not lead from one to the other.
   */
  static long between(long low, long high, double share, List<Hit> ways) {
    double cosine = Math.cos(Math.toRadians(NodePlaces.lat(low)));
    Coordinate from = plane(low, cosine);
    Coordinate to = plane(high, cosine);
    StreetGraph street = new StreetGraph();
    for (Hit way : ways) {
      long[] places = way.shape().places();
      Coordinate[] points = new Coordinate[places.length];
      for (int i = 0; i < places.length; i++) {
        points[i] = plane(places[i], cosine);
      }
      street.add(points);
    }
    double longest = LONGEST_DETOUR * from.distance(to) + SHORT_WAY_METRES;
    Coordinate at =
        street
            .between(from, to)
            .map(path -> new Ruler(path, from, to))
            .filter(ruler -> ruler.reachMetres() <= FARTHEST_FROM_STREET_METRES)
            .filter(ruler -> ruler.lengthMetres() <= longest)
            .map(ruler -> ruler.at(share))
            .orElse(new Coordinate(mix(from.x, to.x, share), mix(from.y, to.y, share)));
    return NodePlaces.pack(at.y / METRES_PER_DEGREE, at.x / (METRES_PER_DEGREE * cosine));
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
}
