package dev.dogleg.arrival;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.itinerary.DaySpread;
import dev.dogleg.time.TimeWindow;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Nobody is told a minute: a span is as wide as the least, inside what was told before. */
class LeastWidthTest {
  private static final int HOUR = 3_600;

  private static TimeWindow told(int leave, int driveSeconds, TimeWindow within) {
    return TimesToTell.onMyWay(
            "v", driveSeconds, leave, within, DaySpread.STARTER, SpanTerms.ON_MY_WAY)
        .arriveWithin();
  }

  @ParameterizedTest
  @CsvSource({"9, 60", "9, 1200", "10, 60", "10, 600", "10, 1500"})
  void aVanThatIsEarlyIsToldTheLeastWidthFromTheStart(int hour, int driveSeconds) {
    // Told 10:30-11:30; the van may be there an hour and a half before it begins.
    TimeWindow within = new TimeWindow(10 * HOUR + 1_800, 11 * HOUR + 1_800);
    TimeWindow span = told(hour * HOUR, driveSeconds, within);
    assertEquals(within.fromSeconds(), span.fromSeconds());
    assertTrue(
        span.toSeconds() - span.fromSeconds() >= SpanTerms.ON_MY_WAY.leastWidthSeconds(),
        span.toString());
    assertTrue(span.toSeconds() <= within.toSeconds(), span.toString());
  }

  @Test
  void whatWasToldBeforeIsTheWidestSpan() {
    TimeWindow within = new TimeWindow(10 * HOUR, 10 * HOUR + 600);
    assertEquals(within, told(9 * HOUR, 60, within));
  }
}
