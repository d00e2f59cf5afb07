package dev.dogleg.groom;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.apache.commons.text.similarity.LevenshteinDistance;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Typing errors: textbook cases, and against the text library where no letters are swapped. */
class EditDistanceTest {

  /** Textbook cases; the last is the known limit of optimal string alignment (from memory). */
  @ParameterizedTest
  @CsvSource({
    "poodle, poodle, 0",
    "podole, poodle, 1",
    "poodl, poodle, 1",
    "pooddle, poodle, 1",
    "noodle, poodle, 1",
    "kitten, sitting, 3",
    "ca, abc, 3"
  })
  void countsErrors(String a, String b, int errors) {
    assertEquals(errors, EditDistance.between(a, b));
    assertEquals(errors, EditDistance.between(b, a));
  }

  @Test
  void liesBetweenTheLibrarysCountAndHalfOfIt() {
    LevenshteinDistance library = LevenshteinDistance.getDefaultInstance();
    var breeds = StarterTables.load().breeds();
    for (int i = 0; i + 7 < breeds.size(); i++) {
      String a = Folding.fold(breeds.get(i).name());
      String b = Folding.fold(breeds.get(i + 7).name());
      int ours = EditDistance.between(a, b);
      int theirs = library.apply(a, b);
      assertEquals(true, ours <= theirs && 2 * ours >= theirs, a + " / " + b);
    }
  }
}
