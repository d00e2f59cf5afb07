package dev.dogleg.sampletown.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.linearref.LengthIndexedLine;

/**
 * One drawn line with its tags; becomes a way.
 *
 * @param points in metres, at least two
 * @param tags of the way
 * @param level strokes meet only others of their level (0 ground, 1 motorway, 2 railway, 3 water)
 * @param houses how its houses are numbered
 */
public record Stroke(
    List<Coordinate> points, Map<String, String> tags, int level, HouseStyle houses) {
  private static final GeometryFactory GEOMETRY = new GeometryFactory();

  /** Copies the points. */
  public Stroke {
    points = List.copyOf(points);
    if (points.size() < 2) {
      throw new IllegalArgumentException("a stroke has two points or more: " + tags);
    }
  }

  /**
   * A street on the ground.
   *
   * @param points in metres
   * @param houses how its houses are numbered
   * @param tags key, value, ...
   * @return the stroke
   */
  public static Stroke street(List<Coordinate> points, HouseStyle houses, String... tags) {
    return new Stroke(points, Tags.of(tags), 0, houses);
  }

  /** {@return its name, or nothing if it has none} */
  public String name() {
    return tags.getOrDefault("name", "");
  }

  /** {@return the first point} */
  public Coordinate start() {
    return points.get(0);
  }

  /** {@return the last point} */
  public Coordinate end() {
    return points.get(points.size() - 1);
  }

  /** {@return whether it is a road} */
  public boolean isRoad() {
    return tags.containsKey("highway");
  }

  /** {@return metres} */
  public double length() {
    return line().getLength();
  }

  /** {@return the same as a JTS line} */
  public LineString line() {
    return GEOMETRY.createLineString(points.toArray(new Coordinate[0]));
  }

  /**
   * Finds a point along the stroke.
   *
   * @param metres from the start
   * @return the point
   */
  public Coordinate at(double metres) {
    return beside(metres, 0);
  }

  /**
   * Finds a point beside the stroke.
   *
   * @param metres from the start
   * @param left metres to the left, negative to the right
   * @return the point
   */
  public Coordinate beside(double metres, double left) {
    Coordinate at = new LengthIndexedLine(line()).extractPoint(metres, left);
    return Plane.at(at.x, at.y);
  }

  /**
   * Measures how far along the stroke the place nearest to a point is.
   *
   * @param point any point
   * @return metres from the start
   */
  public double metresAt(Coordinate point) {
    return new LengthIndexedLine(line()).project(point);
  }

  /**
   * Takes a part.
   *
   * @param from metres from the start
   * @param to metres from the start, more than {@code from}
   * @return a stroke with the same tags
   */
  public Stroke part(double from, double to) {
    List<Coordinate> part = new ArrayList<>();
    for (Coordinate c : new LengthIndexedLine(line()).extractLine(from, to).getCoordinates()) {
      Coordinate rounded = Plane.at(c.x, c.y);
      if (part.isEmpty() || !part.get(part.size() - 1).equals2D(rounded)) {
        part.add(rounded);
      }
    }
    return with(part);
  }

  /**
   * Changes the points.
   *
   * @param changed the new points
   * @return a stroke with the same tags
   */
  public Stroke with(List<Coordinate> changed) {
    return new Stroke(changed, tags, level, houses);
  }

  /**
   * Adds tags.
   *
   * @param keysAndValues key, value, ...
   * @return a stroke with the same points
   */
  public Stroke tagged(String... keysAndValues) {
    return new Stroke(points, Tags.with(tags, keysAndValues), level, houses);
  }

  /**
   * Puts a corner into the stroke where it passes a point.
   *
   * @param point on the stroke or near it
   * @return a stroke through the point
   */
  public Stroke through(Coordinate point) {
    for (Coordinate existing : points) {
      if (existing.equals2D(point)) {
        return this;
      }
    }
    double where = metresAt(point);
    List<Coordinate> all = new ArrayList<>();
    double walked = 0;
    boolean placed = false;
    for (int i = 0; i < points.size(); i++) {
      walked += i > 0 ? points.get(i - 1).distance(points.get(i)) : 0;
      if (!placed && i > 0 && walked >= where) {
        all.add(point);
        placed = true;
      }
      all.add(points.get(i));
    }
    if (!placed) {
      all.add(all.size() - 1, point);
    }
    return with(all);
  }
}
