package dev.dogleg.cli.ics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import biweekly.Biweekly;
import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Calendar files after RFC 5545, read back by a parser made by others (biweekly). */
class OwnerCalendarTest {
  private static final Instant NOW = Instant.parse("2027-02-28T12:00:00Z");
  private static final Instant FROM = Instant.parse("2027-03-01T19:30:00Z");
  private static final Instant TO = Instant.parse("2027-03-01T20:00:00Z");

  private static CalendarEntry entry(String key, String title, int changes) {
    return new CalendarEntry(key, FROM, TO, title, "text of " + title, changes);
  }

  private static ICalendar read(String text) {
    List<ICalendar> calendars = Biweekly.parse(text).all();
    assertEquals(1, calendars.size());
    ICalendar calendar = calendars.get(0);
    assertTrue(
        calendar.validate(ICalVersion.V2_0).isEmpty(),
        () -> calendar.validate(ICalVersion.V2_0).toString());
    return calendar;
  }

  @Test
  void anotherParserReadsTheVisit() {
    String text = OwnerCalendar.text("Finch & Fleece", List.of(entry("b1", "Mop", 2)), NOW);
    ICalendar calendar = read(text);
    assertNull(calendar.getMethod());
    VEvent event = calendar.getEvents().get(0);
    assertEquals(FROM, event.getDateStart().getValue().toInstant());
    assertEquals(TO, event.getDateEnd().getValue().toInstant());
    assertEquals(NOW, event.getDateTimeStamp().getValue().toInstant());
    assertEquals("Mop", event.getSummary().getValue());
    assertEquals("text of Mop", event.getDescription().getValue());
    assertEquals(2, event.getSequence().getValue());
    assertTrue(text.contains("DTSTART:20270301T193000Z\r\n"), "UTC needs no time zone");
  }

  @Test
  void aVisitKeepsItsIdentifierAndGivesNobodyAway() {
    String before = uid("Finch", "ada-fenwick.mop@2027-03-01", 0);
    assertEquals(before, uid("Finch", "ada-fenwick.mop@2027-03-01", 3));
    assertNotEquals(before, uid("Finch", "ada-fenwick.mop@2027-03-02", 0));
    assertNotEquals(before, uid("Other", "ada-fenwick.mop@2027-03-01", 0));
    assertTrue(before.matches("[0-9a-f-]{36}"), before);
  }

  private static String uid(String business, String key, int changes) {
    String text = OwnerCalendar.text(business, List.of(entry(key, "x", changes)), NOW);
    return read(text).getEvents().get(0).getUid().getValue();
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void noNameBreaksALine(long seed) {
    Random random = new Random(seed);
    List<String> pieces =
        List.of(
            "a", "ß", "字", "😀", ";", ",", "\\", ":", "\"", "\r\n", "\n", "END:VEVENT", " ", "\t");
    for (int n = 0; n < 200; n++) {
      StringBuilder title = new StringBuilder("x");
      int length = random.nextInt(60);
      for (int i = 0; i < length; i++) {
        title.append(pieces.get(random.nextInt(pieces.size())));
      }
      title.append("x");
      String text = OwnerCalendar.text("F", List.of(entry("k", title.toString(), 0)), NOW);
      String which = "seed " + seed + ", " + title;
      for (String line : text.split("\r\n")) {
        assertTrue(line.getBytes(StandardCharsets.UTF_8).length <= 75, which);
        assertTrue(line.indexOf('\n') < 0 && line.indexOf('\r') < 0, which);
      }
      List<VEvent> events = read(text).getEvents();
      assertEquals(1, events.size(), which);
      assertEquals(
          title.toString().replaceAll("\\p{Cntrl}", " "),
          events.get(0).getSummary().getValue(),
          which);
    }
  }
}
