package dev.dogleg.address;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A plain look-up on a street of a few houses. */
class PlainLookUpTest {
  @TempDir static Path folder;
  private static AddressIndex index;

  @BeforeAll
  static void open() throws Exception {
    SmallMap map = new SmallMap();
    map.street("Mill Lane", 0, 400, 0);
    map.house(20, 15, "2", "Mill Lane", "addr:postcode", "00101", "addr:city", "Netherby");
    map.house(100, 15, "6", "Mill Lane");
    map.house(140, 15, "8", "Mill Lane");
    map.house(20, -15, "1", "Mill Lane");
    map.box(
        200, 10, 220, 30, "building", "yes", "addr:housenumber", "12a", "addr:street", "Mill Lane");
    index = map.open(folder);
  }

  @AfterAll
  static void close() {
    index.close();
  }

  @Test
  void aHouseOnTheMapIsExact() {
    LookUp found = index.find("2 Mill Lane");
    assertEquals(Outcome.FOUND, found.outcome(), found.reason());
    assertEquals(Grade.EXACT, found.grade());
    assertEquals("Mill Lane", found.matches().get(0).street());
    assertEquals("0.000150,0.000200", found.matches().get(0).point().toString());
  }

  @Test
  void anOutlineStandsForItsMiddle() {
    LookUp found = index.find("12 A mill ln");
    assertEquals(Grade.EXACT, found.grade(), found.reason());
    assertEquals("0.000200,0.002100", found.matches().get(0).point().toString());
  }

  @Test
  void aMissingNumberStandsBetweenItsNeighbours() {
    LookUp found = index.find("4 Mill Lane, 00101 Netherby");
    assertEquals(Grade.INTERPOLATED, found.grade(), found.reason());
    // Halfway from 20 m to 100 m east is 60 m, on the even side.
    assertEquals("0.000150,0.000600", found.matches().get(0).point().toString());
  }

  @Test
  void aNumberOffTheScaleIsOnlyAStreet() {
    assertEquals(Grade.STREET, index.find("9000 Mill Lane").grade());
  }

  @Test
  void anUnknownStreetIsNone() {
    assertEquals(Outcome.NONE, index.find("2 Quarry Road").outcome());
    assertTrue(index.find("opposite the fire station").matches().isEmpty());
  }
}
