package dev.dogleg.address;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import dev.dogleg.fault.FaultException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A small sample of the ledger's run on real extracts, which the extracts' own tags judge. The
 * whole run: {@link AddressLedger}.
 */
class RealAddressesTest {
  private static final int SAMPLE = 80;

  @TempDir static Path folder;
  private static Path maps;

  @BeforeAll
  static void needsExtracts() {
    maps = Path.of(System.getProperty("dogleg.shared", "")).resolve("maps");
    assumeTrue(Files.isDirectory(maps), "skipped: real map extracts are not here (" + maps + ")");
  }

  @Test
  void ownAddressesAreFoundAndOthersAreNot() {
    System.out.println("RealAddressesTest seed " + AddressTrial.SEED + ", sample " + SAMPLE);
    List<AddressTrial> trials = new ArrayList<>();
    for (Country country : List.of(Country.LI, Country.AD, Country.MC, Country.DE)) {
      trials.add(new AddressTrial(country, maps, folder.resolve("cache")));
    }
    for (AddressTrial trial : trials) {
      try (AddressIndex index = trial.open()) {
        Score plain = trial.plain(index, SAMPLE);
        judge(trial.country + " plain", plain, 99);
        Score varied = new Score();
        trial.varied(index, SAMPLE, varied);
        judge(trial.country + " varied", varied, 97);
        for (String typed : trial.missing(SAMPLE, trials)) {
          LookUp answer = index.find(typed);
          assertTrue(answer.grade() != Grade.EXACT, typed + ": " + answer);
        }
      }
    }
  }

  private static void judge(String what, Score score, double leastPercent) {
    String text = what + ": " + score;
    System.out.println(text);
    String failures = String.join("\n", score.failures);
    assertTrue(score.rightPercent() >= leastPercent, text + "\n" + failures);
    assertEquals(0, score.exactFar, failures);
    assertEquals(0, score.silent, failures);
  }

  @Test
  void housesLeftOutStandBetweenTheirNeighbours() {
    for (Country country : List.of(Country.LI, Country.AD, Country.MC)) {
      AddressTrial trial = new AddressTrial(country, maps, folder.resolve("cache"));
      List<String> failures = new ArrayList<>();
      LeftOut sum = trial.leftOut(SAMPLE, folder, failures);
      System.out.println(country + " left out: " + sum);
      assertTrue(sum.nearPercent() >= 80, country + " " + sum + "\n" + String.join("\n", failures));
    }
  }

  @Test
  void aTruncatedExtractIsAFault() throws Exception {
    byte[] whole = Files.readAllBytes(maps.resolve(Country.MC.extract + ".osm.pbf"));
    for (int bytes : new int[] {10, 3000, whole.length / 2, whole.length - 1}) {
      Path cut = folder.resolve("cut.osm.pbf");
      Files.write(cut, Arrays.copyOf(whole, bytes));
      FaultException fault =
          assertThrows(
              FaultException.class,
              () -> AddressIndex.open(cut, folder.resolve("cut"), IndexProgress.SILENT),
              "cut to " + bytes);
      assertEquals("map-unreadable", fault.faults().get(0).code());
    }
  }
}
