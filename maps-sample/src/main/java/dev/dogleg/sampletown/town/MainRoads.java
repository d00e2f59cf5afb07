package dev.dogleg.sampletown.town;

import dev.dogleg.sampletown.draw.HouseStyle;
import dev.dogleg.sampletown.draw.Plane;
import dev.dogleg.sampletown.draw.StreetNet;
import dev.dogleg.sampletown.draw.Stroke;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;

/** The ring, the old town wall, and the streets that cross the town. */
final class MainRoads {
  private final StreetNet net;
  private final Stroke ring =
      Stroke.street(
          oval(1),
          HouseStyle.NONE,
          "highway",
          "trunk",
          "name",
          "Brindle Ring",
          "ref",
          "B1",
          "maxspeed",
          "80");
  private final Stroke wall =
      Stroke.street(
          wallLine(),
          HouseStyle.COUNTED,
          "highway",
          "tertiary",
          "name",
          "Old Wall Walk",
          "maxspeed",
          "50");

  MainRoads(StreetNet net) {
    this.net = net;
  }

  /** {@return where the town wall stood, now a street inside the ring} */
  static List<Coordinate> wallLine() {
    return oval(0.945);
  }

  private static List<Coordinate> oval(double scale) {
    List<Coordinate> points = new ArrayList<>();
    int corners = 84;
    for (int i = 0; i < corners; i++) {
      double angle = 2 * Math.PI * i / corners;
      double wobble =
          1 + 0.045 * StrictMath.sin(3 * angle + 0.7) + 0.03 * StrictMath.sin(2 * angle + 2);
      points.add(
          Plane.at(
              200 + 3300 * scale * wobble * StrictMath.cos(angle),
              2700 * scale * wobble * StrictMath.sin(angle)));
    }
    points.add(points.get(0));
    return points;
  }

  void draw() {
    net.add(ring);
    net.add(wall);
    across("primary", "West Market Street", HouseStyle.COUNTED, ring, -4000, 150, -540, 150);
    across("primary", "East Market Street", HouseStyle.COUNTED, ring, -540, 150, 4500, 150);
    across("primary", "High Street", HouseStyle.HUNDREDS, ring, 700, 3500, 700, -3500);
    across("secondary", "Station Road", HouseStyle.COUNTED, ring, -1700, 3500, -1700, -3500);
    across("secondary", "Halyard Boulevard", HouseStyle.HYPHENED, wall, 1900, 3500, 1900, 150);
    across("tertiary", "Arch Street", HouseStyle.COUNTED, wall, 1200, 150, 1200, -3500);
    across("unclassified", "Tanner Street", HouseStyle.COUNTED, wall, -4000, -1000, 1200, -1000);
    across("tertiary", "Railway Terrace", HouseStyle.COUNTED, wall, -4000, -1595, 4000, -1595);
    across("tertiary", "Southside Road", HouseStyle.COUNTED, wall, -4000, -1720, 4000, -1720);
  }

  /** A straight street, cut off where it passes the ring or the wall. */
  private void across(String kind, String name, HouseStyle houses, Stroke edge, double... xy) {
    Stroke whole =
        Stroke.street(Plane.points(xy), houses, "highway", kind, "name", name, "maxspeed", "50");
    List<Coordinate> ends = StreetNet.crossings(whole, edge);
    boolean startsInside = Math.abs(xy[0]) < 3000 && Math.abs(xy[1]) < 2000;
    boolean endsInside = Math.abs(xy[2]) < 3000 && Math.abs(xy[3]) < 2000;
    double from = startsInside ? 0 : whole.metresAt(ends.get(0));
    double to = endsInside ? whole.length() : whole.metresAt(ends.get(ends.size() - 1));
    net.add(whole.part(from, to));
  }
}
