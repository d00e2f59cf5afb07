package dev.dogleg.arrival;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.itinerary.DaySpread;
import dev.dogleg.time.TimeWindow;
import org.junit.jupiter.api.Test;

/** The span told when the van leaves for a door. */
class OnMyWayTest {
  private static final int LEFT = 10 * 3_600 + 40 * 60;

  private static TimeToTell told(int driveMinutes, TimeWindow within) {
    return TimesToTell.onMyWay(
        "door", 60 * driveMinutes, LEFT, within, DaySpread.STARTER, SpanTerms.ON_MY_WAY);
  }

  @Test
  void itIsTwentyToThirtyMinutesWideAndNotPast() {
    for (int drive = 1; drive <= 30; drive++) {
      TimeToTell span = told(drive, TimeWindow.ALWAYS);
      int width = span.arriveWithin().toSeconds() - span.arriveWithin().fromSeconds();
      String said = drive + " min: " + span;
      assertTrue(width >= 1_200 && width <= 1_800, said);
      assertTrue(span.arriveWithin().fromSeconds() >= LEFT, said);
      assertTrue(span.keptPermille() >= 950 && span.atTarget(), said);
    }
  }

  @Test
  void itStaysWithinWhatWasTold() {
    TimeWindow told = new TimeWindow(10 * 3_600 + 1_800, 11 * 3_600);
    assertEquals(new TimeWindow(LEFT, 11 * 3_600), told(7, told).arriveWithin());
  }

  @Test
  void itSaysWhereWhatWasToldEndsTooEarly() {
    TimeToTell span = told(20, new TimeWindow(10 * 3_600 + 1_800, 10 * 3_600 + 3_300));
    assertFalse(span.atTarget());
    assertEquals(10 * 3_600 + 3_300, span.arriveWithin().toSeconds());
    assertTrue(span.keptPermille() < 100, span.toString());
  }
}
