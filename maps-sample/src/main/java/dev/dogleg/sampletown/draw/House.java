package dev.dogleg.sampletown.draw;

import java.util.Map;
import org.locationtech.jts.geom.Coordinate;

/**
 * One house with its number.
 *
 * @param number as on the door, such as 12, 12a or 41-07
 * @param street name of its street
 * @param locality where it is
 * @param door its place in metres
 */
public record House(String number, String street, Locality locality, Coordinate door) {

  /** {@return the address tags} */
  public Map<String, String> tags() {
    Map<String, String> tags = Tags.of("addr:housenumber", number, "addr:street", street);
    if (!locality.suburb().isEmpty()) {
      tags.put("addr:suburb", locality.suburb());
    }
    tags.put("addr:city", locality.city());
    tags.put("addr:postcode", locality.postcode());
    return tags;
  }
}
