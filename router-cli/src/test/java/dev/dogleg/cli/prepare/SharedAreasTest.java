package dev.dogleg.cli.prepare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.geojson.GeoJsonReader;

/** Overlaps of areas, on the worked examples of RFC 7946, appendix A. */
class SharedAreasTest {
  private static final double EARTH_RADIUS_METRES = 6_371_008.8;

  /** RFC 7946, A.3: a polygon without holes. */
  private static final String POLYGON =
      """
      {"type": "Polygon", "coordinates": [[[100.0, 0.0], [101.0, 0.0], [101.0, 1.0],
        [100.0, 1.0], [100.0, 0.0]]]}
      """;

  /** RFC 7946, A.6: two polygons, the second with a hole. */
  private static final String MULTI =
      """
      {"type": "MultiPolygon", "coordinates": [
        [[[102.0, 2.0], [103.0, 2.0], [103.0, 3.0], [102.0, 3.0], [102.0, 2.0]]],
        [[[100.0, 0.0], [101.0, 0.0], [101.0, 1.0], [100.0, 1.0], [100.0, 0.0]],
         [[100.2, 0.2], [100.2, 0.8], [100.8, 0.8], [100.8, 0.2], [100.2, 0.2]]]]}
      """;

  private static Optional<Geometry> area(String geoJson) throws ParseException {
    return Optional.of(new GeoJsonReader().read(geoJson));
  }

  private static String box(double west, double south, double east, double north) {
    return """
    {"type": "Polygon", "coordinates": [[[%s, %s], [%s, %s], [%s, %s], [%s, %s], [%s, %s]]]}
    """
        .formatted(west, south, east, south, east, north, west, north, west, south);
  }

  /** Of a zone of the sphere: R squared, times longitude, times the difference of sines. */
  private static double onTheSphere(double degrees, double south, double north) {
    return EARTH_RADIUS_METRES
        * EARTH_RADIUS_METRES
        * Math.toRadians(degrees)
        * (Math.sin(Math.toRadians(north)) - Math.sin(Math.toRadians(south)));
  }

  @Test
  void theWorkedExamplesShareTheSquareWithoutItsHole() throws ParseException {
    List<SharedAreas> shared = SharedAreas.of(List.of(area(POLYGON), area(MULTI)));
    double square = onTheSphere(1, 0, 1);
    double hole = onTheSphere(0.6, 0.2, 0.8);
    assertEquals(1, shared.size());
    assertEquals(0, shared.get(0).one());
    assertEquals(1, shared.get(0).other());
    assertEquals(square - hole, shared.get(0).squareMetres(), 1);
    assertEquals(square, SharedAreas.squareMetres(area(POLYGON).orElseThrow()), 1);
  }

  @Test
  void neighboursThatTouchShareNothing() throws ParseException {
    assertEquals(
        List.of(),
        SharedAreas.of(List.of(area(POLYGON), area(box(101, 0, 102, 1)), Optional.empty())));
  }

  /** A ten-thousandth of a degree is 11 m at the equator. */
  @Test
  void oneBorderDrawnTwiceIsNoOverlapAndALaneIs() throws ParseException {
    assertEquals(List.of(), SharedAreas.of(List.of(area(POLYGON), area(box(100.9999, 0, 102, 1)))));
    List<SharedAreas> lane = SharedAreas.of(List.of(area(POLYGON), area(box(100.9996, 0, 102, 1))));
    assertEquals(1, lane.size());
    assertTrue(lane.get(0).squareMetres() > 4_000_000, lane.toString());
  }
}
