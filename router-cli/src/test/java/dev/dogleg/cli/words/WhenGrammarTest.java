package dev.dogleg.cli.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.model.WallSpan;
import dev.dogleg.model.When;
import dev.dogleg.model.WhenChoice;
import java.time.format.TextStyle;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The column {@code when}, as people write it; the hours usually worked are 8:00 to 18:00. */
class WhenGrammarTest {
  private static final WallSpan SHIFT = new WallSpan(28_800, 64_800);

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "Tue 9-12; Thu after 15:00 | Tue 09:00-12:00; Thu from 15:00",
        "AM | to 12:00",
        "pm | from 12:00",
        "mornings | to 12:00",
        "first | any time first",
        "first stop, before 11 | to 11:00 first",
        "around 10 | 09:30-10:30",
        "~10 | 09:30-10:30",
        "about 2pm | 13:30-14:30",
        "before 11 | to 11:00",
        "until 11:30 | to 11:30",
        "not after 11 | to 11:00",
        "no later than 11 | to 11:00",
        "after 15:00 | from 15:00",
        "from 15 | from 15:00",
        "not before 10 | from 10:00",
        "from 9 to 12 | 09:00-12:00",
        "between 9 and 12 | 09:00-12:00",
        "9-12 | 09:00-12:00",
        "9 to 12 | 09:00-12:00",
        "9–12 | 09:00-12:00",
        "9:30-11.15 | 09:30-11:15",
        "9h30-11h | 09:30-11:00",
        "0930-1115 | 09:30-11:15",
        "9am-12pm | 09:00-12:00",
        "9 a.m. - 1 p.m. | 09:00-13:00",
        "10-2pm | 10:00-14:00",
        "9-5 | 09:00-17:00",
        "11-2 | 11:00-14:00",
        "8-6 | 08:00-18:00",
        "noon-4pm | 12:00-16:00",
        "7-9 | 07:00-09:00",
        "09:00:30-10:00 | 09:00:30-10:00",
        "20:00-24:00 | 20:00-24:00",
        "Mon, Wed 9-12 | Mon,Wed 09:00-12:00",
        "Mon/Wed/Fri am | Mon,Wed,Fri to 12:00",
        "Mon-Thu 9-12 | Mon,Tue,Wed,Thu 09:00-12:00",
        "Sat to Mon | Mon,Sat,Sun any time",
        "Tuesday or Thursday 9-12 | Tue,Thu 09:00-12:00",
        "Tue 9-12 or Thu after 15:00 | Tue 09:00-12:00; Thu from 15:00",
        "weekdays before 10 | Mon,Tue,Wed,Thu,Fri to 10:00",
        "weekends | Sat,Sun any time",
        "not Mon | Tue,Wed,Thu,Fri,Sat,Sun any time",
        "Tuesdays | Tue any time",
        "any time | any time",
        "anytime | any time",
        "flexible | any time",
        "done by 15:00 | any time done 15:00",
        "9-12, done by 15:00 | 09:00-12:00 done 15:00",
        "9-12 and done by 3pm | 09:00-12:00 done 15:00",
        "van 9-16 only | any time van 09:00-16:00",
        "van only 9-16 | any time van 09:00-16:00",
        "van not 12-14 | any time van to 12:00/from 14:00",
        "after 9, van not 12-14, done by 16:00 | from 09:00 done 16:00 van to 12:00/from 14:00",
        "van not before 9 | any time van from 09:00",
        "van before 16:00 only, van not 12-13 | any time van to 12:00/13:00-16:00",
        "after 9, before 12 | 09:00-12:00",
        "arrive within 9-12 | 09:00-12:00",
        "9-10; 14-15 | 09:00-10:00; 14:00-15:00",
        "; | any time",
        "8:30-17:00 | 08:30-17:00",
        "9-13 | 09:00-13:00",
      })
  void reads(String cell, String expected) {
    Reading<When> read = WhenGrammar.read(cell, SHIFT);
    assertTrue(read.value().isPresent(), () -> cell + ": " + read.remarks());
    assertEquals(expected, text(read.value().get()));
    assertTrue(read.remarks().isEmpty(), () -> "nothing of this is a guess: " + read.remarks());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "2-4 | 14:00-16:00",
        "after 3 | from 15:00",
        "done by 4 | any time done 16:00",
        "around 2:30 | 14:00-15:00",
        "before 5 | to 17:00",
        "evening | from 17:00",
        "10:00 | 10:00-10:00",
        "at 10 | 10:00-10:00",
      })
  void guessesAndSaysSo(String cell, String expected) {
    Reading<When> read = WhenGrammar.read(cell, SHIFT);
    assertEquals(expected, text(read.value().orElseThrow()));
    assertEquals(1, read.remarks().size());
    assertEquals("guess", read.remarks().get(0).code());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "by 11 | bad-when",
        "last | bad-when",
        "after lunch | bad-when",
        "9-12, | bad-when",
        "van | bad-when",
        "van only not 9-12 | bad-when",
        "between 9 | bad-when",
        "done | bad-when",
        "25:00-26:00 | bad-when",
        "9:75 | bad-when",
        "13pm-14pm | bad-when",
        "§$% | bad-when",
        "after 15:00, before 12:00 | contradictory-limits",
        "9-12, 14-16 | contradictory-limits",
        "after 16:00, done by 15:00 | contradictory-limits",
        "after 17:00, van 9-16 only | contradictory-limits",
        "van not 0:00-24:00 | contradictory-limits",
        "not daily | contradictory-limits",
        "9-12; done by 15:00 | mixed-limits",
        "Tue first; Tue 14-16 | mixed-limits",
        "15:00-09:00 | span-backwards",
        "12-Sep | time-became-date",
        "09.Dez | bad-when",
        "9-Dec | time-became-date",
        "Sep-12 | time-became-date",
        "2027-09-12 | time-became-date",
        "09/12/2027 | time-became-date",
        "0.375 | time-became-number",
        "46448 | date-became-number",
        "1899-12-30 09:30:00 | date-1900",
        "1/0/1900 | date-1900",
      })
  void refuses(String cell, String code) {
    Reading<When> read = WhenGrammar.read(cell, SHIFT);
    assertTrue(read.value().isEmpty(), () -> cell + " was read as " + read.value());
    assertEquals(code, read.remarks().get(0).code());
  }

  @Test
  void differentDaysMayBindDifferently() {
    assertEquals(
        "Tue to 12:00 done 15:00; Thu any time first",
        text(WhenGrammar.read("Tue AM, done by 15:00; Thu first", SHIFT).value().orElseThrow()));
  }

  @Test
  void halfOfDayFollowsTheShift() {
    WallSpan evenings = new WallSpan(57_600, 79_200); // 16:00 to 22:00
    assertEquals("19:00-21:00", text(WhenGrammar.read("7-9", evenings).value().orElseThrow()));
    WallSpan longDay = new WallSpan(18_000, 79_200); // 5:00 to 22:00: both halves are worked
    Reading<When> both = WhenGrammar.read("6-8", longDay);
    assertEquals("06:00-08:00", text(both.value().orElseThrow()));
    assertEquals("guess", both.remarks().get(0).code());
  }

  @Test
  void noTextMakesItThrow() {
    String[] words = {
      "Tue",
      "mon",
      "9",
      "12",
      "9:30",
      "15:00",
      "3pm",
      "-",
      ";",
      ",",
      "after",
      "before",
      "around",
      "van",
      "not",
      "only",
      "done",
      "by",
      "first",
      "am",
      "or",
      "and",
      "to",
      "between",
      "24:00",
      "0:00",
      "~",
      "/",
      "weekend",
      "daily",
      "\"",
      "'",
      "12-Sep",
      "99999999999",
      "é",
      "\t",
      "\n"
    };
    SplittableRandom random = new SplittableRandom(20_270_302);
    for (int run = 0; run < Integer.getInteger("dogleg.runs", 5_000); run++) {
      StringBuilder cell = new StringBuilder();
      for (int i = random.nextInt(1, 9); i > 0; i--) {
        if (random.nextInt(12) == 0) {
          cell.append((char) random.nextInt(32, 0x3000));
        } else {
          cell.append(words[random.nextInt(words.length)]);
        }
        cell.append(random.nextBoolean() ? " " : "");
      }
      String text = cell.toString();
      Reading<When> read = WhenGrammar.read(text, SHIFT);
      assertTrue(read.value().isPresent() || !read.remarks().isEmpty(), text);
    }
  }

  /** A tiny notation of a when: days, arrival, done by, van, first. */
  private static String text(When when) {
    return when.choices().stream().map(WhenGrammarTest::text).collect(Collectors.joining("; "));
  }

  private static String text(WhenChoice choice) {
    String days =
        choice.days().stream()
            .map(day -> day.getDisplayName(TextStyle.SHORT, Locale.ENGLISH))
            .collect(Collectors.joining(","));
    String van =
        choice.vanWithin().stream().map(WallSpan::toString).collect(Collectors.joining("/"));
    return (days.isEmpty() ? "" : days + " ")
        + choice.arriveWithin()
        + (choice.doneByWallSeconds() == WallSpan.OPEN
            ? ""
            : " done " + WallSpan.text(choice.doneByWallSeconds()))
        + (van.equals("any time") ? "" : " van " + van)
        + (choice.first() ? " first" : "");
  }
}
