package dev.dogleg.address;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.model.GeoPoint;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The landmarks of the invented town. */
class SampleMapLookUpTest {
  @TempDir static Path folder;
  private static AddressIndex index;
  private static List<String[]> landmarks;

  @BeforeAll
  static void open() throws Exception {
    Path sample = Path.of(System.getProperty("dogleg.root")).resolve("maps-sample");
    index = AddressIndex.open(sample.resolve("brindlewick.osm.pbf"), folder, IndexProgress.SILENT);
    landmarks =
        Files.readAllLines(sample.resolve("landmarks.csv")).stream()
            .skip(1)
            .map(line -> line.split(",", -1))
            .toList();
  }

  @AfterAll
  static void close() {
    index.close();
  }

  private static String[] landmark(String name) {
    return landmarks.stream().filter(cells -> cells[0].equals(name)).findFirst().orElseThrow();
  }

  private static GeoPoint place(String[] landmark) {
    return new GeoPoint(Double.parseDouble(landmark[1]), Double.parseDouble(landmark[2]));
  }

  @Test
  void everyLandmarkWithAnAddressIsFoundThere() {
    int count = 0;
    for (String[] landmark : landmarks) {
      if (!landmark[4].isEmpty()) {
        count++;
        LookUp answer = index.find(landmark[4]);
        assertEquals(Outcome.FOUND, answer.outcome(), landmark[0] + ": " + answer);
        double metres = answer.matches().get(0).point().metresTo(place(landmark));
        assertTrue(metres <= 25, landmark[0] + " is " + metres + " m off: " + answer);
      }
    }
    assertTrue(count >= 14, "landmarks with an address: " + count);
  }

  @Test
  void theAddressInTownAndVillageIsAmbiguousUntilThePlaceIsSaid() {
    LookUp answer = index.find("12 Mill Ln");
    assertEquals(Outcome.AMBIGUOUS, answer.outcome(), answer.toString());
    GeoPoint village = place(landmark("ambiguous_village"));
    LookUp ranked = index.find(AddressQuery.of("12 Mill Ln").near(List.of(village)));
    assertEquals(Outcome.AMBIGUOUS, ranked.outcome());
    assertTrue(ranked.matches().get(0).point().metresTo(village) <= 25);
  }

  @Test
  void theNumberOnAnInterpolationWayIsGradedSo() {
    LookUp answer = index.find(landmark("interpolation_only")[4]);
    assertEquals(Grade.INTERPOLATED, answer.grade(), answer.toString());
  }

  @Test
  void peopleTypeItOtherwise() {
    String[][] typed = {
      {"german", "lindenstr. 101, Neulinden"},
      {"german", "101 LINDENSTRASSE NEULINDEN"},
      {"german_long", "Buergermeister Koehler Str 101, Neulinden"},
      {"german_long", "Burgermeister-Kohler-Strase 101"},
      {"spanish", "paseo jose nunez 101, las garzas"},
      {"french", "1 rue du general crepin, Saint-Orfrais"},
      {"ordinal", "101 N Ninth St, Northfield"},
      {"ordinal", "101 N. 9th Steret"},
      {"direction_lane", "101 W Mill Ln, Tanners Row"},
      {"suffix", "1 A Lark Cl., Westover"},
      {"hyphen", "30–01 Forty-Fifth Rd, Apt 4, Halyard"}
    };
    for (String[] pair : typed) {
      LookUp answer = index.find(pair[1]);
      assertEquals(Grade.EXACT, answer.grade(), pair[1] + ": " + answer);
      double metres = answer.matches().get(0).point().metresTo(place(landmark(pair[0])));
      assertTrue(metres <= 25, pair[1] + " is " + metres + " m off: " + answer);
    }
  }

  /** The example of docs/ADDRESSES.md. */
  @Test
  void theExampleOfThePageRuns() {
    Path mapFile =
        Path.of(System.getProperty("dogleg.root")).resolve("maps-sample/brindlewick.osm.pbf");
    Path cacheFolder = folder;
    StringBuilder out = new StringBuilder();
    // example-begin
    try (AddressIndex index = AddressIndex.open(mapFile, cacheFolder, IndexProgress.SILENT)) {
      LookUp answer = index.find("lindenstr. 101, Neulinden");
      for (Match match : answer.matches()) {
        out.append(match.grade() + " " + match.address() + " " + match.point() + "\n");
      }
      out.append(answer.outcome() + ": " + answer.reason() + "\n");
    }
    // example-end
    assertEquals(
        """
        EXACT Lindenstraße 101, BRW 108 Brindlewick -48.896618,-123.418238
        FOUND: an outline of the map bears this number and street
        """,
        out.toString());
  }
}
