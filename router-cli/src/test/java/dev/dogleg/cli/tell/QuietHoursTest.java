package dev.dogleg.cli.tell;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.ZonedDateTime;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** 47 CFR 64.1200(c)(1): not before 8 and not after 21 by the called party's local time. */
class QuietHoursTest {
  @ParameterizedTest
  @CsvSource({
    "2027-03-01T07:59:59, 2027-03-01T08:00:00",
    "2027-03-01T08:00:00, 2027-03-01T08:00:00",
    "2027-03-01T21:00:00, 2027-03-01T21:00:00",
    "2027-03-01T21:00:01, 2027-03-02T08:00:00",
    "2027-02-28T23:30:00, 2027-03-01T08:00:00",
    "2027-03-01T00:00:00, 2027-03-01T08:00:00",
    // The clocks go forward in the night of 14 March 2027 (Energy Policy Act of 2005: second
    // Sunday of March): eight o'clock is eight o'clock all the same.
    "2027-03-13T22:00:00, 2027-03-14T08:00:00",
  })
  void textsGoOutBetweenEightAndNine(String wanted, String expected) {
    String zone = "[America/New_York]";
    ZonedDateTime next = QuietHours.next(zoned(wanted, zone));
    assertEquals(zoned(expected, zone), next);
  }

  @ParameterizedTest
  @CsvSource({
    "2027-03-14T12:00:00Z, 2027-03-14T12:00:00Z",
    "2027-03-14T11:59:00Z, 2027-03-14T12:00:00Z"
  })
  void theClockIsThatOfTheOwner(String wanted, String expected) {
    // On 14 March 2027 New York is at UTC-4: eight there is twelve in Greenwich.
    ZonedDateTime there =
        ZonedDateTime.parse(wanted).withZoneSameInstant(java.time.ZoneId.of("America/New_York"));
    assertEquals(ZonedDateTime.parse(expected).toInstant(), QuietHours.next(there).toInstant());
  }

  private static ZonedDateTime zoned(String local, String zone) {
    return java.time.LocalDateTime.parse(local)
        .atZone(java.time.ZoneId.of(zone.substring(1, zone.length() - 1)));
  }
}
