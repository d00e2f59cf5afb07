package dev.dogleg.address;

import dev.dogleg.model.GeoPoint;
import java.util.Set;

/**
 * One document read back from the index.
 *
 * @param kind one of the kinds of {@link Fields#KIND}
 * @param street street as the map spells it
 * @param number number as the map spells it, empty unless a house
 * @param postcode as the map has it, or as its surroundings have it
 * @param town likewise
 * @param at packed place
 * @param source id of the map object times 4, plus 0 point, 1 way, 2 relation
 * @param radiusMetres half the diagonal of the outline
 * @param areas keys of all places it lies in or near
 * @param postcodes keys of the postcodes it may have
 * @param shape line of a street or interpolation way, null of a house
 */
record Hit(
    String kind,
    String street,
    String number,
    String postcode,
    String town,
    long at,
    long source,
    int radiusMetres,
    Set<String> areas,
    Set<String> postcodes,
    Shape shape) {

  GeoPoint point() {
    return new GeoPoint(NodePlaces.lat(at), NodePlaces.lon(at));
  }

  double metresTo(Hit other) {
    return metresBetween(at, other.at);
  }

  static double metresBetween(long a, long b) {
    return Areas.metres(NodePlaces.lat(a), NodePlaces.lon(a), NodePlaces.lat(b), NodePlaces.lon(b));
  }

  /** Kind and id of the map object, for example {@code way 123}. */
  String sourceName() {
    String type = source % 4 == 0 ? "node " : source % 4 == 1 ? "way " : "relation ";
    return type + source / 4;
  }
}
