package dev.dogleg.sampletown.draw;

import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.index.strtree.STRtree;

/** Measures how far a house would stand from lines other than its own street. */
final class Clearance {
  private static final double FARTHEST_METRES = 60;

  private record Segment(int stroke, LineSegment line, double needMetres) {}

  private final STRtree tree = new STRtree();

  Clearance(List<Stroke> strokes) {
    for (int s = 0; s < strokes.size(); s++) {
      List<Coordinate> points = strokes.get(s).points();
      for (int i = 1; i < points.size(); i++) {
        LineSegment line = new LineSegment(points.get(i - 1), points.get(i));
        tree.insert(new Envelope(line.p0, line.p1), new Segment(s, line, need(strokes.get(s))));
      }
    }
  }

  private static double need(Stroke stroke) {
    return switch (stroke.level()) {
      case 1 -> 40;
      case 2 -> 22;
      case 3 -> 45;
      default -> "trunk".equals(stroke.tags().get("highway")) ? 30 : 9;
    };
  }

  boolean isFree(Coordinate door, int ownStroke) {
    Envelope box = new Envelope(door);
    box.expandBy(FARTHEST_METRES);
    for (Object item : tree.query(box)) {
      Segment segment = (Segment) item;
      if (segment.stroke != ownStroke && segment.line.distance(door) < segment.needMetres) {
        return false;
      }
    }
    return true;
  }
}
