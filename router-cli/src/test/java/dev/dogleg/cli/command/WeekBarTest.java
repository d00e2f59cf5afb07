package dev.dogleg.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** What stands beside the bar while a week is planned. */
class WeekBarTest {
  /** One minute of driving. */
  private static final long MINUTE = 3_600;

  @Test
  void bestAndBound() {
    assertEquals("best: 3 out, bound: 1", WeekBar.text(3, 50 * MINUTE, 1, 0));
    assertEquals(0, WeekBar.percent(3, 50 * MINUTE, 1, 0));
    assertEquals(
        "best: 127 min, bound: 124", WeekBar.text(0, 127 * MINUTE, 0, 124 * MINUTE + 3_599));
    assertEquals("best: 2 out, 127 min, bound: 0", WeekBar.text(2, 127 * MINUTE, 2, 0));
    assertEquals(97, WeekBar.percent(0, 127 * MINUTE, 0, 124 * MINUTE));
    assertEquals(100, WeekBar.percent(0, 0, 0, 0));
  }
}
