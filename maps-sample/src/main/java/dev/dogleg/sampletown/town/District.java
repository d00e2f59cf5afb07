package dev.dogleg.sampletown.town;

import dev.dogleg.sampletown.draw.Locality;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.algorithm.locate.PointOnGeometryLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;

/**
 * A part of the town.
 *
 * @param name as on the sign
 * @param postcode invented
 * @param area its edge
 * @param locator answers quickly what is inside
 */
record District(String name, String postcode, Polygon area, PointOnGeometryLocator locator) {

  District(String name, String postcode, Polygon area) {
    this(name, postcode, area, new IndexedPointInAreaLocator(area));
  }

  Locality locality() {
    return new Locality(name, "Brindlewick", postcode);
  }

  boolean holds(Coordinate point) {
    return locator.locate(point) == Location.INTERIOR;
  }
}
