package dev.dogleg.address;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.address.DistrictLookUp.Outcome;
import dev.dogleg.model.GeoPoint;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Districts by name: limits first, else the addresses that bear the name, never a guess. */
class NamedDistrictsTest {
  @TempDir static Path folder;
  private static AddressIndex index;

  @BeforeAll
  static void open() throws Exception {
    SmallMap map = new SmallMap();
    map.street("Mill Lane", 0, 6000, 0);
    map.house(10, 10, "1", "Mill Lane");
    // A town and, inside, a smaller area of the same name; a way may draw one as well as a
    // relation.
    district(map, "Netherby", -1000, -1000, 3000, 3000, "8");
    map.box(0, 0, 1000, 1000, "place", "suburb", "name", "Netherby");
    // Two of one name, apart.
    map.box(8000, 0, 9000, 1000, "place", "suburb", "name", "Oakdale");
    map.box(8000, 5000, 9000, 6000, "place", "suburb", "name", "Oakdale");
    // By addresses alone: two of Upton, one of Downton 200 m on.
    map.house(5000, 10, "2", "Mill Lane", "addr:suburb", "Upton");
    map.house(5100, 10, "4", "Mill Lane", "addr:suburb", "Upton");
    map.house(5300, 10, "6", "Mill Lane", "addr:suburb", "Downton");
    // A point alone, and limits that the extract cuts.
    map.node(7000, 0, "place", "suburb", "name", "Farside");
    long open = map.way(new long[] {map.node(0, 9000), map.node(900, 9000), 999_999});
    map.relation(
        new String[] {"w" + open + ":outer"},
        "type",
        "boundary",
        "boundary",
        "administrative",
        "admin_level",
        "9",
        "name",
        "Cutby");
    index = map.open(folder);
  }

  private static void district(
      SmallMap map, String name, int west, int south, int east, int north, String level) {
    long ring = map.box(west, south, east, north);
    map.relation(
        new String[] {"w" + ring + ":outer"},
        "type",
        "boundary",
        "boundary",
        "administrative",
        "admin_level",
        level,
        "name",
        name);
  }

  @AfterAll
  static void close() {
    index.close();
  }

  /** One metre of a small map is a hundred-thousandth of a degree. */
  private static GeoPoint at(int east, int north) {
    return new GeoPoint(north * 1e-5, east * 1e-5);
  }

  private static District found(String name, Outcome outcome) {
    DistrictLookUp answer = index.district(name);
    assertEquals(outcome, answer.outcome(), answer.toString());
    return answer.district().orElseThrow();
  }

  @Test
  void ofAreasThatOverlapTheSmallestIsMeantAndItsEdgeBelongsToIt() {
    District district = found("NETHERBY", Outcome.AREA);
    assertEquals("Netherby", district.name());
    assertTrue(district.holds(at(500, 500)));
    assertTrue(district.holds(at(0, 500)), "on the edge");
    assertFalse(district.holds(at(2000, 2000)), "in the town, not in the suburb");
    assertEquals(1e-4, district.area().orElseThrow().getArea(), 1e-9, "1000 m is 0.01 degrees");
  }

  @Test
  void areasOfOneNameThatLieApartAreNotOne() {
    assertEquals(Outcome.SEVERAL, index.district("Oakdale").outcome());
  }

  @Test
  void withoutLimitsTheNearestAddressDecides() {
    District upton = found("upton", Outcome.ADDRESSES);
    assertEquals(2, upton.addresses());
    assertTrue(upton.holds(at(5050, 10)));
    assertTrue(upton.holds(at(5199, 10)), "99 m from an Upton door, 101 m from a Downton one");
    assertFalse(upton.holds(at(5201, 10)), "101 m from an Upton door, 99 m from a Downton one");
    assertFalse(upton.holds(at(4720, 10)), "280 m on the small map, 311 m on the earth, from any");
    assertTrue(upton.holds(at(4740, 10)), "260 m on the small map, 289 m on the earth");
  }

  @Test
  void aPointAndCutLimitsAreNoDistrict() {
    assertEquals(Outcome.POINT, index.district("Farside").outcome());
    assertEquals(Outcome.CUT, index.district("Cutby").outcome());
    assertEquals(Outcome.NONE, index.district("Nowhere").outcome());
    assertEquals(Outcome.NONE, index.district("--").outcome());
  }

  @Test
  void namesThatCanBeUsedAreListed() {
    assertEquals(List.of("Downton", "Netherby", "Oakdale", "Upton"), index.districtNames());
  }
}
