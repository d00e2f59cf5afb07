package dev.dogleg.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.time.TimeWindow;
import dev.dogleg.time.WorkDay;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Limits by weekday and wall clock, on given days. */
class WhenTest {
  private static final ZoneId NEW_YORK = ZoneId.of("America/New_York");
  private static final WorkDay TUESDAY = new WorkDay(LocalDate.of(2027, 3, 2), NEW_YORK);

  private static WallSpan span(int fromHour, int toHour) {
    return new WallSpan(fromHour * 3600, toHour * 3600);
  }

  private static WhenChoice arrive(Set<DayOfWeek> days, WallSpan span) {
    return new WhenChoice(days, span, WallSpan.OPEN, List.of(WallSpan.ALWAYS), false);
  }

  @Test
  void choicesOfADayAreJoinedAndOthersLeftOut() {
    When when =
        new When(
            List.of(
                arrive(Set.of(DayOfWeek.TUESDAY), span(14, 16)),
                arrive(Set.of(DayOfWeek.TUESDAY), span(9, 12)),
                arrive(Set.of(DayOfWeek.TUESDAY), span(11, 13)),
                arrive(Set.of(DayOfWeek.THURSDAY), span(8, 9))));
    assertEquals(
        List.of(new TimeWindow(9 * 3600, 13 * 3600), new TimeWindow(14 * 3600, 16 * 3600)),
        when.on(TUESDAY).orElseThrow().arriveWithin());
    assertTrue(when.on(new WorkDay(LocalDate.of(2027, 3, 3), NEW_YORK)).isEmpty());
  }

  @Test
  void noLimitStaysNoLimit() {
    assertEquals(DayLimits.NONE, When.ANY.on(TUESDAY).orElseThrow());
  }

  /**
   * 14 March 2027: clocks go from 2:00 to 3:00 (US rule since 2007), so 9:00 is 8 hours after
   * midnight.
   */
  @Test
  void wallClockIsKeptOnTheDayTheClocksChange() {
    WorkDay spring = new WorkDay(LocalDate.of(2027, 3, 14), NEW_YORK);
    assertEquals(new TimeWindow(8 * 3600, 11 * 3600), span(9, 12).on(spring));
    assertEquals(23 * 3600, WallSpan.elapsed(WallSpan.MIDNIGHT, spring));
    WorkDay autumn = new WorkDay(LocalDate.of(2027, 11, 7), NEW_YORK);
    assertEquals(new TimeWindow(10 * 3600, 13 * 3600), span(9, 12).on(autumn));
    assertEquals(25 * 3600, WallSpan.elapsed(WallSpan.MIDNIGHT, autumn));
  }

  /** 2:30 does not exist that day and is read as 3:30, after 3:00: the span must not turn round. */
  @Test
  void aSpanInTheMissingHourDoesNotRunBackwards() {
    WorkDay spring = new WorkDay(LocalDate.of(2027, 3, 14), NEW_YORK);
    TimeWindow window = new WallSpan(9_000, 10_800).on(spring);
    assertTrue(window.fromSeconds() <= window.toSeconds());
  }

  @Test
  void whatCannotHoldIsNoChoice() {
    assertThrows(
        IllegalArgumentException.class,
        () -> new WhenChoice(Set.of(), span(16, 17), 15 * 3600, List.of(WallSpan.ALWAYS), false));
    assertThrows(
        IllegalArgumentException.class,
        () -> new WhenChoice(Set.of(), span(9, 12), WallSpan.OPEN, List.of(span(13, 16)), false));
    WhenChoice first =
        new WhenChoice(Set.of(), span(9, 12), WallSpan.OPEN, List.of(WallSpan.ALWAYS), true);
    assertThrows(
        IllegalArgumentException.class,
        () -> new When(List.of(first, arrive(Set.of(DayOfWeek.MONDAY), span(9, 12)))));
  }

  @Test
  void worthTurnsAPriceIntoSeconds() {
    Worth worth = new Worth(20, 20, 120, 0, 0, 4_500, 3_600);
    assertEquals(5_200, worth.waitingSeconds(java.util.OptionalLong.of(6_500)), "65 / 45 hours");
    assertEquals(3_600, worth.waitingSeconds(java.util.OptionalLong.empty()));
    assertEquals(
        1_000_000_000L, worth.waitingSeconds(java.util.OptionalLong.of(Long.MAX_VALUE)), "capped");
  }
}
