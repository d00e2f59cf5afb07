package dev.dogleg.address;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Interpolation ways of every scheme, and numbers between neighbours on a bent street. */
class InterpolationTest {
  @TempDir static Path folder;
  private static AddressIndex index;

  @BeforeAll
  static void open() throws Exception {
    SmallMap map = new SmallMap();
    line(map, 0, "odd", "1", "11", "Odd Lane");
    line(map, 1000, "even", "20", "10", "Even Lane");
    line(map, 2000, "all", "1", "5", "All Lane");
    line(map, 3000, "alphabetic", "7a", "7e", "Letter Lane");
    line(map, 4000, "4", "4", "24", "Step Lane");
    // The way names the street, its ends bear the numbers alone.
    long[] ends = {
      map.node(0, 5000, "addr:housenumber", "2"), map.node(100, 5000, "addr:housenumber", "12")
    };
    map.way(ends, "addr:interpolation", "even", "addr:street", "Bare Lane");
    // A street round a corner: 100 m east, then 100 m north.
    map.way(
        new long[] {map.node(0, 6000), map.node(100, 6000), map.node(100, 6100)},
        "highway",
        "residential",
        "name",
        "Corner Lane");
    map.house(10, 5990, "1", "Corner Lane");
    map.house(110, 6090, "5", "Corner Lane");
    index = map.open(folder);
  }

  private static void line(
      SmallMap map, int north, String scheme, String from, String to, String street) {
    long[] nodes = {
      map.house(0, north, from, street), map.node(50, north), map.house(100, north, to, street)
    };
    map.way(nodes, "addr:interpolation", scheme);
  }

  @AfterAll
  static void close() {
    index.close();
  }

  private static Match interpolated(String typed) {
    LookUp answer = index.find(typed);
    assertEquals(Grade.INTERPOLATED, answer.grade(), typed + ": " + answer.reason());
    return answer.matches().get(0);
  }

  @Test
  void oddAndEven() {
    // 5 is 4/10 of the way from 1 to 11.
    assertEquals("0.000000,0.000400", interpolated("5 Odd Lane").point().toString());
    // The line runs down from 20 to 10: 16 is 4/10 of the way.
    assertEquals("0.010000,0.000400", interpolated("16 Even Lane").point().toString());
    assertEquals(Grade.STREET, index.find("33 Odd Lane").grade());
  }

  @Test
  void allAlphabeticAndStep() {
    assertEquals("0.020000,0.000250", interpolated("2 All Lane").point().toString());
    assertEquals("0.030000,0.000500", interpolated("7c Letter Lane").point().toString());
    assertEquals("0.040000,0.000200", interpolated("8 Step Lane").point().toString());
  }

  @Test
  void theEndsAreHousesThemselves() {
    assertEquals(Grade.EXACT, index.find("1 Odd Lane").grade());
    assertEquals(Grade.EXACT, index.find("12 Bare Lane").grade());
    assertEquals("0.050000,0.000600", interpolated("8 Bare Lane").point().toString());
  }

  @Test
  void aPlaceBetweenNeighboursFollowsTheStreetRoundTheCorner() {
    // Half of the 180 m along the street between the feet of 1 and 5 is the corner itself.
    Match corner = interpolated("3 Corner Lane");
    assertEquals(0.0600, corner.point().lat(), 0.00015);
    assertEquals(0.0010, corner.point().lon(), 0.00015);
    assertTrue(corner.reason().contains("between 1 and 5"), corner.reason());
  }

  @Test
  void schemesAreReadStrictly() {
    HouseNumber one = HouseNumber.of("1");
    HouseNumber nine = HouseNumber.of("9");
    assertEquals(0.5, LineScheme.share("odd", one, nine, HouseNumber.of("5")));
    assertEquals(-1, LineScheme.share("odd", one, nine, HouseNumber.of("4")));
    assertEquals(-1, LineScheme.share("odd", one, nine, HouseNumber.of("5a")));
    assertEquals(-1, LineScheme.share("odd", one, nine, HouseNumber.of("11")));
    assertEquals(-1, LineScheme.share("nonsense", one, nine, HouseNumber.of("5")));
    assertEquals(
        0.5,
        LineScheme.share(
            "alphabetic", HouseNumber.of("3"), HouseNumber.of("3d"), HouseNumber.of("3b")));
  }
}
