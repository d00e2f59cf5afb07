package dev.dogleg.cli.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.model.WallSpan;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HoursGrammarTest {

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "7:00-20:00, 7, 20",
    "07:00-20:00, 7, 20",
    "7:00-19:00, 7, 19",
    "7-20, 7, 20",
    "8:00-18:00, 8, 18",
    "8-6pm, 8, 18",
    "8am-6pm, 8, 18",
    "9-13, 9, 13",
  })
  void aShiftIsNeverShorterThanItWasWritten(String cell, int fromHour, int toHour) {
    WallSpan span = HoursGrammar.read(cell).value().orElseThrow();
    assertEquals(fromHour * 3600, span.fromSeconds(), cell);
    assertEquals(toHour * 3600, span.toSeconds(), cell);
    assertTrue(HoursGrammar.read("20:00-7:00").value().isEmpty(), "backwards");
  }
}
