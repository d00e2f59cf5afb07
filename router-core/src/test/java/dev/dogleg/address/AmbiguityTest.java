package dev.dogleg.address;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.model.GeoPoint;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two towns with one street name: never a silent pick. */
class AmbiguityTest {
  @TempDir static Path folder;
  private static AddressIndex index;

  @BeforeAll
  static void open() throws Exception {
    SmallMap map = new SmallMap();
    map.box(-500, -500, 2000, 500, town("Netherby", "00101"));
    map.box(9500, -500, 12000, 500, town("Overby", "00202"));
    map.street("Mill Lane", 0, 400, 0);
    map.street("Mill Lane", 10000, 10400, 0);
    map.house(20, 15, "12", "Mill Lane");
    map.house(10020, 15, "12", "Mill Lane");
    map.house(60, 15, "14", "Mill Lane");
    map.house(10080, 15, "13", "Mill Lane");
    map.house(10160, 15, "17", "Mill Lane");
    // One address on two objects, 20 m apart: one door; another pair 60 m apart: two doors.
    map.house(200, 15, "30", "Mill Lane");
    map.house(220, 15, "30", "Mill Lane");
    map.house(300, 15, "40", "Mill Lane");
    map.house(360, 15, "40", "Mill Lane");
    index = map.open(folder);
  }

  private static String[] town(String name, String postcode) {
    return new String[] {
      "boundary", "administrative", "admin_level", "8", "name", name, "postal_code", postcode
    };
  }

  @AfterAll
  static void close() {
    index.close();
  }

  @Test
  void oneNumberInTwoTownsIsAmbiguous() {
    LookUp answer = index.find("12 Mill Lane");
    assertEquals(Outcome.AMBIGUOUS, answer.outcome());
    assertEquals(Grade.NONE, answer.grade());
    assertEquals(2, answer.matches().size());
    assertTrue(answer.reason().contains("several towns"), answer.reason());
  }

  @Test
  void townOrPostcodeDecides() {
    assertEquals("Overby", index.find("12 Mill Lane, Overby").matches().get(0).town());
    assertEquals("Netherby", index.find("Mill Lane 12, 00101").found().orElseThrow().town());
    assertEquals(
        "Overby",
        index
            .find(new AddressQuery("12 Mill Lane", "", "overby", List.of()))
            .found()
            .orElseThrow()
            .town());
    assertEquals(
        "Netherby",
        index
            .find(new AddressQuery("12 Mill Lane", "00101", "", List.of()))
            .found()
            .orElseThrow()
            .town());
  }

  @Test
  void otherClientsRankButDoNotDecide() {
    // Degrees: 10 000 m are 0.1 here.
    List<GeoPoint> east = List.of(new GeoPoint(0.001, 0.1), new GeoPoint(0, 0.11));
    LookUp answer = index.find(AddressQuery.of("12 Mill Lane").near(east));
    assertEquals(Outcome.AMBIGUOUS, answer.outcome());
    assertEquals("Overby", answer.matches().get(0).town());
    assertTrue(
        answer.matches().get(0).metresFromClients() < answer.matches().get(1).metresFromClients());
    assertTrue(
        answer.reason().endsWith("; nearest to the book's other clients first"), answer.reason());
    assertFalse(index.find("12 Mill Lane").reason().contains("clients"));
    List<GeoPoint> west = List.of(new GeoPoint(0, 0));
    assertEquals(
        "Netherby", index.find(AddressQuery.of("12 Mill Lane").near(west)).matches().get(0).town());
  }

  @Test
  void aHouseInOneTownIsNotTakenForAnother() {
    LookUp answer = index.find("14 Mill Lane, Overby");
    assertTrue(answer.grade() != Grade.EXACT, answer.reason());
    assertTrue(answer.matches().stream().allMatch(match -> match.grade() != Grade.EXACT));
  }

  @Test
  void aTownOffTheMapIsNoneAndShowsWhatComesNearest() {
    LookUp answer = index.find("14 Mill Lane, Faraway");
    assertEquals(Outcome.NONE, answer.outcome());
    assertEquals("Netherby", answer.matches().get(0).town());
    assertEquals(Grade.NONE, answer.matches().get(0).grade());
  }

  @Test
  void aKnownNumberHereAndALikelyOneThereIsAmbiguous() {
    // 15 is on the map nowhere: between 13 and 17 in Overby, across from 14 and 30 in Netherby.
    assertEquals(Outcome.AMBIGUOUS, index.find("15 Mill Lane").outcome());
    // 14 is known in Netherby, and no even numbers stand around it in Overby.
    assertEquals(Grade.EXACT, index.find("14 Mill Lane").grade());
    // 15 in Netherby would be across the street; in Overby its own side vouches for it.
    assertEquals(Grade.INTERPOLATED, index.find("15 Mill Lane, Overby").grade());
  }

  @Test
  void aPostcodeWithOneWrongDigitIsForgivenAndSaid() {
    LookUp answer = index.find("14 Mill Lane, 00107");
    assertEquals(Grade.EXACT, answer.grade(), answer.reason());
    assertTrue(answer.reason().contains("another postcode"), answer.reason());
    assertEquals(Outcome.NONE, index.find("14 Mill Lane, 99999").outcome());
  }

  @Test
  void objectsThatStandTogetherAreOneDoorOthersAreTwo() {
    assertEquals(Grade.EXACT, index.find("30 Mill Lane").grade());
    LookUp answer = index.find("40 Mill Lane, Netherby");
    assertEquals(Outcome.AMBIGUOUS, answer.outcome());
    assertTrue(answer.reason().contains("several places"), answer.reason());
  }
}
