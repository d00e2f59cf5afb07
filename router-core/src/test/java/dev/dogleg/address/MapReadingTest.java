package dev.dogleg.address;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is read from relations and boundaries, and the scratch files behind it. */
class MapReadingTest {
  @TempDir Path folder;

  @Test
  void aBuildingOfSeveralOutlinesIsAHouse() throws IOException {
    SmallMap map = new SmallMap();
    long outer = map.box(0, 0, 40, 40);
    long inner = map.box(10, 10, 30, 30);
    map.relation(
        new String[] {"w" + outer + ":outer", "w" + inner + ":inner"},
        "type",
        "multipolygon",
        "building",
        "yes",
        "addr:housenumber",
        "5",
        "addr:street",
        "Court Lane");
    try (AddressIndex index = map.open(folder)) {
      Match match = index.find("5 Court Lane").found().orElseThrow();
      assertEquals("0.000200,0.000200", match.point().toString());
      assertTrue(match.source().startsWith("relation "), match.source());
      // Half the diagonal of 40 by 40 m.
      assertEquals(31, match.distanceEstimateMetres(), 1);
    }
  }

  @Test
  void aHouseTakesItsStreetFromARelation() throws IOException {
    SmallMap map = new SmallMap();
    long named = map.node(0, 0, "addr:housenumber", "5");
    long unnamed = map.box(100, 0, 120, 20, "addr:housenumber", "7");
    long street = map.street("Heather Road", 0, 300, 50);
    map.relation(
        new String[] {"n" + named + ":house"}, "type", "associatedStreet", "name", "Gorse Road");
    map.relation(
        new String[] {"w" + unnamed + ":house", "w" + street + ":street"},
        "type",
        "associatedStreet");
    try (AddressIndex index = map.open(folder)) {
      assertEquals(Grade.EXACT, index.find("5 Gorse Road").grade());
      assertEquals(Grade.EXACT, index.find("7 Heather Road").grade());
    }
  }

  @Test
  void aStreetIsFoundUnderItsOtherNamesAndSoAreItsHouses() throws IOException {
    SmallMap map = new SmallMap();
    long[] nodes = {map.node(0, 0), map.node(200, 0)};
    map.way(
        nodes,
        "highway",
        "residential",
        "name",
        "Mill Lane",
        "old_name",
        "Sheep Walk;Drovers Way",
        "name:fr",
        "Rue du Moulin");
    map.house(50, 10, "4", "Mill Lane");
    try (AddressIndex index = map.open(folder)) {
      for (String typed : new String[] {"4 Sheep Walk", "4 drovers way", "4, rue du Moulin"}) {
        Match match = index.find(typed).found().orElseThrow();
        assertEquals(Grade.EXACT, match.grade());
        assertEquals("Mill Lane", match.street());
      }
    }
  }

  @Test
  void aTownWithAHoleDoesNotHoldTheTownInIt() {
    long[] outer = ring(0, 0, 1000);
    long[] inner = ring(400, 400, 600);
    Areas areas = new Areas();
    TreeMap<String, String> tags = new TreeMap<>();
    tags.put("name", "Ringham");
    tags.put("boundary", "administrative");
    tags.put("admin_level", "8");
    areas.add(tags, java.util.List.of(outer), java.util.List.of(inner), true);
    areas.seal();
    assertEquals("Ringham", areas.at(NodePlaces.pack(0.001, 0.001)).town());
    assertEquals("", areas.at(NodePlaces.pack(0.005, 0.005)).town());
    assertEquals("", areas.at(NodePlaces.pack(0.011, 0.005)).town());
  }

  private static long[] ring(int west, int south, int size) {
    double w = west * 1e-5;
    double s = south * 1e-5;
    double e = size * 1e-5;
    return new long[] {
      NodePlaces.pack(s, w),
      NodePlaces.pack(s, e),
      NodePlaces.pack(e, e),
      NodePlaces.pack(e, w),
      NodePlaces.pack(s, w)
    };
  }

  @Test
  void aBoundaryCutByTheExtractEnclosesNothing() {
    long[] open = {NodePlaces.pack(0, 0), NodePlaces.pack(0, 1), NodePlaces.pack(1, 1)};
    assertNull(Rings.area(java.util.List.of(open), java.util.List.of()));
  }

  @Test
  void runsOnDiskSortLikeASet() throws IOException {
    long seed = 5;
    System.out.println("MapReadingTest seed " + seed);
    SplittableRandom random = new SplittableRandom(seed);
    for (int round = 0; round < 20; round++) {
      Path scratch = Files.createDirectory(folder.resolve("runs" + round));
      SortedRuns runs = new SortedRuns(scratch, 16);
      TreeSet<Long> set = new TreeSet<>();
      int count = random.nextInt(200);
      for (int i = 0; i < count; i++) {
        long value = random.nextLong(-50, 5000);
        runs.add(value);
        set.add(value);
      }
      MappedLongs merged = runs.merge("all");
      assertEquals(set.size(), merged.size());
      long at = 0;
      for (long value : set) {
        assertEquals(value, merged.get(at));
        assertEquals(at++, merged.find(value));
      }
      assertEquals(-1, merged.find(9999));
    }
  }

  @Test
  void placesOfPointsComeBackWhateverTheOrderOfTheFile() throws IOException {
    long seed = 6;
    System.out.println("MapReadingTest seed " + seed);
    SplittableRandom random = new SplittableRandom(seed);
    for (boolean sorted : new boolean[] {true, false}) {
      NodePlaces places = new NodePlaces(Files.createDirectory(folder.resolve("p" + sorted)), 32);
      TreeMap<Long, double[]> wanted = new TreeMap<>();
      for (int i = 0; i < 300; i++) {
        long id = random.nextLong(1, 2000);
        places.want(id);
        wanted.put(id, new double[] {random.nextDouble(-90, 90), random.nextDouble(-180, 180)});
      }
      places.seal();
      java.util.List<Long> order = new java.util.ArrayList<>();
      for (long id = 1; id < 1900; id++) {
        order.add(id);
      }
      if (!sorted) {
        for (int i = order.size() - 1; i > 0; i--) {
          java.util.Collections.swap(order, i, random.nextInt(i + 1));
        }
      }
      for (long id : order) {
        double[] place = wanted.getOrDefault(id, new double[2]);
        places.put(id, place[0], place[1]);
      }
      wanted.forEach(
          (id, place) -> {
            long packed = places.packed(id);
            if (id < 1900) {
              assertEquals(place[0], NodePlaces.lat(packed), 1e-7);
              assertEquals(place[1], NodePlaces.lon(packed), 1e-7);
            } else {
              assertEquals(0, packed);
            }
          });
    }
  }
}
