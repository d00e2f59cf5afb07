package dev.dogleg.model;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Pattern;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/**
 * A part of the round with the days on which the groomer works there: by area, by postcodes, by
 * districts of the map, or by minutes on the road.
 *
 * @param name unique in a book
 * @param area polygons in longitude and latitude (WGS 84), or empty; never changed
 * @param postcodes postcodes, upper case without spaces; one that ends in {@code *} stands for all
 *     that begin so
 * @param districts names of districts, towns or other areas of the map, as typed
 * @param from from where minutes on the road are counted, or empty
 * @param withinSeconds most seconds on the road from there at free flow; with {@code from} only
 * @param days days on which its clients are visited, by weekday and day tags
 * @param groomerId whose zone, or empty: everybody's
 * @param strength only on these days, or rather
 */
public record Zone(
    String name,
    Optional<Geometry> area,
    List<String> postcodes,
    List<String> districts,
    Optional<Place> from,
    OptionalInt withinSeconds,
    TagMatch days,
    Optional<String> groomerId,
    Strength strength) {
  private static final GeometryFactory POINTS = new GeometryFactory();
  private static final Pattern NO_WORD = Pattern.compile("[^\\p{L}\\p{N}]+");

  /** Checks that it says where it is. */
  public Zone {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(days, "days");
    Objects.requireNonNull(groomerId, "groomerId");
    Objects.requireNonNull(strength, "strength");
    postcodes = List.copyOf(postcodes);
    districts = List.copyOf(districts);
    if (area.isEmpty() && postcodes.isEmpty() && districts.isEmpty() && from.isEmpty()) {
      throw new IllegalArgumentException("zone " + name + " is nowhere");
    }
    if (from.isPresent() != withinSeconds.isPresent()) {
      throw new IllegalArgumentException("zone " + name + ": from and minutes belong together");
    }
  }

  /**
   * Whether a point lies in its area.
   *
   * @param point the point
   * @return true on the edge too; false where it has no area
   */
  public boolean holds(GeoPoint point) {
    return area.isPresent()
        && area.get().covers(POINTS.createPoint(new Coordinate(point.lon(), point.lat())));
  }

  /**
   * Whether an address bears one of its postcodes.
   *
   * @param address one line
   * @return true where a word of it, or two words together, is such a postcode
   */
  public boolean holdsPostcode(String address) {
    String[] words = NO_WORD.split(address.toUpperCase(java.util.Locale.ROOT));
    for (int w = 0; w < words.length; w++) {
      if (isPostcode(words[w]) || (w + 1 < words.length && isPostcode(words[w] + words[w + 1]))) {
        return true;
      }
    }
    return false;
  }

  private boolean isPostcode(String word) {
    return !word.isEmpty()
        && postcodes.stream()
            .anyMatch(
                code ->
                    code.endsWith("*")
                        ? word.startsWith(code.substring(0, code.length() - 1))
                        : word.equals(code));
  }
}
