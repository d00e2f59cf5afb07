package dev.dogleg.address;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two streets of one name in one town are kept apart by district or postcode, from any source. */
class DistrictTest {
  @TempDir static Path folder;
  private static AddressIndex index;

  @BeforeAll
  static void open() throws Exception {
    SmallMap map = new SmallMap();
    // By boundaries of postcodes: the houses themselves bear nothing but number and street.
    map.box(-100, -100, 900, 900, "boundary", "postal_code", "postal_code", "00101");
    map.box(4900, -100, 5900, 900, "boundary", "postal_code", "postal_code", "00202");
    pair(map, "Mill Lane", 0, new String[0], new String[0]);
    // By boundaries of districts, relations of ways.
    district(map, "Westend", -100, 1900, 900, 2900);
    district(map, "Eastend", 4900, 1900, 5900, 2900);
    pair(map, "Forge Lane", 2000, new String[0], new String[0]);
    // By the tags of the houses.
    pair(
        map,
        "Weir Lane",
        4000,
        new String[] {"addr:city", "Netherby", "addr:suburb", "Upton"},
        new String[] {"addr:city", "Netherby", "addr:suburb", "Downton"});
    // By the postcodes of the houses around: 12 bears none, its neighbours do.
    pair(map, "Kiln Lane", 6000, new String[0], new String[0]);
    for (int i = 0; i < 3; i++) {
      map.house(100 + 20 * i, 6015, "2" + i, "Kiln Lane", "addr:postcode", "00303");
      map.house(5100 + 20 * i, 6015, "2" + i, "Kiln Lane", "addr:postcode", "00404");
    }
    index = map.open(folder);
  }

  private static void pair(SmallMap map, String street, int north, String[] west, String[] east) {
    map.street(street, 0, 400, north);
    map.street(street, 5000, 5400, north);
    map.house(40, north + 15, "12", street, west);
    map.house(5040, north + 15, "12", street, east);
  }

  private static void district(
      SmallMap map, String name, int west, int south, int east, int north) {
    long ring = map.box(west, south, east, north);
    map.relation(
        new String[] {"w" + ring + ":outer"},
        "type",
        "boundary",
        "boundary",
        "administrative",
        "admin_level",
        "10",
        "name",
        name);
  }

  @AfterAll
  static void close() {
    index.close();
  }

  private static void stands(boolean west, String typed) {
    LookUp answer = index.find(typed);
    assertEquals(Grade.EXACT, answer.grade(), typed + ": " + answer);
    assertEquals(west, answer.matches().get(0).point().lon() < 0.02, typed + ": " + answer);
  }

  @Test
  void withoutDistrictItIsAmbiguous() {
    for (String street : new String[] {"Mill", "Forge", "Weir", "Kiln"}) {
      LookUp answer = index.find("12 " + street + " Lane");
      assertEquals(Outcome.AMBIGUOUS, answer.outcome(), answer.toString());
      assertEquals(2, answer.matches().size());
    }
  }

  @Test
  void aBoundaryOfAPostcodeDecides() {
    stands(true, "12 Mill Lane, 00101");
    stands(false, "00202, Mill Lane 12");
  }

  @Test
  void aBoundaryOfADistrictDecides() {
    stands(true, "12 Forge Lane, Westend");
    stands(false, "12 forge ln eastend");
  }

  @Test
  void theDistrictTaggedOnTheHouseDecides() {
    stands(true, "12 Weir Lane, Upton, Netherby");
    stands(false, "12 Weir Lane, Downton");
  }

  @Test
  void thePostcodeOfTheHousesAroundDecides() {
    stands(true, "12 Kiln Lane, 00303");
    stands(false, "12 Kiln Lane 00404");
  }
}
