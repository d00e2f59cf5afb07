package dev.dogleg.sampletown.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/** Parallel streets across an area. */
public final class Grid {
  private static final GeometryFactory GEOMETRY = new GeometryFactory();
  private static final double FAR_METRES = 8000;
  private static final double SHORTEST_METRES = 60;

  private Grid() {}

  /**
   * Draws parallel lines through an area, cut at its edge.
   *
   * @param net where to draw
   * @param area the area
   * @param origin a point on line number zero
   * @param degrees direction of the lines, 0 is east, 90 is north
   * @param spacingMetres distance between lines; line one lies to the left of line zero
   * @param kind makes the stroke of a line, from its number, on points that do not matter; null
   *     leaves the line out
   */
  public static void lines(
      StreetNet net,
      Polygon area,
      Coordinate origin,
      double degrees,
      double spacingMetres,
      IntFunction<Stroke> kind) {
    for (int number = -40; number <= 40; number++) {
      Stroke pattern = kind.apply(number);
      if (pattern == null) {
        continue;
      }
      Coordinate middle = Plane.step(origin, degrees + 90, number * spacingMetres);
      Coordinate from = Plane.step(middle, degrees + 180, FAR_METRES);
      Coordinate to = Plane.step(middle, degrees, FAR_METRES);
      Geometry inside = area.intersection(GEOMETRY.createLineString(new Coordinate[] {from, to}));
      List<Coordinate[]> pieces = new ArrayList<>();
      for (int i = 0; i < inside.getNumGeometries(); i++) {
        Coordinate[] ends = inside.getGeometryN(i).getCoordinates();
        if (ends.length >= 2 && ends[0].distance(ends[ends.length - 1]) >= SHORTEST_METRES) {
          Coordinate a = ends[0];
          Coordinate b = ends[ends.length - 1];
          boolean forward = a.distance(from) < b.distance(from);
          pieces.add(new Coordinate[] {forward ? a : b, forward ? b : a});
        }
      }
      pieces.sort((p, q) -> Double.compare(p[0].distance(from), q[0].distance(from)));
      for (Coordinate[] piece : pieces) {
        net.add(
            pattern.with(
                List.of(Plane.at(piece[0].x, piece[0].y), Plane.at(piece[1].x, piece[1].y))));
      }
    }
  }

  /**
   * Makes an area from corners.
   *
   * @param corners the corners; the area closes itself
   * @return the area
   */
  public static Polygon area(List<Coordinate> corners) {
    List<Coordinate> ring = new ArrayList<>(corners);
    if (!ring.get(0).equals2D(ring.get(ring.size() - 1))) {
      ring.add(ring.get(0));
    }
    return GEOMETRY.createPolygon(ring.toArray(new Coordinate[0]));
  }
}
