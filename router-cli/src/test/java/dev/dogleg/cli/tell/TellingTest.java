package dev.dogleg.cli.tell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.cli.told.Occasion;
import dev.dogleg.cli.told.ToldBook;
import dev.dogleg.cli.told.ToldEvent;
import dev.dogleg.cli.told.ToldRow;
import dev.dogleg.fault.Faults;
import dev.dogleg.groom.StarterTables;
import dev.dogleg.model.Client;
import dev.dogleg.model.HowToTell;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Who hears what, told in one line: occasion, span, how, when; or the silence and its reason. */
class TellingTest {
  private static final ZoneId ZONE = ZoneId.of("America/New_York");
  private static final Client NELL = Doors.client("Nell Ottery", HowToTell.TEXT, "+12065550103");
  private static final LocalDate DAY = Doors.DAY;
  private static final int EVENING = 64_800;

  private final List<ToldRow> log = new ArrayList<>();

  private Telling telling(String now) {
    Writer writer =
        new Writer(
            Phrases.of(StarterTables.rows(Phrases.FILE), List.of(), new Faults()), "Finch", "en");
    ZonedDateTime clock = java.time.LocalDateTime.parse(now).atZone(ZONE);
    return new Telling(ToldBook.of(log), writer, clock, EVENING);
  }

  private void told(Occasion occasion, LocalDate date, String span) {
    OffsetDateTime at = OffsetDateTime.parse("2027-02-28T18:00:00-05:00");
    int run = log.size() + 1;
    log.add(
        new ToldRow(
            at,
            ToldEvent.PREPARED,
            run,
            1,
            "c-1",
            Optional.of(
                new ToldRow.Told(
                    List.of("c-1.fern@" + date),
                    date,
                    Doors.span(span),
                    occasion,
                    HowToTell.TEXT,
                    at)),
            "texts.csv"));
  }

  private void answered(ToldEvent event) {
    ToldRow last = log.get(log.size() - 1);
    log.add(new ToldRow(last.written(), event, last.run(), 0, "c-1", last.told(), ""));
  }

  private static String line(Telling telling) {
    if (!telling.silent().isEmpty()) {
      Silence one = telling.silent().get(0);
      return (one.look() ? "look: " : "") + one.why();
    }
    ToTell one = telling.toTell().get(0);
    return "%s %s %s %s"
        .formatted(one.occasion().word(), one.span(), one.how(), one.sendAt().toLocalDateTime());
  }

  private String evening(String now, AtDoor door) {
    Telling telling = telling(now);
    telling.evening(door, Optional.empty());
    return line(telling);
  }

  private String way(String now, AtDoor door) {
    Telling telling = telling(now);
    telling.onMyWay(door);
    return line(telling);
  }

  private static AtDoor promised(String span, String told) {
    return Doors.door(NELL, DAY, span, told, Optional.empty(), false);
  }

  @ParameterizedTest
  @CsvSource({
    "2027-02-20T12:00, 2027-02-28T18:00",
    "2027-02-28T12:00, 2027-02-28T18:00",
    "2027-02-28T19:30, 2027-02-28T19:30",
    "2027-02-28T22:30, 2027-03-01T08:00",
    "2027-03-01T06:00, 2027-03-01T08:00",
  })
  void theEveningBeforeWithinTheHours(String now, String sendAt) {
    assertEquals(
        "evening 10:00-11:00 TEXT " + sendAt, evening(now, Doors.door(NELL, DAY, "10:00-11:00")));
  }

  @Test
  void whatWouldComeAfterTheVisitBeginsIsSaidInstead() {
    AtDoor early = Doors.door(NELL, DAY, "8:00-8:30");
    assertEquals("evening 08:00-08:30 TEXT 2027-02-28T21:00", evening("2027-02-28T21:00", early));
    assertTrue(evening("2027-02-28T21:01", early).startsWith("look: too late to tell"));
    assertTrue(
        way("2027-03-01T07:10", Doors.door(NELL, DAY, "7:15-7:40"))
            .startsWith("look: too late to tell"));
  }

  @ParameterizedTest
  @CsvSource({
    "TEXT, +12065550103, TEXT",
    "TEXT, '', CALL",
    "CALL, +12065550103, CALL",
    "NEIGHBOUR, +12065550103, NEIGHBOUR"
  })
  void howToTellIsRespected(HowToTell tell, String phone, HowToTell how) {
    AtDoor door = Doors.door(Doors.client("Nell", tell, phone), DAY, "10:00-11:00");
    assertEquals(
        "evening 10:00-11:00 " + how + " 2027-02-28T18:00", evening("2027-02-28T12:00", door));
  }

  @Test
  void nobodyHearsNothingAndTheWaitingListIsAgreedFirst() {
    AtDoor door =
        Doors.door(Doors.client("Nell", HowToTell.NOBODY, "+12065550103"), DAY, "10:00-11:00");
    assertEquals("wants to be told nothing", evening("2027-02-28T12:00", door));
    AtDoor plain = Doors.door(NELL, DAY, "10:00-11:00");
    AtDoor waiting =
        new AtDoor(
            plain.bookings(),
            NELL,
            plain.pets(),
            DAY,
            "Marlo",
            plain.arriveWall(),
            plain.span(),
            Optional.empty(),
            false,
            Optional.empty(),
            false);
    assertTrue(evening("2027-02-28T12:00", waiting).startsWith("look: from the waiting list"));
  }

  @Test
  void aStopWordEndsTextsUntilTheOwnerAsksForThem() {
    AtDoor door = Doors.door(NELL, DAY, "10:00-11:00");
    OffsetDateTime at = OffsetDateTime.parse("2027-02-27T12:00:00-05:00");
    log.add(new ToldRow(at, ToldEvent.STOPPED, 0, 0, "c-1", Optional.empty(), ""));
    assertEquals("evening 10:00-11:00 CALL 2027-02-28T18:00", evening("2027-02-28T12:00", door));
    log.add(new ToldRow(at, ToldEvent.RESUMED, 0, 0, "c-1", Optional.empty(), ""));
    assertEquals("evening 10:00-11:00 TEXT 2027-02-28T18:00", evening("2027-02-28T12:00", door));
  }

  @Test
  void whoseTimeDidNotChangeHearsNothingMore() {
    told(Occasion.EVENING, DAY, "10:00-11:00");
    // The plan changed inside what was told: 10:15-10:45 would be narrower still.
    assertEquals(
        "told already: 10:00-11:00",
        evening("2027-02-28T19:00", promised("10:15-10:45", "10:00-11:00")));
    answered(ToldEvent.CONFIRMED);
    assertEquals(
        "told already: 10:00-11:00, confirmed",
        evening("2027-02-28T19:00", promised("10:15-10:45", "10:00-11:00")));
  }

  @Test
  void aToldTimeIsNarrowedNeverMoved() {
    // Told by hand when it was booked: 9-12. The plan's span sticks out on either side.
    assertEquals(
        "evening 09:00-09:45 TEXT 2027-02-28T18:00",
        evening("2027-02-28T12:00", promised("8:45-9:45", "9:00-12:00")));
    assertEquals(
        "evening 11:30-12:00 TEXT 2027-02-28T18:00",
        evening("2027-02-28T12:00", promised("11:30-12:30", "9:00-12:00")));
    assertEquals(
        "look: the plan is not within what was told: 09:00-12:00",
        evening("2027-02-28T12:00", promised("12:15-12:45", "9:00-12:00")));
  }

  @Test
  void aChangedTimeSaysSoOnce() {
    told(Occasion.EVENING, DAY, "10:00-11:00");
    // A person agreed on 13-15 and wrote it into the book: neither lies in the other.
    AtDoor door = promised("13:30-14:00", "13:00-15:00");
    assertEquals("changed 13:30-14:00 TEXT 2027-02-28T19:00", evening("2027-02-28T19:00", door));
    assertEquals(
        "changed 13:30-14:00 TEXT 2027-02-28T18:00",
        evening("2027-02-28T17:30", door),
        "not before the text that it changes");
    told(Occasion.CHANGED, DAY, "13:30-14:00");
    assertEquals(
        "told already: 13:30-14:00",
        evening("2027-02-28T20:00", promised("13:30-14:00", "13:30-14:00")));
  }

  @Test
  void anotherDaySaysSo() {
    told(Occasion.EVENING, DAY, "10:00-11:00");
    Telling telling = telling("2027-02-28T19:00");
    telling.evening(Doors.door(NELL, DAY.plusDays(1), "10:00-11:00"), Optional.of(log.get(0)));
    assertEquals("changed 10:00-11:00 TEXT 2027-02-28T19:00", line(telling));
    // Agreed to any day of that week: told, not asked.
    assertEquals(
        "changed 10:00-11:00 TEXT 2027-02-28T12:00",
        evening(
            "2027-02-28T12:00",
            Doors.door(
                NELL, DAY.plusDays(4), "10:00-11:00", "", Optional.of(DAY.plusDays(2)), false)));
  }

  @Test
  void whoIsToBeAskedIsAskedOnceAndAtOnce() {
    LocalDate other = DAY.plusDays(3);
    AtDoor door = Doors.door(NELL, other, "10:00-11:00", "", Optional.of(DAY), true);
    assertEquals("ask 10:00-11:00 TEXT 2027-02-26T12:00", evening("2027-02-26T12:00", door));
    Telling asking = telling("2027-02-26T12:00");
    asking.evening(door, Optional.empty());
    assertTrue(
        asking.toTell().get(0).message().contains("instead of Monday 1 March"),
        asking.toTell().get(0).message());
    log.add(
        new ToldRow(
            OffsetDateTime.parse("2027-02-26T12:00:00-05:00"),
            ToldEvent.PREPARED,
            1,
            1,
            "c-1",
            Optional.of(asking.toTell().get(0).told()),
            ""));
    assertEquals("asked already, no answer noted yet", evening("2027-02-27T12:00", door));
    answered(ToldEvent.NO_ANSWER);
    assertTrue(evening("2027-02-27T12:00", door).startsWith("look: asked already: no answer"));
    log.remove(1);
    answered(ToldEvent.CONFIRMED);
    assertTrue(evening("2027-02-27T12:00", door).startsWith("look: said yes"));
    // Once the book has the new day, nothing is left to say: it was told with the question.
    AtDoor agreed = Doors.door(NELL, other, "10:00-11:00", "10:00-11:00", Optional.empty(), false);
    assertEquals("told already: 10:00-11:00, confirmed", evening("2027-03-03T12:00", agreed));
  }

  @Test
  void onTheWayTheSpanNarrowsAndLateIsSaid() {
    told(Occasion.EVENING, DAY, "10:00-11:00");
    AtDoor near = promised("10:20-10:40", "10:00-11:00");
    assertEquals("on-my-way 10:20-10:40 TEXT 2027-03-01T10:10", way("2027-03-01T10:10", near));
    AtDoor late = promised("11:05-11:25", "10:00-11:00");
    assertEquals("late 11:05-11:25 TEXT 2027-03-01T10:50", way("2027-03-01T10:50", late));
    told(Occasion.LATE, DAY, "11:05-11:25");
    assertEquals(
        "told already: 11:05-11:25",
        way("2027-03-01T10:55", promised("11:10-11:25", "11:05-11:25")));
    assertEquals(
        "late 11:30-11:50 TEXT 2027-03-01T11:10",
        way("2027-03-01T11:10", promised("11:30-11:50", "11:05-11:25")));
  }

  @Test
  void someDaysHaveNoTwoOClock() {
    // The clocks go forward on 14 March 2027: the evening before is the same hour all the same.
    assertEquals(
        "evening 10:00-11:00 TEXT 2027-03-14T18:00",
        evening("2027-03-13T12:00", Doors.door(NELL, LocalDate.of(2027, 3, 15), "10:00-11:00")));
  }
}
