package dev.dogleg.cli.prepare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.CoordinateFilter;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.overlay.OverlayOp;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * What areas of zones have in common.
 *
 * @param one number of a zone
 * @param other number of a later zone
 * @param squareMetres size of what both hold, more than 0: zones that touch, or whose common border
 *     was drawn twice, share nothing
 */
public record SharedAreas(int one, int other, double squareMetres) {
  /** Mean radius of the earth, IUGG. */
  private static final double EARTH_RADIUS_METRES = 6_371_008.8;

  private static final double METRES_PER_DEGREE = Math.toRadians(EARTH_RADIUS_METRES);

  /** What is narrower than twice this everywhere is one border drawn twice. */
  private static final double SLIVER_METRES = 10;

  /**
   * Every two areas that overlap.
   *
   * @param areas polygons of each zone in longitude and latitude, or empty
   * @return pairs in the order of the zones
   */
  public static List<SharedAreas> of(List<Optional<Geometry>> areas) {
    List<SharedAreas> shared = new ArrayList<>();
    for (int one = 0; one < areas.size(); one++) {
      for (int other = one + 1; other < areas.size(); other++) {
        if (areas.get(one).isPresent() && areas.get(other).isPresent()) {
          Geometry both =
              OverlayNGRobust.overlay(
                  areas.get(one).get(), areas.get(other).get(), OverlayOp.INTERSECTION);
          if (wide(both)) {
            shared.add(new SharedAreas(one, other, squareMetres(both)));
          }
        }
      }
    }
    return shared;
  }

  /**
   * Whether something is left of an area once its edges have moved in by {@link #SLIVER_METRES}:
   * each outline is kept to some metres only, so that neighbours seem to overlap.
   */
  private static boolean wide(Geometry area) {
    if (area.isEmpty()) {
      return false;
    }
    double squeeze = Math.cos(Math.toRadians(area.getEnvelopeInternal().centre().y));
    return !moved(
            area,
            point -> {
              point.setX(METRES_PER_DEGREE * squeeze * point.getX());
              point.setY(METRES_PER_DEGREE * point.getY());
            })
        .buffer(-SLIVER_METRES)
        .isEmpty();
  }

  private static Geometry moved(Geometry area, CoordinateFilter how) {
    Geometry moved = area.copy();
    moved.apply(how);
    moved.geometryChanged();
    return moved;
  }

  /**
   * Size of an area on the sphere of the mean radius, by the cylindrical projection that keeps
   * areas (Lambert 1772).
   *
   * @param area polygons in longitude and latitude
   * @return square metres; 0 for points and lines
   */
  public static double squareMetres(Geometry area) {
    return moved(
            area,
            point -> {
              point.setX(EARTH_RADIUS_METRES * Math.toRadians(point.getX()));
              point.setY(EARTH_RADIUS_METRES * Math.sin(Math.toRadians(point.getY())));
            })
        .getArea();
  }
}
