package dev.dogleg.sampletown.draw;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;

/** Arithmetic on the sheet of paper: metres, x to the east, y to the north. */
public final class Plane {
  private Plane() {}

  /**
   * Makes a point, rounded to a centimetre so that equal points are equal.
   *
   * @param x metres to the east
   * @param y metres to the north
   * @return the point
   */
  public static Coordinate at(double x, double y) {
    return new Coordinate(Math.rint(x * 100) / 100, Math.rint(y * 100) / 100);
  }

  /**
   * Goes from a point into a direction.
   *
   * @param from the start
   * @param degrees direction, 0 is east, 90 is north
   * @param metres how far
   * @return the point reached
   */
  public static Coordinate step(Coordinate from, double degrees, double metres) {
    double radians = StrictMath.toRadians(degrees);
    return at(from.x + metres * StrictMath.cos(radians), from.y + metres * StrictMath.sin(radians));
  }

  /**
   * Measures a direction.
   *
   * @param from the start
   * @param to the end
   * @return degrees, 0 is east, 90 is north
   */
  public static double degrees(Coordinate from, Coordinate to) {
    return StrictMath.toDegrees(StrictMath.atan2(to.y - from.y, to.x - from.x));
  }

  /**
   * Makes a list of points.
   *
   * @param xy x, y, x, y, ... in metres
   * @return the points
   */
  public static List<Coordinate> points(double... xy) {
    List<Coordinate> points = new ArrayList<>();
    for (int i = 0; i < xy.length; i += 2) {
      points.add(at(xy[i], xy[i + 1]));
    }
    return points;
  }

  /**
   * Lays a smooth curve through points (Catmull-Rom spline).
   *
   * @param through at least two points; if the last equals the first the curve is closed
   * @param spacingMetres about how far apart the points of the curve are
   * @return the points of the curve
   */
  public static List<Coordinate> curve(List<Coordinate> through, double spacingMetres) {
    int n = through.size();
    boolean closed = through.get(0).equals2D(through.get(n - 1));
    List<Coordinate> curve = new ArrayList<>();
    curve.add(through.get(0));
    for (int i = 0; i + 1 < n; i++) {
      Coordinate a = through.get(i > 0 ? i - 1 : closed ? n - 2 : 0);
      Coordinate b = through.get(i);
      Coordinate c = through.get(i + 1);
      Coordinate d = through.get(i + 2 < n ? i + 2 : closed ? 1 : n - 1);
      int steps = Math.max(1, (int) Math.rint(b.distance(c) / spacingMetres));
      for (int s = 1; s < steps; s++) {
        double t = (double) s / steps;
        curve.add(at(spline(a.x, b.x, c.x, d.x, t), spline(a.y, b.y, c.y, d.y, t)));
      }
      curve.add(c);
    }
    return curve;
  }

  private static double spline(double a, double b, double c, double d, double t) {
    return 0.5
        * (2 * b
            + (c - a) * t
            + (2 * a - 5 * b + 4 * c - d) * t * t
            + (3 * b - a - 3 * c + d) * t * t * t);
  }

  /**
   * Draws an ellipse anticlockwise, closed.
   *
   * @param centre its centre
   * @param radiusX half its width in metres
   * @param radiusY half its height in metres
   * @param corners how many points
   * @return the points, the last equal to the first
   */
  public static List<Coordinate> ellipse(
      Coordinate centre, double radiusX, double radiusY, int corners) {
    List<Coordinate> points = new ArrayList<>();
    for (int i = 0; i < corners; i++) {
      double angle = 2 * Math.PI * i / corners;
      points.add(
          at(
              centre.x + radiusX * StrictMath.cos(angle),
              centre.y + radiusY * StrictMath.sin(angle)));
    }
    points.add(points.get(0));
    return points;
  }

  /**
   * Draws a line beside a line.
   *
   * @param points the line
   * @param metres how far, to the left if positive
   * @return the line beside
   */
  public static List<Coordinate> beside(List<Coordinate> points, double metres) {
    List<Coordinate> moved = new ArrayList<>();
    for (int i = 0; i < points.size(); i++) {
      Coordinate before = points.get(Math.max(0, i - 1));
      Coordinate after = points.get(Math.min(points.size() - 1, i + 1));
      double length = before.distance(after);
      moved.add(
          at(
              points.get(i).x - metres * (after.y - before.y) / length,
              points.get(i).y + metres * (after.x - before.x) / length));
    }
    return moved;
  }
}
