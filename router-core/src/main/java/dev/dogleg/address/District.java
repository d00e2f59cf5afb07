package dev.dogleg.address;

import dev.dogleg.model.GeoPoint;
import java.util.Objects;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/**
 * A named part of the map that can be asked which points it holds: by its limits or, where the map
 * shows none, by the addresses that bear its name.
 *
 * <p>Never changed; any number of threads may ask.
 */
public final class District {
  /** Farther than this from every address that names a district, nothing is known. */
  public static final int NEAREST_METRES = 300;

  private static final GeometryFactory POINTS = new GeometryFactory();

  private final String name;
  private final Optional<Geometry> area;
  private final SaidAddresses addresses;

  private District(String name, Optional<Geometry> area, SaidAddresses addresses) {
    this.name = Objects.requireNonNull(name, "name");
    this.area = area;
    this.addresses = addresses;
  }

  static District limited(String name, Geometry area) {
    return new District(name, Optional.of(area), SaidAddresses.NONE);
  }

  static District said(String name, SaidAddresses addresses) {
    return new District(name, Optional.empty(), addresses);
  }

  /** {@return as the map writes it} */
  public String name() {
    return name;
  }

  /**
   * Its limits.
   *
   * @return polygons in longitude and latitude, lines kept to about five metres; empty where the
   *     map shows none
   */
  public Optional<Geometry> area() {
    return area;
  }

  /** {@return how many addresses bear the name; 0 where limits are known} */
  public int addresses() {
    return addresses.bearing();
  }

  /**
   * Whether it holds a point.
   *
   * @param point the point
   * @return by limits: true inside and on the edge; by addresses: whether the nearest address that
   *     names any district bears this name and lies within {@link #NEAREST_METRES}
   */
  public boolean holds(GeoPoint point) {
    return area.isPresent()
        ? area.get().covers(POINTS.createPoint(new Coordinate(point.lon(), point.lat())))
        : addresses.nearestBears(point.lat(), point.lon(), NEAREST_METRES);
  }
}
