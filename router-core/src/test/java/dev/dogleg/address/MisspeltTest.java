package dev.dogleg.address;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.SplittableRandom;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Typing errors are read through, said, and never lead to another street in silence. */
class MisspeltTest {
  private static final String[] STREETS = {
    "Thornapple Lane",
    "Cooper Street",
    "Copper Street",
    "201st Street",
    "203rd Street",
    "West Dyke Road",
    "Rue de la Fontaine",
    "Bürgermeisterweg"
  };

  @TempDir static Path folder;
  private static AddressIndex index;

  @BeforeAll
  static void open() throws Exception {
    SmallMap map = new SmallMap();
    for (int i = 0; i < STREETS.length; i++) {
      map.street(STREETS[i], 0, 400, 1000 * i);
      map.house(100, 1000 * i + 15, "7", STREETS[i], "addr:city", "Netherby");
    }
    index = map.open(folder);
  }

  @AfterAll
  static void close() {
    index.close();
  }

  private static void reads(String typed, String street) {
    LookUp answer = index.find(typed);
    assertEquals(Grade.EXACT, answer.grade(), typed + ": " + answer);
    assertEquals(street, answer.matches().get(0).street());
    assertFalse(answer.matches().get(0).spelledAsTyped());
    assertTrue(answer.reason().contains("street read as " + street), answer.reason());
  }

  @Test
  void oneOrTwoErrorsAreReadThroughAndSaid() {
    reads("7 Thornaple Lane", "Thornapple Lane");
    reads("7 Thronapple Lnae", "Thornapple Lane");
    reads("Burgermiesterweg 7", "Bürgermeisterweg");
    reads("7 Rue de la Fontane, Netherby", "Rue de la Fontaine");
    reads("7, rue de la Fontiane", "Rue de la Fontaine");
  }

  @Test
  void aNameThatMayBeTwoStreetsIsAmbiguous() {
    LookUp answer = index.find("7 Coper Street");
    assertEquals(Outcome.AMBIGUOUS, answer.outcome(), answer.toString());
    assertEquals(2, answer.matches().size());
    assertTrue(answer.reason().contains("several streets"), answer.reason());
  }

  @Test
  void digitsKindAndDirectionAreNeverCorrected() {
    for (String typed :
        new String[] {
          "7 202nd Street",
          "7 20st Street",
          "7 East Dyke Road",
          "7 Thornapple Road",
          "7 Cooper Lane"
        }) {
      LookUp answer = index.find(typed);
      assertEquals(Outcome.NONE, answer.outcome(), typed + ": " + answer);
    }
  }

  @Test
  void threeErrorsAreTooMany() {
    assertEquals(Outcome.NONE, index.find("7 Thrnaple Lne").outcome());
  }

  @Test
  void errorsAreCountedAsTheDefinitionSays() {
    // Reference: the recursive definition of optimal string alignment, on short random words.
    long seed = 11;
    System.out.println("MisspeltTest seed " + seed);
    SplittableRandom random = new SplittableRandom(seed);
    for (int i = 0; i < 2000; i++) {
      String a = word(random);
      String b = word(random);
      int reference = Math.min(3, defined(a, b));
      assertEquals(reference, Letters.typingErrors(a, b, 2), a + " " + b);
    }
  }

  private static String word(SplittableRandom random) {
    StringBuilder word = new StringBuilder();
    for (int i = random.nextInt(7); i > 0; i--) {
      word.append((char) ('a' + random.nextInt(3)));
    }
    return word.toString();
  }

  private static int defined(String a, String b) {
    if (a.isEmpty() || b.isEmpty()) {
      return a.length() + b.length();
    }
    String restA = a.substring(1);
    String restB = b.substring(1);
    int best = defined(restA, restB) + (a.charAt(0) == b.charAt(0) ? 0 : 1);
    best = Math.min(best, defined(restA, b) + 1);
    best = Math.min(best, defined(a, restB) + 1);
    if (a.length() > 1
        && b.length() > 1
        && a.charAt(0) == b.charAt(1)
        && a.charAt(1) == b.charAt(0)) {
      best = Math.min(best, defined(a.substring(2), b.substring(2)) + 1);
    }
    return best;
  }
}
