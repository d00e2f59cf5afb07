package dev.dogleg.sampletown.town;

import dev.dogleg.sampletown.draw.HouseStyle;
import dev.dogleg.sampletown.draw.Plane;
import dev.dogleg.sampletown.draw.StreetNet;
import dev.dogleg.sampletown.draw.Stroke;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;

/** Where roads meet water, railway and ring: bridges, underpasses, level crossings, roundabouts. */
final class Crossings {
  private static final double ROUNDABOUT_METRES = 28;
  private static final double BRIDGE_METRES = 45;
  private static final double QUAY_METRES = 88;
  private static final double UNDERPASS_METRES = 14;

  /** Clear height under the railway, by road; the van of the tests is 2.9 m high. */
  private static final Map<String, String> UNDERPASSES =
      Map.of("Arch Street", "2.4", "High Street", "4.5", "Brindle Ring", "4.8");

  private final StreetNet net;
  private final List<Coordinate> levelCrossings = new ArrayList<>();

  Crossings(StreetNet net) {
    this.net = net;
  }

  void draw() {
    for (String radial :
        List.of("West Market Street", "East Market Street", "Fetlock Road", "Southern Approach")) {
      roundabout(radial);
    }
    railway();
    endAtTheQuays();
    net.cutWhereCrossing(
        s -> s.isRoad() && s.name().equals("Tanner Street"),
        Ground.RIVER,
        BRIDGE_METRES,
        "bridge",
        "yes",
        "layer",
        "1",
        "maxweight",
        "3",
        "bridge:name",
        "Tanner's Bridge");
    net.cutWhereCrossing(
        s -> s.isRoad() && s.level() == 0,
        Ground.RIVER,
        BRIDGE_METRES,
        "bridge",
        "yes",
        "layer",
        "1");
  }

  /** Bridges are few: these streets end on either bank. */
  private void endAtTheQuays() {
    for (String name : List.of("Railway Terrace", "Southside Road", "Old Wall Walk")) {
      Optional<Stroke> crossing = acrossTheRiver(name);
      while (crossing.isPresent()) {
        Stroke stroke = crossing.get();
        double at = stroke.metresAt(StreetNet.crossings(stroke, Ground.RIVER).get(0));
        net.cut(stroke, at - QUAY_METRES, at + QUAY_METRES);
        crossing = acrossTheRiver(name);
      }
    }
  }

  private Optional<Stroke> acrossTheRiver(String name) {
    return net.strokes().stream()
        .filter(stroke -> stroke.name().equals(name))
        .filter(stroke -> !StreetNet.crossings(stroke, Ground.RIVER).isEmpty())
        .findFirst();
  }

  /** {@return points that road and railway share} */
  List<Coordinate> levelCrossings() {
    return levelCrossings;
  }

  private void roundabout(String radialName) {
    Stroke ring = find("Brindle Ring");
    Stroke radial = find(radialName);
    Coordinate end =
        radial.end().distance(Plane.at(0, 0)) > radial.start().distance(Plane.at(0, 0))
            ? radial.end()
            : radial.start();
    Coordinate near = radialName.contains("Market") ? end : radial.start();
    Coordinate centre = near;
    double nearest = Double.MAX_VALUE;
    for (Stroke stroke : net.strokes()) {
      Coordinate foot = stroke.at(stroke.metresAt(near));
      if (stroke.name().equals(ring.name()) && foot.distance(near) < nearest) {
        nearest = foot.distance(near);
        centre = foot;
      }
    }
    Stroke circle =
        Stroke.street(
            Plane.ellipse(centre, ROUNDABOUT_METRES, ROUNDABOUT_METRES, 16),
            HouseStyle.NONE,
            "highway",
            "trunk",
            "junction",
            "roundabout",
            "oneway",
            "yes",
            "maxspeed",
            "40");
    for (Stroke stroke : List.copyOf(net.strokes())) {
      if (stroke.isRoad() && stroke.level() == 0) {
        cutOut(stroke, circle, centre);
      }
    }
    net.add(circle);
  }

  private void cutOut(Stroke stroke, Stroke circle, Coordinate centre) {
    List<Coordinate> crossings = StreetNet.crossings(stroke, circle);
    if (crossings.isEmpty()) {
      return;
    }
    boolean startsInside = stroke.start().distance(centre) < ROUNDABOUT_METRES;
    boolean endsInside = stroke.end().distance(centre) < ROUNDABOUT_METRES;
    double from = startsInside ? 0 : stroke.metresAt(crossings.get(0));
    double to = endsInside ? stroke.length() : stroke.metresAt(crossings.get(crossings.size() - 1));
    net.cut(stroke, from, to);
  }

  private void railway() {
    UNDERPASSES.entrySet().stream()
        .sorted(Map.Entry.comparingByKey())
        .forEach(
            under ->
                net.cutWhereCrossing(
                    s -> s.name().equals(under.getKey()),
                    Ground.RAILWAY,
                    UNDERPASS_METRES,
                    "maxheight",
                    under.getValue()));
    for (Stroke road : List.copyOf(net.strokes())) {
      if (!road.isRoad() || road.level() != 0) {
        continue;
      }
      Stroke changed = road;
      for (Coordinate crossing : StreetNet.crossings(road, Ground.RAILWAY)) {
        if (road.tags().containsKey("maxheight")) {
          net.cutWhereCrossing(
              s -> s.tags().containsKey("railway"), road, 22, "bridge", "yes", "layer", "1");
        } else {
          changed = net.replace(changed, changed.through(crossing));
          for (Stroke rail : List.copyOf(net.strokes())) {
            if (rail.tags().containsKey("railway")
                && rail.at(rail.metresAt(crossing)).distance(crossing) < 0.1) {
              net.replace(rail, rail.through(crossing));
            }
          }
          levelCrossings.add(crossing);
        }
      }
    }
    net.cutWhereCrossing(
        s -> s.tags().containsKey("railway"), Ground.RIVER, 50, "bridge", "yes", "layer", "1");
  }

  private Stroke find(String name) {
    return net.strokes().stream().filter(s -> s.name().equals(name)).findFirst().orElseThrow();
  }
}
