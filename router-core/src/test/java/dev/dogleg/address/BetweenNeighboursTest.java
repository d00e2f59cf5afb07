package dev.dogleg.address;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Where a number stands between its neighbours on streets that are not one plain line. */
class BetweenNeighboursTest {
  @TempDir static Path folder;
  private static AddressIndex index;

  @BeforeAll
  static void open() throws Exception {
    SmallMap map = new SmallMap();
    // A street from west to east with an arm of the same name to the north, as at a junction.
    long junction = map.node(100, 0);
    way(map, "Forked Lane", map.node(0, 0), junction);
    way(map, "Forked Lane", junction, map.node(200, 0));
    way(map, "Forked Lane", junction, map.node(100, 100));
    map.house(20, 15, "1", "Forked Lane");
    map.house(115, 80, "5", "Forked Lane");
    // The mapped street begins 50 m after its first house.
    way(map, "Short Lane", map.node(50, 2000), map.node(200, 2000));
    map.house(0, 2010, "1", "Short Lane");
    map.house(100, 2010, "11", "Short Lane");
    // Two known houses, a kilometre apart.
    way(map, "Long Lane", map.node(0, 4000), map.node(500, 4000), map.node(1000, 4000));
    map.house(0, 4010, "2", "Long Lane");
    map.house(1000, 4010, "22", "Long Lane");
    // A street that leads from house to house only by a way round, over 2 km long.
    way(map, "Loop Lane", map.node(0, 6000), map.node(0, 7000), map.node(60, 7000));
    way(map, "Loop Lane", map.node(60, 7000), map.node(60, 6000));
    map.house(0, 5995, "1", "Loop Lane");
    map.house(60, 5995, "3", "Loop Lane");
    index = map.open(folder);
  }

  private static void way(SmallMap map, String name, long... nodes) {
    map.way(nodes, "highway", "residential", "name", name);
  }

  @AfterAll
  static void close() {
    index.close();
  }

  private static Match found(Grade grade, String typed) {
    LookUp answer = index.find(typed);
    assertEquals(grade, answer.grade(), typed + ": " + answer.reason());
    return answer.matches().get(0);
  }

  private static void assertStands(int east, int north, Match match) {
    assertEquals(east, match.point().lon() * 1e5, 1.0, match.toString());
    assertEquals(north, match.point().lat() * 1e5, 1.0, match.toString());
  }

  @Test
  void aJunctionDoesNotBreakTheStreet() {
    // Feet at 20 and, 80 + 80 = 160 m on, in the arm; half way is the junction itself, and the
    // houses go from 15 m left of the street to 15 m right of it: 0 m off it.
    assertStands(100, 0, found(Grade.INTERPOLATED, "3 Forked Lane"));
  }

  @Test
  void beyondItsMappedEndTheStreetGoesOnStraight() {
    // 3 is 2/10 of the way from 0 to 100, 10 m north of the street.
    assertStands(20, 2010, found(Grade.INTERPOLATED, "3 Short Lane"));
  }

  @Test
  void aWideGapIsBridgedBesideAKnownHouseAndNotInItsMiddle() {
    // 20 is 18/20 of the way, 100 m from 22; 12 would be 500 m from both.
    Match beside = found(Grade.INTERPOLATED, "20 Long Lane");
    assertStands(900, 4010, beside);
    assertTrue(beside.distanceEstimateMetres() > 300, beside.toString());
    found(Grade.STREET, "12 Long Lane");
  }

  @Test
  void aLongWayRoundIsNotTaken() {
    assertStands(30, 5995, found(Grade.INTERPOLATED, "2 Loop Lane"));
  }
}
