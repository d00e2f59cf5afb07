package dev.dogleg.sampletown.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;
import org.locationtech.jts.algorithm.RobustLineIntersector;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.index.strtree.STRtree;

/**
 * Makes strokes share a corner wherever they meet: an end near another stroke is pulled onto it,
 * and crossing strokes get a common corner. Only strokes of one level meet.
 */
final class Joiner {
  private static final double REACH_METRES = 14;
  private static final double SAME_METRES = 2.5;

  private record Segment(int stroke, int index, LineSegment line) {}

  private final List<Stroke> strokes;
  private final List<TreeMap<Double, Coordinate>> added = new ArrayList<>();
  private final STRtree tree = new STRtree();

  private Joiner(List<Stroke> strokes) {
    this.strokes = strokes;
    for (int s = 0; s < strokes.size(); s++) {
      added.add(new TreeMap<>());
      List<Coordinate> points = strokes.get(s).points();
      for (int i = 1; i < points.size(); i++) {
        LineSegment line = new LineSegment(points.get(i - 1), points.get(i));
        tree.insert(new Envelope(line.p0, line.p1), new Segment(s, i - 1, line));
      }
    }
  }

  static List<Stroke> join(List<Stroke> strokes) {
    return new Joiner(new Joiner(strokes).endsPulled()).crossed();
  }

  private List<Stroke> endsPulled() {
    List<Stroke> moved = new ArrayList<>();
    for (int s = 0; s < strokes.size(); s++) {
      Stroke stroke = strokes.get(s);
      if (!stroke.isRoad() || stroke.start().equals2D(stroke.end())) {
        moved.add(stroke);
        continue;
      }
      List<Coordinate> points = new ArrayList<>(stroke.points());
      points.set(0, pulled(s, stroke.start()));
      points.set(points.size() - 1, pulled(s, stroke.end()));
      moved.add(stroke.with(points));
    }
    List<Stroke> all = new ArrayList<>();
    for (int s = 0; s < moved.size(); s++) {
      all.add(withAdded(moved.get(s), added.get(s)));
    }
    return all;
  }

  private Coordinate pulled(int stroke, Coordinate end) {
    Segment best = null;
    double bestMetres = REACH_METRES;
    for (Segment segment : near(end, REACH_METRES)) {
      if (segment.stroke == stroke
          || strokes.get(segment.stroke).level() != strokes.get(stroke).level()) {
        continue;
      }
      double metres = segment.line.distance(end);
      if (metres < bestMetres) {
        best = segment;
        bestMetres = metres;
      }
    }
    if (best == null) {
      return end;
    }
    Coordinate foot = best.line.closestPoint(end);
    for (Coordinate corner : List.of(best.line.p0, best.line.p1)) {
      if (corner.distance(foot) < SAME_METRES) {
        return corner;
      }
    }
    Coordinate place = Plane.at(foot.x, foot.y);
    return add(best, place);
  }

  private List<Stroke> crossed() {
    RobustLineIntersector intersector = new RobustLineIntersector();
    for (int s = 0; s < strokes.size(); s++) {
      if (!strokes.get(s).isRoad()) {
        continue;
      }
      List<Coordinate> points = strokes.get(s).points();
      for (int i = 1; i < points.size(); i++) {
        Segment own = new Segment(s, i - 1, new LineSegment(points.get(i - 1), points.get(i)));
        for (Segment other : near(own.line)) {
          if (other.stroke <= s
              || !strokes.get(other.stroke).isRoad()
              || strokes.get(other.stroke).level() != strokes.get(s).level()) {
            continue;
          }
          intersector.computeIntersection(own.line.p0, own.line.p1, other.line.p0, other.line.p1);
          if (intersector.hasIntersection()) {
            meet(own, other, intersector.getIntersection(0));
          }
        }
      }
    }
    List<Stroke> all = new ArrayList<>();
    for (int s = 0; s < strokes.size(); s++) {
      all.add(withAdded(strokes.get(s), added.get(s)));
    }
    return all;
  }

  private void meet(Segment own, Segment other, Coordinate crossing) {
    Coordinate place = Plane.at(crossing.x, crossing.y);
    for (Coordinate corner : List.of(own.line.p0, own.line.p1, other.line.p0, other.line.p1)) {
      if (corner.distance(place) < SAME_METRES) {
        place = corner;
        break;
      }
    }
    add(own, place);
    add(other, place);
  }

  /** Two places less than a pace apart on one segment are one place. */
  private Coordinate add(Segment segment, Coordinate place) {
    if (place.equals2D(segment.line.p0) || place.equals2D(segment.line.p1)) {
      return place;
    }
    double key = segment.index + segment.line.projectionFactor(place);
    TreeMap<Double, Coordinate> places = added.get(segment.stroke);
    places.putIfAbsent(key, place);
    return places.get(key);
  }

  private static Stroke withAdded(Stroke stroke, NavigableMap<Double, Coordinate> places) {
    if (places.isEmpty()) {
      return stroke;
    }
    List<Coordinate> points = new ArrayList<>();
    for (int i = 0; i < stroke.points().size(); i++) {
      append(points, stroke.points().get(i));
      places.subMap((double) i, true, i + 1.0, false).values().forEach(c -> append(points, c));
    }
    return stroke.with(points);
  }

  private static void append(List<Coordinate> points, Coordinate point) {
    if (points.isEmpty() || !points.get(points.size() - 1).equals2D(point)) {
      points.add(point);
    }
  }

  private List<Segment> near(Coordinate point, double metres) {
    Envelope box = new Envelope(point);
    box.expandBy(metres);
    return query(box);
  }

  private List<Segment> near(LineSegment line) {
    return query(new Envelope(line.p0, line.p1));
  }

  private List<Segment> query(Envelope box) {
    List<Segment> found = new ArrayList<>();
    for (Object item : tree.query(box)) {
      found.add((Segment) item);
    }
    return found;
  }
}
