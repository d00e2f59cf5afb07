package dev.dogleg.roads;

import com.graphhopper.util.PointList;
import dev.dogleg.model.GeoPoint;
import java.util.ArrayList;
import java.util.List;

/** The line of one stretch of road, measured along itself in shares of its whole length. */
final class EdgeLine {
  private static final double METRES_PER_DEGREE = 111_195.08;

  private final PointList line;
  private final double[] along;

  EdgeLine(PointList line) {
    this.line = line;
    this.along = new double[line.size()];
    for (int i = 1; i < along.length; i++) {
      along[i] = along[i - 1] + point(i - 1).metresTo(point(i));
    }
  }

  private GeoPoint point(int i) {
    return new GeoPoint(line.getLat(i), line.getLon(i));
  }

  private double total() {
    return along[along.length - 1];
  }

  /**
   * The point of a line that is nearest to a place.
   *
   * @param metres distance
   * @param share how far along the line it lies, 0..1
   * @param point the point
   */
  record Nearest(double metres, double share, GeoPoint point) {}

  /**
   * Finds the nearest point; lines are short, so a flat picture around the place is exact enough.
   */
  Nearest nearest(GeoPoint place) {
    double squeeze = Math.cos(Math.toRadians(place.lat()));
    double best = Double.MAX_VALUE;
    double bestAlong = 0;
    for (int i = 0; i + 1 < Math.max(2, line.size()); i++) {
      int j = Math.min(i + 1, line.size() - 1);
      double ax = (line.getLon(i) - place.lon()) * squeeze;
      double ay = line.getLat(i) - place.lat();
      double dx = (line.getLon(j) - line.getLon(i)) * squeeze;
      double dy = line.getLat(j) - line.getLat(i);
      double square = dx * dx + dy * dy;
      double t = square == 0 ? 0 : Math.max(0, Math.min(1, -(ax * dx + ay * dy) / square));
      double distance = Math.hypot(ax + t * dx, ay + t * dy);
      if (distance < best) {
        best = distance;
        bestAlong = along[i] + t * (along[j] - along[i]);
      }
    }
    double share = total() == 0 ? 0 : bestAlong / total();
    return new Nearest(best * METRES_PER_DEGREE, share, at(share));
  }

  /** The point at a share of the way along. */
  GeoPoint at(double share) {
    double wanted = share * total();
    for (int i = 1; i < along.length; i++) {
      if (along[i] >= wanted && along[i] > along[i - 1]) {
        double t = Math.max(0, (wanted - along[i - 1]) / (along[i] - along[i - 1]));
        return new GeoPoint(
            line.getLat(i - 1) + t * (line.getLat(i) - line.getLat(i - 1)),
            line.getLon(i - 1) + t * (line.getLon(i) - line.getLon(i - 1)));
      }
    }
    return point(along.length - 1);
  }

  /** The part between two shares, in driving order: backwards where the first is the larger. */
  List<GeoPoint> part(double from, double to) {
    List<GeoPoint> points = new ArrayList<>();
    points.add(at(from));
    double low = Math.min(from, to) * total();
    double high = Math.max(from, to) * total();
    for (int i = 0; i < along.length; i++) {
      int k = from <= to ? i : along.length - 1 - i;
      if (along[k] > low && along[k] < high) {
        points.add(point(k));
      }
    }
    points.add(at(to));
    return points;
  }
}
