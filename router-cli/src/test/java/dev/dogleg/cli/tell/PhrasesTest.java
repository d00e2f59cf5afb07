package dev.dogleg.cli.tell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.cli.told.Occasion;
import dev.dogleg.cli.told.ToldEvent;
import dev.dogleg.fault.Fault;
import dev.dogleg.fault.Faults;
import dev.dogleg.fault.Where;
import dev.dogleg.groom.StarterTables;
import dev.dogleg.groom.TableRow;
import dev.dogleg.model.WallSpan;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Templates, fields and replies. */
class PhrasesTest {
  private static final List<TableRow> STARTER = StarterTables.rows(Phrases.FILE);

  private static Phrases starter() {
    Faults faults = new Faults();
    Phrases phrases = Phrases.of(STARTER, List.of(), faults);
    assertTrue(faults.isEmpty(), () -> faults.all().toString());
    return phrases;
  }

  private static TableRow row(int line, String language, String what, String text) {
    return new TableRow(
        Where.row(Phrases.FILE, line), Map.of("language", language, "what", what, "text", text));
  }

  private static List<String> codes(TableRow... own) {
    Faults faults = new Faults();
    Phrases.of(STARTER, List.of(own), faults);
    return faults.all().stream().map(fault -> fault.where() + " " + fault.code()).toList();
  }

  @ParameterizedTest
  @ValueSource(strings = {"en", "de", "es"})
  void noStarterTextLeavesTheGsmAlphabetOnAnyDay(String language) {
    Writer writer = new Writer(starter(), "Finch & Fleece", language);
    for (int day = 0; day < 366; day++) {
      AtDoor door = Doors.door("Nell Ottery", LocalDate.of(2027, 1, 1).plusDays(day));
      for (Occasion occasion : Occasion.values()) {
        String message =
            writer.message(
                door,
                occasion,
                new WallSpan(34_200, 48_600),
                Optional.of(LocalDate.of(2027, 9, 29)));
        TextSize size = TextSize.of(message);
        assertFalse(size.ucs2(), message);
        assertTrue(size.segments() <= (occasion == Occasion.ASK ? 2 : 1), size + " " + message);
        assertFalse(message.contains("{"), message);
      }
    }
  }

  @Test
  void aMessageSaysWhoWhenAndWhat() {
    AtDoor door = Doors.door("Nell Ottery", LocalDate.of(2027, 3, 1));
    WallSpan span = new WallSpan(46_800, 48_600);
    assertEquals(
        "Hello Nell Ottery, Finch & Fleece: at your door Monday 1 March between 1:00 PM and 1:30 PM"
            + " for Fern. Reply YES to confirm, STOP to end texts.",
        new Writer(starter(), "Finch & Fleece", "en")
            .message(door, Occasion.EVENING, span, Optional.empty()));
    assertEquals(
        "Guten Tag Nell Ottery, Marlo Finch: an Ihrer Tür am Montag, 1. März zwischen 13:00 und"
            + " 13:30 Uhr für Fern. JA bestätigt, STOPP beendet Nachrichten.",
        new Writer(starter(), "", "de-AT").message(door, Occasion.EVENING, span, Optional.empty()),
        "a business without a name is its groomer; de-AT is served by de");
  }

  @Test
  void unknownFieldsAndOddTemplatesAreFaultsWithTheirRow() {
    assertEquals(
        List.of(
            "text-templates.csv:2:text unknown-field",
            "text-templates.csv:3:text unknown-field",
            "text-templates.csv:4:text template-start",
            "text-templates.csv:5:text template-start",
            "text-templates.csv:6:text bad-template",
            "text-templates.csv:7:text bad-template",
            "text-templates.csv:8:what unknown-phrase",
            "text-templates.csv:9:text bad-pattern",
            "text-templates.csv:10:text missing-cell",
            "text-templates.csv:11:text unknown-field"),
        codes(
            row(2, "en", "evening", "Hi {{client}}, the gate is {{entry}}"),
            row(3, "en", "evening", "Hi {{client}}, that is {{price}}"),
            row(4, "en", "evening", "{{client}}: we come"),
            row(5, "en", "evening", "=HYPERLINK(1)"),
            row(6, "en", "evening", "Hi {{#pets}}x{{/pets}}"),
            row(7, "en", "evening", "Hi {{client"),
            row(8, "en", "morning", "Hi"),
            row(9, "en", "date", "HH:mm"),
            row(10, "en", "late", ""),
            row(11, "en", "evening", "Hi {{client}}, not on {{old_date}}")));
  }

  @Test
  void ownRowsReplaceTheStartersAndALanguageNeedsAllOfThem() {
    Faults faults = new Faults();
    Phrases phrases =
        Phrases.of(
            STARTER,
            List.of(row(2, "en", "late", "Sorry {{first}}"), row(3, "fr", "late", "Pardon")),
            faults);
    assertEquals(List.of("language-not-complete"), faults.all().stream().map(Fault::code).toList());
    assertFalse(phrases.knows("fr"));
    AtDoor door = Doors.door("Nell Ottery", LocalDate.of(2027, 3, 1));
    assertEquals(
        "Sorry Nell",
        new Writer(phrases, "F", "en")
            .message(door, Occasion.LATE, new WallSpan(0, 60), Optional.empty()));
  }

  /** The words of 47 CFR 64.1200(a)(10), then ours. */
  @ParameterizedTest
  @CsvSource({
    "stop, STOPPED",
    "STOP!, STOPPED",
    "Quit, STOPPED",
    "end, STOPPED",
    "Revoke., STOPPED",
    "opt out, STOPPED",
    "Opt-Out, STOPPED",
    "cancel, STOPPED",
    "unsubscribe, STOPPED",
    "STOPP, STOPPED",
    "basta, STOPPED",
    "start, RESUMED",
    "Yes, CONFIRMED",
    "Sí, CONFIRMED",
    "JA, CONFIRMED",
    "no, REFUSED",
    "Nein, REFUSED",
    "none, NO_ANSWER"
  })
  void repliesAreUnderstood(String reply, ToldEvent event) {
    assertEquals(Optional.of(event), starter().answer(reply));
  }

  @Test
  void aLongerReplyIsForAPerson() {
    String reply = "I am at the end of the drive";
    assertEquals(Optional.empty(), starter().answer(reply));
    assertEquals(Optional.of("end"), starter().stopWordIn(reply));
    assertEquals(Optional.empty(), starter().stopWordIn("see you on the weekend"));
  }

  /** Whatever names hold, a message is one line that no spreadsheet takes for a formula. */
  @Test
  void noNameMakesAFormulaOrASecondLine() {
    List<String> names =
        List.of("=1+1", "+1", "-1", "@x", "\t=1", "\r\n=1", "{{price}}", "a\nb", "<b>&\"'");
    Writer writer = new Writer(starter(), "=F", "en");
    List<String> messages = new ArrayList<>();
    for (String name : names) {
      for (Occasion occasion : Occasion.values()) {
        AtDoor door = Doors.door(name, LocalDate.of(2027, 3, 1));
        messages.add(writer.message(door, occasion, new WallSpan(0, 60), Optional.of(door.date())));
      }
    }
    for (String message : messages) {
      assertTrue(message.matches("\\p{L}[^\\p{Cntrl}]*"), message);
    }
    assertTrue(messages.get(30).contains("{{price}}"), "a name is no template");
  }
}
