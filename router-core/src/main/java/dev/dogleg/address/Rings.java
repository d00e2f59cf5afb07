package dev.dogleg.address;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.locationtech.jts.algorithm.locate.SimplePointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.impl.PackedCoordinateSequenceFactory;
import org.locationtech.jts.operation.polygonize.Polygonizer;
import org.locationtech.jts.simplify.DouglasPeuckerSimplifier;

/** Shapes from the ways of the map. */
final class Rings {
  /** About five metres: boundaries are not drawn more exactly, and a country has many. */
  private static final double TOLERANCE_DEGREES = 0.00005;

  private static final GeometryFactory SHAPES =
      new GeometryFactory(PackedCoordinateSequenceFactory.DOUBLE_FACTORY);

  private Rings() {}

  /** The area within outer and without inner ways; null where they do not close. */
  static Geometry area(List<long[]> outer, List<long[]> inner) {
    Geometry area = polygons(outer);
    if (area == null) {
      return null;
    }
    Geometry holes = inner.isEmpty() ? null : polygons(inner);
    Geometry simple = DouglasPeuckerSimplifier.simplify(area, TOLERANCE_DEGREES);
    return holes == null ? simple : simple.difference(holes);
  }

  private static Geometry polygons(List<long[]> ways) {
    Polygonizer polygonizer = new Polygonizer();
    for (long[] way : ways) {
      LineString line = line(way);
      if (line != null) {
        polygonizer.add(line);
      }
    }
    Collection<?> found = polygonizer.getPolygons();
    Geometry union = null;
    for (Object polygon : found) {
      Geometry valid = ((Geometry) polygon).buffer(0);
      union = union == null ? valid : union.union(valid);
    }
    return union;
  }

  /** A line through packed places, null where fewer than two are known. */
  static LineString line(long[] places) {
    List<Coordinate> points = new ArrayList<>(places.length);
    for (long place : places) {
      if (place != 0) {
        points.add(new Coordinate(NodePlaces.lon(place), NodePlaces.lat(place)));
      }
    }
    return points.size() < 2 ? null : SHAPES.createLineString(points.toArray(new Coordinate[0]));
  }

  /**
   * A point that stands for an outline: its centroid, or a point inside where that lies outside.
   */
  static long middle(long[] places) {
    if (places.length == 1) {
      return places[0];
    }
    LineString line = line(places);
    if (line == null) {
      for (long place : places) {
        if (place != 0) {
          return place;
        }
      }
      return 0;
    }
    Geometry shape =
        line.isClosed() && line.getNumPoints() >= 4
            ? SHAPES.createPolygon(line.getCoordinateSequence())
            : line.convexHull();
    Point centre = shape.getCentroid();
    boolean inside =
        !centre.isEmpty()
            && (shape.getDimension() < 2
                || SimplePointInAreaLocator.locate(centre.getCoordinate(), shape)
                    != Location.EXTERIOR);
    if (!inside) {
      centre = shape.getInteriorPoint();
    }
    return NodePlaces.pack(centre.getY(), centre.getX());
  }

  /** Half the diagonal of the outline's box, in metres. */
  static int radiusMetres(long[] places) {
    LineString line = line(places);
    if (line == null) {
      return 0;
    }
    var box = line.getEnvelopeInternal();
    return (int)
        Math.round(Areas.metres(box.getMinY(), box.getMinX(), box.getMaxY(), box.getMaxX()) / 2);
  }
}
