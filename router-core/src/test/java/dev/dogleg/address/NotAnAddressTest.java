package dev.dogleg.address;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is no address is none, what only looks odd is found. */
class NotAnAddressTest {
  @TempDir static Path folder;
  private static AddressIndex index;

  @BeforeAll
  static void open() throws Exception {
    SmallMap map = new SmallMap();
    map.street("Mill Lane", 0, 400, 0);
    String[] town = {"addr:city", "Netherby", "addr:postcode", "00101", "addr:country", "US"};
    map.house(20, 15, "12", "Mill Lane", town);
    map.house(60, 15, "16", "Mill Lane", town);
    index = map.open(folder);
  }

  @AfterAll
  static void close() {
    index.close();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "opposite the fire station",
        "opposite 12 Mill Lane",
        "near Mill Lane 12",
        "behind the church, blue door",
        "my place",
        "12",
        ",,;()",
        "12 Old Mill Lane",
        "12 Mill Lane West",
        "12 Mill Lane, Faraway",
        "12 Mill Lane, 00101 Netherby, France",
        "12345678901234567890 Nowhere",
        "12 12 12 12 12 12 12 12 12 12 12 12 12 12 12 12 12 12 12 12 12 12 12 12 12 12 12 12 12 12"
            + " 12 12 12 12 12 12 12 12 12 12 12 12 Mill Lane"
      })
  void isNone(String typed) {
    LookUp answer = index.find(typed);
    assertEquals(Outcome.NONE, answer.outcome(), answer.toString());
    assertTrue(answer.matches().stream().allMatch(match -> match.grade() == Grade.NONE));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "12 Mill Lane, behind the church",
        "12 MILL LANE (ring twice, gate 4)",
        "Mrs Quill, 12 Mill Lane, Apt 4B, Netherby 00101, USA",
        "12 Mill Lane\nNetherby\n00101",
        "  12 ,Mill   Lane.;Netherby ",
        "12 Mill Lane Netherby 00101-1234",
        "Netherby, Mill Lane 12",
        "Flat 2, 12 Mill Lane",
        "Ｍill Lane １２"
      })
  void isFound(String typed) {
    LookUp answer = index.find(typed);
    assertEquals(Grade.EXACT, answer.grade(), answer.toString());
    assertEquals("12", answer.matches().get(0).number());
  }

  @Test
  void aStreetWithoutNumberIsAStreet() {
    LookUp answer = index.find("Mill Lane, Netherby");
    assertEquals(Grade.STREET, answer.grade());
    assertEquals("Mill Lane", answer.matches().get(0).street());
  }

  @Test
  void nothingAndFarTooMuchAreNone() {
    assertEquals(Outcome.NONE, index.find("").outcome());
    assertEquals(Outcome.NONE, index.find("\u0000\u0301 ").outcome());
    assertEquals(Outcome.NONE, index.find("x".repeat(AddressQuery.LONGEST + 1)).outcome());
  }
}
