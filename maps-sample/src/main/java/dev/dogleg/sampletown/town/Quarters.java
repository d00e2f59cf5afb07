package dev.dogleg.sampletown.town;

import dev.dogleg.sampletown.draw.Grid;
import dev.dogleg.sampletown.draw.Plane;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;

/** The districts inside the old wall and the two suburbs outside the ring, as areas. */
final class Quarters {
  private static final double BANK_METRES = 85;

  private final List<Coordinate> wall = MainRoads.wallLine();

  /** {@return the area with its corners cut off by the wall} */
  private Polygon inside(List<Coordinate> corners) {
    return (Polygon) Grid.area(wall).intersection(Grid.area(corners));
  }

  private static List<Coordinate> bank(boolean east, double north, double south) {
    List<Coordinate> part = new ArrayList<>();
    for (Coordinate c : Ground.bank(east ? BANK_METRES : -BANK_METRES)) {
      if (c.y <= north + 60 && c.y >= south - 60) {
        part.add(c);
      }
    }
    part.set(0, Plane.at(part.get(0).x, north));
    part.set(part.size() - 1, Plane.at(part.get(part.size() - 1).x, south));
    return part;
  }

  /** Between the river and a line in the east, from north to south. */
  private Polygon eastOfRiver(double east, double north, double south) {
    List<Coordinate> corners = new ArrayList<>(bank(true, north, south));
    corners.add(Plane.at(east, south));
    corners.add(Plane.at(east, north));
    return inside(corners);
  }

  private Polygon westOfRiver(double west, double north, double south) {
    List<Coordinate> corners = new ArrayList<>(bank(false, north, south));
    corners.add(Plane.at(west, south));
    corners.add(Plane.at(west, north));
    return inside(corners);
  }

  /** The street along the river. */
  static List<Coordinate> riverside(boolean east, double north, double south) {
    List<Coordinate> points = bank(east, north, south);
    if (!east) {
      Collections.reverse(points);
    }
    return points;
  }

  List<District> all() {
    return List.of(
        new District("Northfield", "BRW 101", eastOfRiver(1900, 2700, 150)),
        new District("Halyard", "BRW 102", inside(box(1900, 2700, 4000, 150))),
        new District("Old Ferry", "BRW 103", eastOfRiver(1200, 150, -1595)),
        new District("Kiln Hill", "BRW 104", inside(box(1200, 150, 4000, -1595))),
        new District("Las Garzas", "BRW 105", eastOfRiver(4000, -1720, -2700)),
        new District("Westover", "BRW 106", westOfRiver(-4000, 2700, 150)),
        new District("Tanners Row", "BRW 107", westOfRiver(-4000, 150, -1595)),
        new District("Neulinden", "BRW 108", westOfRiver(-4000, -1720, -2700)),
        new District("Heronsgate", "BRW 109", Grid.area(box(3950, 2900, 6300, 230))),
        new District("Saint-Orfrais", "BRW 110", Grid.area(box(-5900, 2300, -3450, 330))));
  }

  private static List<Coordinate> box(double west, double north, double east, double south) {
    return Plane.points(west, south, east, south, east, north, west, north);
  }
}
