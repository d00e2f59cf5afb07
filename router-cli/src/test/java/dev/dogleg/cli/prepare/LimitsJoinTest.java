package dev.dogleg.cli.prepare;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.dogleg.model.DayLimits;
import dev.dogleg.time.TimeWindow;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Two bookings of one client on one day are one arrival. */
class LimitsJoinTest {
  private static final List<TimeWindow> ANY = List.of(TimeWindow.ALWAYS);

  @Test
  void theCommonTimeHolds() {
    // 9-12 or 15-17, and 11-16: what is left is 11-12 or 15-16.
    DayLimits one =
        new DayLimits(
            List.of(new TimeWindow(32400, 43200), new TimeWindow(54000, 61200)), 70000, ANY, false);
    DayLimits other = new DayLimits(List.of(new TimeWindow(39600, 57600)), 60000, ANY, true);
    assertEquals(
        Optional.of(
            new DayLimits(
                List.of(new TimeWindow(39600, 43200), new TimeWindow(54000, 57600)),
                60000,
                ANY,
                true)),
        LimitsJoin.both(one, other));
  }

  @Test
  void morningAndAfternoonCannotBeOneArrival() {
    DayLimits morning = DayLimits.NONE.arriving(new TimeWindow(0, 43200));
    DayLimits afternoon = DayLimits.NONE.arriving(new TimeWindow(46800, 60000));
    assertEquals(Optional.empty(), LimitsJoin.both(morning, afternoon));
  }
}
