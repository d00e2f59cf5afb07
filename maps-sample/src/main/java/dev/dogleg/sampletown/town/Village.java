package dev.dogleg.sampletown.town;

import dev.dogleg.sampletown.draw.Grid;
import dev.dogleg.sampletown.draw.Locality;
import dev.dogleg.sampletown.draw.Plane;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;

/**
 * A village outside the town.
 *
 * @param name as on the sign
 * @param postcode invented
 * @param centre where its roads meet
 * @param streetDegrees direction of its street, 0 is east, 90 is north
 * @param streetName name of its street
 * @param radiusMetres how far its side streets reach
 */
record Village(
    String name,
    String postcode,
    Coordinate centre,
    double streetDegrees,
    String streetName,
    double radiusMetres) {

  static List<Village> all() {
    return List.of(
        new Village("Currycombe", "BRW 201", Plane.at(-8400, 3200), 20, "Mill Lane", 850),
        new Village("Fetlock Green", "BRW 202", Plane.at(6300, 5400), 80, "Forge Street", 850),
        new Village("Upper Dapple", "BRW 203", Plane.at(-3300, 6700), 120, "Chapel Street", 700),
        new Village("Nettlebank", "BRW 204", Plane.at(8800, -2200), 30, "Staithe Street", 800),
        new Village("Withy End", "BRW 205", Plane.at(-6600, -6200), 135, "Basket Street", 700),
        new Village("Otterholm", "BRW 206", Plane.at(6200, -8300), 10, "Lighthouse Street", 1000));
  }

  Locality locality() {
    return new Locality("", name, postcode);
  }

  Polygon area() {
    return Grid.area(Plane.ellipse(centre, radiusMetres, radiusMetres, 32));
  }

  /** {@return the street through the centre} */
  List<Coordinate> spine() {
    double half = radiusMetres * 0.75;
    List<Coordinate> bends =
        List.of(
            Plane.step(centre, streetDegrees + 180 - 9, half),
            Plane.step(centre, streetDegrees + 180, half / 2),
            centre,
            Plane.step(centre, streetDegrees, half / 2),
            Plane.step(centre, streetDegrees + 11, half));
    return Plane.curve(bends, 45);
  }
}
