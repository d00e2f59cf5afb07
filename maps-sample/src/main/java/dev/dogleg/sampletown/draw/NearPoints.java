package dev.dogleg.sampletown.draw;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Coordinate;

/** Answers whether any of many points is near; used to keep streets and houses apart. */
public final class NearPoints {
  private static final double CELL_METRES = 60;

  private final Map<Long, List<Coordinate>> cells = new HashMap<>();

  /**
   * Adds a point.
   *
   * @param point in metres
   */
  public void add(Coordinate point) {
    cells.computeIfAbsent(cell(point, 0, 0), key -> new ArrayList<>()).add(point);
  }

  /**
   * Adds points all along a stroke.
   *
   * @param stroke the stroke
   */
  public void addAlong(Stroke stroke) {
    for (int i = 1; i < stroke.points().size(); i++) {
      Coordinate a = stroke.points().get(i - 1);
      Coordinate b = stroke.points().get(i);
      int steps = (int) Math.ceil(a.distance(b) / 8);
      for (int s = 0; s <= steps; s++) {
        double t = (double) s / Math.max(1, steps);
        add(Plane.at(a.x + (b.x - a.x) * t, a.y + (b.y - a.y) * t));
      }
    }
  }

  /**
   * Looks around a point.
   *
   * @param point the middle
   * @param metres how far, at most 60
   * @return whether any point added lies within
   */
  public boolean anyWithin(Coordinate point, double metres) {
    for (int dx = -1; dx <= 1; dx++) {
      for (int dy = -1; dy <= 1; dy++) {
        for (Coordinate other : cells.getOrDefault(cell(point, dx, dy), List.of())) {
          if (other.distance(point) < metres) {
            return true;
          }
        }
      }
    }
    return false;
  }

  private static long cell(Coordinate point, int dx, int dy) {
    long x = (long) Math.floor(point.x / CELL_METRES) + dx;
    long y = (long) Math.floor(point.y / CELL_METRES) + dy;
    return x * 1_000_003 + y;
  }
}
