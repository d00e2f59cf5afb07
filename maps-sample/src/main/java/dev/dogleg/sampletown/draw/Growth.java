package dev.dogleg.sampletown.draw;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.Iterator;
import java.util.List;
import java.util.Random;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;

/** Lets bent side streets grow from streets until an area is full, as in a suburb or a village. */
public final class Growth {
  private static final double[] LENGTHS = {520, 420, 330, 250, 180, 120, 80};
  private static final double PACE_METRES = 22;
  private static final double CLEAR_METRES = 46;
  private static final double LATER_SPACING_METRES = 125;
  private static final double MEET_METRES = 12;
  private static final int GENERATIONS = 4;

  private final StreetNet net;
  private final NearPoints taken;
  private final Random random;

  private record Branch(Stroke stroke, int generation) {}

  /**
   * Prepares growth; everything drawn so far is kept clear of.
   *
   * @param net where to draw
   * @param random decides bends; advanced
   */
  public Growth(StreetNet net, Random random) {
    this.net = net;
    this.random = random;
    this.taken = new NearPoints();
    net.strokes().forEach(taken::addAlong);
  }

  /**
   * Grows streets.
   *
   * @param area where they may be
   * @param seeds drawn before; the first side streets leave them
   * @param names one for each street; growth ends when there are no more
   * @param spacingMetres distance between side streets on one side
   * @param houses how the houses are numbered
   */
  public void fill(
      Polygon area,
      List<Stroke> seeds,
      Iterator<String> names,
      double spacingMetres,
      HouseStyle houses) {
    IndexedPointInAreaLocator inside = new IndexedPointInAreaLocator(area);
    Deque<Branch> open = new ArrayDeque<>();
    seeds.forEach(seed -> open.add(new Branch(seed, 0)));
    while (!open.isEmpty()) {
      Branch parent = open.remove();
      double length = parent.stroke.length();
      double spacing = parent.generation == 0 ? spacingMetres : LATER_SPACING_METRES;
      int side = 1;
      for (double at = Math.min(60, length / 2); at < length - 25; at += spacing / 2) {
        side = -side;
        if (!names.hasNext()) {
          return;
        }
        List<Coordinate> points = branch(parent.stroke, at, side, inside);
        if (points.isEmpty()) {
          continue;
        }
        Stroke grown =
            net.add(Stroke.street(points, houses, "highway", "residential", "name", names.next()));
        taken.addAlong(grown);
        if (parent.generation + 1 < GENERATIONS) {
          open.add(new Branch(grown, parent.generation + 1));
        }
      }
    }
  }

  private List<Coordinate> branch(
      Stroke parent, double at, int side, IndexedPointInAreaLocator inside) {
    Coordinate root = parent.at(at);
    double degrees = Plane.degrees(root, parent.beside(at, side * 10.0)) + random.nextInt(21) - 10;
    double bendDegrees = (random.nextInt(9) - 4) * 0.8;
    for (double length : LENGTHS) {
      List<Coordinate> points = new ArrayList<>();
      points.add(root);
      double heading = degrees;
      Coordinate here = root;
      boolean clear = true;
      for (double walked = 0; walked < length && clear; walked += PACE_METRES) {
        here = Plane.step(here, heading, PACE_METRES);
        heading += bendDegrees;
        points.add(here);
        clear =
            inside.locate(here) == Location.INTERIOR
                && (here.distance(root) < CLEAR_METRES + 8 || !taken.anyWithin(here, CLEAR_METRES));
      }
      if (clear) {
        meet(points, heading);
        return points;
      }
    }
    return List.of();
  }

  /** Where another street lies ahead, two streets in three lead on to it. */
  private void meet(List<Coordinate> points, double heading) {
    if (random.nextInt(3) == 0) {
      return;
    }
    Coordinate here = points.get(points.size() - 1);
    for (double walked = 0; walked < 90; walked += MEET_METRES) {
      here = Plane.step(here, heading, MEET_METRES);
      if (taken.anyWithin(here, MEET_METRES)) {
        points.add(here);
        return;
      }
    }
  }
}
