package dev.dogleg.sampletown.town;

import dev.dogleg.sampletown.draw.MapDraft;
import dev.dogleg.sampletown.draw.Plane;
import dev.dogleg.sampletown.draw.Tags;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.locationtech.jts.geom.Coordinate;

/** Woods in the countryside; nothing depends on them, but the picture looks better. */
final class Woods {
  private static final int CORNERS = 9;

  private Woods() {}

  static void draw(MapDraft draft, Random random) {
    List<Coordinate> centres =
        Plane.points(
            -8200, 6000, -5600, -3300, -9900, 2300, 2700, 7900, 8300, 6600, 8100, 900, 3900, -2700,
            -3700, -7600, -800, 5700, 7000, -3600, 4700, 4600, -10600, -5700);
    for (Coordinate centre : centres) {
      double size = 350 + random.nextInt(500);
      List<Coordinate> edge = new ArrayList<>();
      for (int i = 0; i < CORNERS; i++) {
        edge.add(
            Plane.step(centre, 360.0 * i / CORNERS, size * (0.6 + random.nextInt(60) / 100.0)));
      }
      edge.add(edge.get(0));
      draft.way(Plane.curve(edge, 90), Tags.of("natural", "wood"));
    }
  }
}
