package dev.dogleg.address;

import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.linearref.LengthIndexedLine;

/**
 * A line from the foot of one house to the foot of another, to measure houses by: metres onward and
 * metres to the left. Beyond its ends it goes on straight.
 */
final class Ruler {
  private static final GeometryFactory SHAPES = new GeometryFactory();

  private final LengthIndexedLine line;
  private final double lengthMetres;
  private final Offset first;
  private final Offset last;

  /** Where a house stands as seen from its foot. */
  private record Offset(double onward, double left) {
    double metres() {
      return Math.hypot(onward, left);
    }
  }

  /**
   * Lays the ruler.
   *
   * @param path at least two points that differ, on a plane in metres
   * @param from house at its beginning
   * @param to house at its end
   */
  Ruler(List<Coordinate> path, Coordinate from, Coordinate to) {
    int end = path.size() - 1;
    this.line = new LengthIndexedLine(SHAPES.createLineString(path.toArray(Coordinate[]::new)));
    this.lengthMetres = line.getEndIndex();
    this.first = offset(path.get(0), path.get(1), path.get(0), from);
    this.last = offset(path.get(end - 1), path.get(end), path.get(end), to);
  }

  double lengthMetres() {
    return lengthMetres;
  }

  /** How far the farther of the two houses stands from its foot. */
  double reachMetres() {
    return Math.max(first.metres(), last.metres());
  }

  /** The place a share of the way from the first house to the last, 0 to 1. */
  Coordinate at(double share) {
    double onward = first.onward + (lengthMetres + last.onward - first.onward) * share;
    double left = first.left + (last.left - first.left) * share;
    double inside = Math.max(0, Math.min(lengthMetres, onward));
    Coordinate foot = line.extractPoint(inside);
    Coordinate before = line.extractPoint(Math.max(0, inside - 1));
    Coordinate after = line.extractPoint(Math.min(lengthMetres, inside + 1));
    double step = before.distance(after);
    double dx = (after.x - before.x) / step;
    double dy = (after.y - before.y) / step;
    double beyond = onward - inside;
    return new Coordinate(foot.x + dx * beyond - dy * left, foot.y + dy * beyond + dx * left);
  }

  private static Offset offset(
      Coordinate before, Coordinate after, Coordinate foot, Coordinate house) {
    double step = before.distance(after);
    double dx = (after.x - before.x) / step;
    double dy = (after.y - before.y) / step;
    double x = house.x - foot.x;
    double y = house.y - foot.y;
    return new Offset(x * dx + y * dy, y * dx - x * dy);
  }
}
