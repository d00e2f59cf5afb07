package dev.dogleg.roads;

import com.graphhopper.storage.NodeAccess;
import dev.dogleg.model.GeoPoint;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Seeded places near the roads of a network, put on them. */
final class RandomPlaces {
  private RandomPlaces() {}

  static List<RoadPoint> draw(RoadNetwork roads, int count, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    NodeAccess nodes = roads.baseGraph().getNodeAccess();
    List<RoadPoint> points = new ArrayList<>();
    while (points.size() < count) {
      int node = random.nextInt(roads.baseGraph().getNodes());
      GeoPoint place =
          new GeoPoint(
              nodes.getLat(node) + random.nextDouble(-0.001, 0.001),
              nodes.getLon(node) + random.nextDouble(-0.001, 0.001));
      roads.snap(place, "").point().ifPresent(points::add);
    }
    return points;
  }
}
