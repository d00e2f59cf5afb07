package dev.dogleg.cli.export;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.dogleg.cli.export.OpeningsSheet.Cell;
import dev.dogleg.time.TimeWindow;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Stretches of told times: as a person reads them, and what holds at all doors. */
class OpeningsSheetTest {
  private static final OpeningsSheet.Terms HOUR =
      new OpeningsSheet.Terms(3_600, 900, 300, 80, false, 95);

  private static TimeWindow span(int fromHour, int fromMinute, int toHour, int toMinute) {
    return new TimeWindow(3_600 * fromHour + 60 * fromMinute, 3_600 * toHour + 60 * toMinute);
  }

  private static Cell cell(TimeWindow... spans) {
    return new Cell(true, List.of(spans), true, 0);
  }

  @Test
  void stretchesThatOverlapAreShownApart() {
    // 8:45-9:45 does not hold: nobody may read 8:00-9:30 and 9:00-12:00 as 8:00-12:00.
    assertEquals(
        List.of(span(9, 0, 12, 0)), cell(span(8, 0, 9, 30), span(9, 0, 12, 0)).shown(HOUR));
    // Here an hour is left before the longer one, a quarter hour apart: 7:00-8:45.
    assertEquals(
        List.of(span(7, 0, 8, 45), span(9, 0, 12, 0)),
        cell(span(7, 0, 9, 30), span(9, 0, 12, 0)).shown(HOUR));
    // And after it: 10:15-11:45.
    assertEquals(
        List.of(span(7, 0, 10, 0), span(10, 15, 11, 45)),
        cell(span(7, 0, 10, 0), span(9, 45, 11, 45)).shown(HOUR));
    // Touching ones read as one too.
    assertEquals(
        List.of(span(8, 0, 10, 0)), cell(span(8, 0, 10, 0), span(10, 0, 11, 0)).shown(HOUR));
    assertEquals(
        List.of(span(8, 0, 9, 0), span(10, 0, 11, 0)),
        cell(span(8, 0, 9, 0), span(10, 0, 11, 0)).shown(HOUR));
  }

  @Test
  void whatHoldsAtAllDoorsHoldsAtEach() {
    Cell here = cell(span(8, 0, 12, 0), span(14, 0, 16, 0));
    Cell there = cell(span(9, 0, 10, 0), span(11, 30, 15, 0));
    // 8-12 and 9-10: 9-10. 8-12 and 11:30-15: half an hour, too little. 14-16 and 11:30-15: 14-15.
    assertEquals(cell(span(9, 0, 10, 0), span(14, 0, 15, 0)), here.and(there, 3_600));
    assertEquals(here.and(there, 3_600), there.and(here, 3_600));
    Cell forbidden = new Cell(false, List.of(), false, 60);
    assertEquals(new Cell(false, List.of(), false, 60), here.and(forbidden, 3_600));
  }
}
