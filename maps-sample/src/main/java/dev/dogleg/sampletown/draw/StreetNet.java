package dev.dogleg.sampletown.draw;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Predicate;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/** All strokes of the sheet, in the order in which they were drawn. */
public final class StreetNet {
  private final List<Stroke> strokes = new ArrayList<>();

  /**
   * Draws a stroke.
   *
   * @param stroke what to draw
   * @return the stroke
   */
  public Stroke add(Stroke stroke) {
    strokes.add(stroke);
    return stroke;
  }

  /** {@return all strokes} */
  public List<Stroke> strokes() {
    return Collections.unmodifiableList(strokes);
  }

  /** {@return the strokes with common corners wherever streets meet} */
  public List<Stroke> joined() {
    return Joiner.join(strokes);
  }

  /**
   * Starts or ends something on a road: gives the nearest road on the ground a corner there.
   *
   * @param near where the corner should be, about
   * @param reachMetres how far the road may be
   * @return the corner; the point itself if no road is that near
   */
  public Coordinate touch(Coordinate near, double reachMetres) {
    Stroke best = null;
    double nearest = reachMetres;
    for (Stroke stroke : strokes) {
      boolean road =
          stroke.isRoad()
              && stroke.level() == 0
              && !"motorway_link".equals(stroke.tags().get("highway"));
      double metres = road ? stroke.at(stroke.metresAt(near)).distance(near) : nearest;
      if (metres < nearest) {
        nearest = metres;
        best = stroke;
      }
    }
    if (best == null) {
      return near;
    }
    Coordinate foot = best.at(best.metresAt(near));
    replace(best, best.through(foot));
    return foot;
  }

  /**
   * Puts another stroke in the place of one.
   *
   * @param old drawn before
   * @param changed the new one
   * @return the new one
   */
  public Stroke replace(Stroke old, Stroke changed) {
    strokes.set(indexOf(old), changed);
    return changed;
  }

  /**
   * Cuts a stroke into up to three pieces and tags the middle one.
   *
   * @param stroke drawn before
   * @param from metres from its start where the middle begins
   * @param to metres from its start where the middle ends
   * @param keysAndValues tags of the middle; none at all removes the middle
   */
  public void cut(Stroke stroke, double from, double to, String... keysAndValues) {
    int index = indexOf(stroke);
    strokes.remove(index);
    double length = stroke.length();
    if (to < length - 0.5) {
      strokes.add(index, stroke.part(to, length));
    }
    if (keysAndValues.length > 0) {
      strokes.add(
          index, stroke.part(Math.max(0, from), Math.min(length, to)).tagged(keysAndValues));
    }
    if (from > 0.5) {
      strokes.add(index, stroke.part(0, from));
    }
  }

  /**
   * Cuts all strokes of a kind where they cross a line, and tags the pieces over or under it.
   *
   * @param which the strokes
   * @param line what they cross
   * @param metres half the length of the piece
   * @param keysAndValues tags of the piece; a stroke that bears the first key is such a piece
   */
  public void cutWhereCrossing(
      Predicate<Stroke> which, Stroke line, double metres, String... keysAndValues) {
    for (int i = 0; i < strokes.size(); i++) {
      Stroke stroke = strokes.get(i);
      if (!which.test(stroke) || stroke.tags().containsKey(keysAndValues[0])) {
        continue;
      }
      List<Coordinate> crossings = crossings(stroke, line);
      if (!crossings.isEmpty()) {
        double at = stroke.metresAt(crossings.get(0));
        cut(stroke, at - metres, at + metres, keysAndValues);
        i--; // the first piece is looked at again
      }
    }
  }

  /**
   * Finds where two strokes cross.
   *
   * @param a one
   * @param b the other
   * @return the crossings, in the order of the first stroke
   */
  public static List<Coordinate> crossings(Stroke a, Stroke b) {
    List<Coordinate> found = new ArrayList<>();
    if (!a.line().getEnvelopeInternal().intersects(b.line().getEnvelopeInternal())) {
      return found;
    }
    Geometry both = a.line().intersection(b.line());
    for (Coordinate c : both.getCoordinates()) {
      found.add(Plane.at(c.x, c.y));
    }
    found.sort((p, q) -> Double.compare(a.metresAt(p), a.metresAt(q)));
    return found;
  }

  private int indexOf(Stroke stroke) {
    int index = strokes.indexOf(stroke);
    if (index < 0) {
      throw new IllegalArgumentException("not drawn: " + stroke.tags());
    }
    return index;
  }
}
