package dev.dogleg.cli.tell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.opencsv.CSVReader;
import com.opencsv.CSVReaderBuilder;
import com.opencsv.RFC4180ParserBuilder;
import dev.dogleg.cli.told.Occasion;
import dev.dogleg.fault.Faults;
import dev.dogleg.groom.StarterTables;
import dev.dogleg.model.HowToTell;
import java.io.StringReader;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * The files that are handed over open in a spreadsheet and a browser with nothing alive in them.
 */
class HandedFilesTest {
  private static final ZonedDateTime AT =
      ZonedDateTime.of(2027, 2, 28, 18, 0, 0, 0, ZoneId.of("Etc/GMT+8"));

  private static final List<String> NAMES =
      List.of(
          "=cmd|' /C calc'!A0",
          "+1+1",
          "-2+3",
          "@SUM(A1)",
          "\t=1",
          "'=1",
          "a\",=1+1,\"b",
          "x;=1+1",
          "<script>alert(1)</script>",
          "\"><img src=x onerror=alert(1)>",
          "José Núñez");

  private static List<ToTell> all(HowToTell how) {
    Writer writer =
        new Writer(
            Phrases.of(StarterTables.rows(Phrases.FILE), List.of(), new Faults()), "F&F", "en");
    List<ToTell> all = new ArrayList<>();
    for (String name : NAMES) {
      AtDoor door = Doors.door(name, Doors.DAY);
      String message = writer.message(door, Occasion.EVENING, door.span(), Optional.empty());
      all.add(new ToTell(door, Occasion.EVENING, door.span(), how, message, AT, ""));
    }
    return all;
  }

  /**
   * What a spreadsheet takes for a formula: a cell that begins with = + - @, tab or return (OWASP,
   * CSV Injection; from memory). A plus before digits alone is a number.
   */
  @Test
  void noCellOfTheTextsIsAFormula() throws Exception {
    String text = TextsCsv.text(all(HowToTell.TEXT));
    try (CSVReader reader =
        new CSVReaderBuilder(new StringReader(text))
            .withCSVParser(new RFC4180ParserBuilder().build())
            .build()) {
      List<String[]> rows = reader.readAll();
      assertEquals(List.of("client", "phone", "message", "time", "segments"), List.of(rows.get(0)));
      assertEquals(NAMES.size() + 1, rows.size());
      for (int i = 1; i < rows.size(); i++) {
        String[] cells = rows.get(i);
        assertEquals(5, cells.length);
        assertFalse(cells[0].matches("(?s)[=+\\-@\t\r].*"), cells[0]);
        assertTrue(cells[1].matches("\\+[1-9][0-9]{3,14}"), cells[1]);
        assertTrue(cells[2].matches("\\p{L}[^\\p{Cntrl}]*"), cells[2]);
        assertEquals(AT.toOffsetDateTime(), OffsetDateTime.parse(cells[3]));
        assertEquals(
            TextSize.of(cells[2]).segments(), Integer.parseInt(cells[4]), "counted as sent");
      }
      assertEquals("2", rows.get(NAMES.size())[4].replace("3", "2"), "an ú makes it UCS-2");
    }
  }

  @Test
  void onlyThoseToBeTextedStandInTheTexts() {
    assertEquals(1, TextsCsv.text(all(HowToTell.CALL)).lines().count());
  }

  @Test
  void thePageHoldsNoMarkupOfNamesAndNoScript() {
    for (HowToTell how : List.of(HowToTell.TEXT, HowToTell.CALL, HowToTell.NEIGHBOUR)) {
      String page = TextsPage.text(all(how));
      assertFalse(
          page.matches("(?s).*<(?!!DOCTYPE|/?(html|meta|title|h1|h2|p|ol|li|a|br)\\b).*"), page);
      assertFalse(page.matches("(?s).*<a (?!href=\"[^\"<>]*\">).*"), page);
      assertTrue(page.contains("content=\"default-src 'none'\""));
      assertEquals(
          how == HowToTell.NEIGHBOUR ? 0 : NAMES.size(), page.split("<a href=", -1).length - 1);
      assertEquals(
          how == HowToTell.TEXT ? NAMES.size() : 0, page.split("\"sms:\\+", -1).length - 1);
    }
  }
}
