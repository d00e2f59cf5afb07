package dev.dogleg.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import biweekly.Biweekly;
import biweekly.component.VEvent;
import com.opencsv.CSVReaderHeaderAware;
import com.opencsv.CSVReaderHeaderAwareBuilder;
import com.opencsv.RFC4180ParserBuilder;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Telling the owners of the demo book, evening after evening. */
class TextsCommandTest {
  @TempDir Path temp;
  private Path book;

  /** The demo book with the week that another test plans and compares. */
  @BeforeEach
  void layOut() throws IOException {
    book = Files.createDirectories(temp.resolve("book"));
    try (Stream<Path> files = Files.list(TestRun.ROOT.resolve("demo-data"))) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Files.copy(file, book.resolve(file.getFileName()));
      }
    }
    Files.createDirectories(book.resolve("plan"));
    Files.copy(
        TestRun.ROOT.resolve("router-cli/src/test/golden/demo-week/expected/files/out/plan.csv"),
        book.resolve("plan/plan.csv"));
  }

  private TestRun run(String command, String... more) {
    List<String> args = new ArrayList<>(List.of(command, book.toString()));
    args.addAll(List.of("--map", TestRun.MAP.toString()));
    args.addAll(List.of(more));
    return TestRun.warm(args.toArray(String[]::new));
  }

  private static List<Map<String, String>> rows(Path file) throws Exception {
    List<Map<String, String>> rows = new ArrayList<>();
    try (CSVReaderHeaderAware reader =
        new CSVReaderHeaderAwareBuilder(new StringReader(Files.readString(file)))
            .withCSVParser(new RFC4180ParserBuilder().build())
            .build()) {
      for (Map<String, String> row = reader.readMap(); row != null; row = reader.readMap()) {
        rows.add(row);
      }
    }
    return rows;
  }

  private List<Map<String, String>> texts() throws Exception {
    return rows(book.resolve("plan/texts.csv"));
  }

  private List<Map<String, String>> log() throws Exception {
    return rows(book.resolve("told.csv"));
  }

  @Test
  void nobodyHearsTwice() throws Exception {
    TestRun first = run("texts");
    assertEquals(0, first.exit(), first.err());
    String texts = Files.readString(book.resolve("plan/texts.csv"));
    assertEquals(5, texts().size(), "seven doors, two of them are called");
    TestRun second = run("texts");
    assertEquals(0, second.exit(), second.err());
    assertTrue(second.out().contains("Nobody is to be told anything."), second.out());
    assertEquals(texts, Files.readString(book.resolve("plan/texts.csv")), "what lies there stays");
    assertEquals(8, log().size(), "seven prepared, one handed over");
  }

  @Test
  void whatWasToldBindsTheNextPlanAndNobodyIsToldAgain() throws Exception {
    run("texts");
    TestRun again = run("plan", "--fresh");
    assertEquals(0, again.exit(), again.err());
    Map<String, LocalTime> arrive = new java.util.HashMap<>();
    for (Map<String, String> row : rows(book.resolve("plan/plan.csv"))) {
      if (row.get("kind").equals("visit")) {
        arrive.put(row.get("booking"), LocalTime.parse(row.get("arrive")));
      }
    }
    int promises = 0;
    for (Map<String, String> row : log()) {
      if (row.get("event").equals("prepared")) {
        promises++;
        LocalTime at = arrive.get(row.get("booking"));
        assertFalse(at.isAfter(LocalTime.parse(row.get("to"))), row + " " + at);
      }
    }
    assertEquals(7, promises);
    assertTrue(run("texts").out().contains("Nobody is to be told anything."));
  }

  @Test
  void noTextSaysWhatIsNobodysBusiness() throws Exception {
    List<Map<String, String>> clients = rows(book.resolve("clients.csv"));
    int seen = 0;
    for (int day = 1; day <= 5; day++) {
      run("texts", "--date", "2027-03-0" + day);
      for (Map<String, String> text : texts()) {
        seen++;
        String message = text.get("message");
        OffsetDateTime at = OffsetDateTime.parse(text.get("time"));
        assertFalse(at.toLocalTime().isBefore(LocalTime.of(8, 0)), text.toString());
        assertFalse(at.toLocalTime().isAfter(LocalTime.of(21, 0)), text.toString());
        for (Map<String, String> client : clients) {
          if (client.get("client").equals(text.get("client"))) {
            assertEquals(client.get("phone").replace(" ", ""), text.get("phone"));
            assertEquals("text", client.get("tell"));
          } else {
            assertFalse(message.contains(client.get("client")), message);
          }
          for (String column : List.of("phone", "address", "entry", "parking", "notes")) {
            String secret = client.get(column);
            assertTrue(secret.isEmpty() || !message.contains(secret), message);
          }
        }
        assertFalse(message.matches(".*(\\$|€|4471|USD).*"), message);
      }
    }
    assertTrue(seen > 10, "texts looked at: " + seen);
    TestRun check = run("check", "--plan", book.resolve("plan/plan.csv").toString());
    assertEquals(0, check.exit(), "the plan keeps all that was told: " + check.out());
  }

  @Test
  void repliesAreNotedAndStopWordsKept() throws Exception {
    run("texts");
    TestRun noted = run("texts", "--answer", "Ada Fenwick=Yes!", "--answer", "joss-tarn=STOP");
    assertEquals(0, noted.exit(), noted.err());
    assertTrue(run("texts").out().contains("Ada Fenwick: nothing, told already: "));
    assertTrue(run("texts").out().contains(", confirmed"));
    TestRun next = run("texts", "--now", "2027-03-02T18:00");
    assertTrue(next.out().contains("call on") || next.out().contains("call now"), next.out());
    assertTrue(next.out().contains("wants no texts"), next.out());
    assertFalse(Files.readString(book.resolve("plan/texts.csv")).contains("Joss Tarn"));
    TestRun bad = run("texts", "--answer", "Ada Fenwick=yes", "--answer", "Ada Fenwick=the end");
    assertEquals(3, bad.exit());
    assertEquals(1, log().stream().filter(row -> row.get("event").equals("confirmed")).count());
  }

  @Test
  void onTheWayTheSpanIsNarrowerAndLateIsSaid() throws Exception {
    run("texts");
    Map<String, String> told =
        log().stream().filter(row -> row.get("client").equals("hob-marchbank")).findFirst().get();
    LocalTime from = LocalTime.parse(told.get("from"));
    LocalTime to = LocalTime.parse(told.get("to"));
    TestRun way =
        run("texts", "--on-my-way", "Hob Marchbank", "--now", "2027-03-01T" + from.minusMinutes(2));
    assertEquals(0, way.exit(), way.err());
    Map<String, String> last = log().get(log().size() - 2);
    assertEquals("on-my-way", last.get("occasion"));
    assertFalse(LocalTime.parse(last.get("from")).isBefore(from));
    assertFalse(LocalTime.parse(last.get("to")).isAfter(to));
    TestRun late =
        run("texts", "--on-my-way", "hob-marchbank", "--now", "2027-03-01T" + to.plusMinutes(5));
    assertEquals(0, late.exit(), late.err());
    assertTrue(late.out().contains(": late, text"), late.out());
    assertEquals(1, texts().size());
    assertEquals(3, run("texts", "--on-my-way", "Nobody").exit());
  }

  @Test
  void whoWantsACalendarGetsOneThatAnotherParserReads() throws Exception {
    run("texts", "--ics", temp.resolve("cal").toString());
    try (Stream<Path> files = Files.list(temp.resolve("cal"))) {
      assertEquals(List.of(temp.resolve("cal/ada-fenwick.ics")), files.toList());
    }
    String text = Files.readString(temp.resolve("cal/ada-fenwick.ics"));
    VEvent visit = Biweekly.parse(text).first().getEvents().get(0);
    Map<String, String> told =
        log().stream().filter(row -> row.get("client").equals("ada-fenwick")).findFirst().get();
    OffsetDateTime from =
        OffsetDateTime.parse(told.get("date") + "T" + told.get("from") + ":00-08:00");
    assertEquals(from.toInstant(), visit.getDateStart().getValue().toInstant());
    assertEquals("Finch & Fleece: Biscuit and Mop", visit.getSummary().getValue());
    assertFalse(text.contains("555") || text.contains("Vermilion"), text);
  }

  @Test
  void aRunThatWasCutShortIsFinishedByTheNext() throws Exception {
    run("texts");
    Path plan = book.resolve("plan");
    String log = Files.readString(book.resolve("told.csv"));
    String texts = Files.readString(plan.resolve("texts.csv"));
    // As after a crash between the second and the third step.
    Files.writeString(
        book.resolve("told.csv"), log.substring(0, log.lastIndexOf("1,", log.length() - 20)));
    Files.move(plan.resolve("texts.csv"), plan.resolve(".texts.csv.run-1.part"));
    Files.move(plan.resolve("texts.html"), plan.resolve(".texts.html.run-1.part"));
    TestRun next = run("texts");
    assertTrue(next.err().contains("they are in place"), next.err());
    assertTrue(next.out().contains("Nobody is to be told anything."), next.out());
    assertEquals(texts, Files.readString(plan.resolve("texts.csv")));
    assertEquals(log, Files.readString(book.resolve("told.csv")));
    Set<String> left = new HashSet<>();
    try (Stream<Path> files = Files.list(plan)) {
      files.forEach(file -> left.add(file.getFileName().toString()));
    }
    assertEquals(Set.of("plan.csv", "texts.csv", "texts.html"), left);
  }

  @Test
  void wrongUsageIsSaid() {
    assertEquals(2, run("texts", "--out", "texts.html").exit());
    assertEquals(2, run("texts", "--left", "10:00").exit());
    assertEquals(2, run("texts", "--answer", "yes").exit());
    assertEquals(3, run("texts", "--now", "ten").exit());
    assertEquals(3, run("texts", "--plan", book.resolve("no.csv").toString()).exit());
  }
}
