package dev.dogleg.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.dogleg.cli.command.DoorWords.PlannedDoor;
import java.util.List;
import org.junit.jupiter.api.Test;

class DoorWordsTest {
  private static final DoorWords WORDS =
      new DoorWords(
          List.of(
              new PlannedDoor("Nell Ottery", "Fern", List.of("nell-ottery.fern@2027-03-01")),
              new PlannedDoor("Hob Marchbank", "Tansy;Pip", List.of("b-2")),
              new PlannedDoor("Joss Tarn", "Pip", List.of("b-3", "b-4"))));

  @Test
  void oneNumberAloneMeansSoManyFirstDoors() {
    assertEquals(List.of(0, 1), WORDS.done("2"));
    assertEquals(List.of(), WORDS.done("0"));
    assertEquals(List.of(2, 0), WORDS.done("3, 1"));
    assertEquals(List.of(1), WORDS.named("2"));
  }

  @Test
  void namesIdsAndPetsWillDo() {
    assertEquals(List.of(0, 1, 2), WORDS.named("nell  ottery; TANSY, b-4"));
    assertEquals(List.of(2), WORDS.done("tarn"));
    assertEquals(List.of(0), WORDS.named("Fern,nell,1"));
  }

  @Test
  void whatNamesNoDoorOrSeveralIsSaid() {
    assertSays("\"pip\" names several doors of 2 Hob Marchbank, 3 Joss Tarn", "pip");
    assertSays("\"Ada\" names no door of 1 Nell Ottery, 2 Hob Marchbank, 3 Joss Tarn", "Ada");
    assertSays("the day has 3 doors, not 4", "4");
  }

  private static void assertSays(String message, String words) {
    assertEquals(
        message,
        assertThrows(IllegalArgumentException.class, () -> WORDS.done(words)).getMessage());
  }
}
