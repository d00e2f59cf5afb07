package dev.dogleg.sampletown.town;

import dev.dogleg.sampletown.draw.HouseStyle;
import dev.dogleg.sampletown.draw.Plane;
import dev.dogleg.sampletown.draw.StreetNet;
import dev.dogleg.sampletown.draw.Stroke;
import dev.dogleg.sampletown.draw.Tags;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;

/** The motorway south of the town: two carriageways, two interchanges, a trunk road at each end. */
final class Motorway {
  private static final double HALF_MEDIAN_METRES = 13;
  private static final double RAMP_METRES = 420;
  private static final double RAMP_FOOT_METRES = 70;

  private final StreetNet net;
  private final Stroke middle =
      Stroke.street(
          Plane.curve(
              Plane.points(
                  -9500, -3800, -6200, -4300, -3000, -4400, 700, -4550, 5000, -4400, 10000, -3900),
              120),
          HouseStyle.NONE);
  private Stroke eastbound;
  private Stroke westbound;

  Motorway(StreetNet net) {
    this.net = net;
    this.eastbound = carriageway(-HALF_MEDIAN_METRES, false);
    this.westbound = carriageway(HALF_MEDIAN_METRES, true);
  }

  void draw() {
    for (String road : List.of("Withy Road", "Southern Approach")) {
      interchange(road);
    }
    net.add(eastbound);
    net.add(westbound);
    Stroke line = middle;
    for (Stroke stroke : List.copyOf(net.strokes())) {
      if (stroke.level() == 0 && !StreetNet.crossings(line, stroke).isEmpty()) {
        net.cutWhereCrossing(s -> s.level() == 1, stroke, 16, "bridge", "yes", "layer", "1");
      }
    }
    net.cutWhereCrossing(s -> s.level() == 1, Ground.RIVER, 50, "bridge", "yes", "layer", "1");
  }

  /** Both ends run together into the trunk roads. */
  private Stroke carriageway(double left, boolean reversed) {
    List<Coordinate> points = new ArrayList<>(Plane.beside(middle.points(), left));
    points.set(0, middle.start());
    points.set(points.size() - 1, middle.end());
    if (reversed) {
      Collections.reverse(points);
    }
    return new Stroke(
        points,
        Tags.of(
            "highway", "motorway", "ref", "M7", "oneway", "yes", "maxspeed", "110", "lanes", "2"),
        1,
        HouseStyle.NONE);
  }

  private void interchange(String roadName) {
    Stroke road =
        net.strokes().stream().filter(s -> s.name().equals(roadName)).findFirst().orElseThrow();
    Coordinate crossing = centre(road);
    eastbound = ramps(eastbound, crossing);
    westbound = ramps(westbound, crossing);
  }

  private Coordinate centre(Stroke road) {
    List<Coordinate> crossings = StreetNet.crossings(middle, road);
    return crossings.isEmpty() ? road.end() : crossings.get(0);
  }

  /** One ramp leaves the carriageway before the road, one joins it behind. */
  private Stroke ramps(Stroke carriageway, Coordinate crossing) {
    double at = carriageway.metresAt(crossing);
    Coordinate leave = carriageway.at(at - RAMP_METRES);
    Coordinate join = carriageway.at(at + RAMP_METRES);
    Coordinate right = carriageway.beside(at, -RAMP_FOOT_METRES);
    Coordinate foot = net.touch(right, 200);
    ramp(leave, carriageway.beside(at - RAMP_METRES / 2, -45), foot);
    ramp(foot, carriageway.beside(at + RAMP_METRES / 2, -45), join);
    return carriageway.through(leave).through(join);
  }

  private void ramp(Coordinate from, Coordinate via, Coordinate to) {
    net.add(
        Stroke.street(
            Plane.curve(List.of(from, via, to), 60),
            HouseStyle.NONE,
            "highway",
            "motorway_link",
            "oneway",
            "yes",
            "maxspeed",
            "60"));
  }
}
