package dev.dogleg.sampletown.town;

import dev.dogleg.sampletown.draw.Locality;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;

/**
 * A part of the town.
 *
 * @param name as on the sign
 * @param postcode invented
 * @param area its edge
 */
record District(String name, String postcode, Polygon area) {

  Locality locality() {
    return new Locality(name, "Brindlewick", postcode);
  }

  boolean holds(Coordinate point) {
    return area.contains(area.getFactory().createPoint(point));
  }
}
