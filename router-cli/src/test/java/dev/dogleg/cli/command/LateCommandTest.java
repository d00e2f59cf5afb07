package dev.dogleg.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What no golden folder can show: the plan that a choice is written into. */
class LateCommandTest {
  private static final Path CASE =
      TestRun.ROOT.resolve("router-cli/src/test/golden/late-choices/book");

  @TempDir Path book;

  @BeforeEach
  void layOut() throws IOException {
    Files.createDirectories(book.resolve("plan"));
    try (Stream<Path> files = Files.walk(CASE)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Files.copy(file, book.resolve(CASE.relativize(file)));
      }
    }
  }

  private TestRun late(String... more) {
    Stream<String> first = Stream.of("late", book.toString(), "--map", TestRun.MAP.toString());
    return TestRun.warm(Stream.concat(first, Stream.of(more)).toArray(String[]::new));
  }

  private List<String> rows() throws IOException {
    return Files.readString(book.resolve("plan/plan.csv")).lines().toList();
  }

  @Test
  void aChosenRestReplacesTheDaysRowsAndWhatIsDoneStays() throws IOException {
    List<String> before = rows();
    String tomorrow = before.get(2).replace("2027-03-01", "2027-03-02");
    Files.writeString(
        book.resolve("plan/plan.csv"), String.join("\r\n", before) + "\r\n" + tomorrow + "\r\n");
    TestRun run = late("--day", "2027-03-01", "--now", "14:10", "--done", "3", "--choose", "1");
    assertEquals(4, run.exit(), run.err());
    assertTrue(run.out().contains("Written: "), run.out());
    List<String> after = rows();
    assertEquals(before.get(0), after.get(0));
    assertTrue(after.get(1).contains("; late from 14:10, choice 1"), after.get(1));
    assertEquals(before.subList(2, 4), after.subList(2, 4), "doors 1 and 2 stay as they were");
    assertTrue(after.get(4).contains(",14:10:00,"), "door 3 is left now: " + after.get(4));
    assertTrue(after.stream().anyMatch(row -> row.contains("late, tell 14:00-14:30")));
    assertEquals(tomorrow, after.get(after.size() - 1));
    assertEquals(before.size() + 1, after.size());
    assertEquals(
        List.of("1", "2", "3", "4", "5", "6", "7"),
        after.stream()
            .filter(row -> row.contains(",visit,") && row.startsWith("2027-03-01"))
            .map(row -> row.split(",")[3])
            .toList());
  }

  @Test
  void theChosenRestIsWhereTheNextCallGoesOn() throws IOException {
    late("--now", "14:10", "--done", "3", "--choose", "1");
    TestRun again = late("--now", "14:10", "--done", "3");
    assertTrue(again.out().contains("1. Keep the order (recommended)"), again.out());
  }

  @Test
  void aVisitThatIsMovedHasNoRowAnyMore() throws IOException {
    TestRun run = late("--now", "14:10", "--done", "3", "--choose", "3");
    assertTrue(run.out().contains("3. Wil Pask: Bo to another day"), run.out());
    assertTrue(rows().stream().noneMatch(row -> row.contains("Wil Pask")));
  }

  @Test
  void nothingIsWrittenUnlessAsked() throws IOException {
    List<String> before = rows();
    late("--now", "14:10", "--done", "3");
    assertEquals(before, rows());
    assertEquals(2, late("--now", "11:00", "--done", "2", "--choose", "3").exit());
    assertEquals(before, rows());
  }

  @Test
  void whereTheVanIsCanBeADoorAClientOrAnAddress() {
    assertEquals(0, late("--now", "9:20", "--at", "2").exit());
    assertTrue(late("--now", "9:20", "--at", "home").out().contains("the van is at home"));
    assertTrue(
        late("--now", "920", "--at", "14 Hazel Avenue, Brindlewick")
            .out()
            .contains("the van is at 14 Hazel Avenue, Brindlewick"));
    TestRun nowhere = late("--now", "9:20", "--at", "7 Nowhere Lane");
    assertEquals(3, nowhere.exit(), nowhere.out());
  }

  @Test
  void timesThatContradictEachOtherAreWrongUsage() {
    assertEquals(2, late("--now", "14:10", "--done", "3", "--ready", "14:00").exit());
    assertEquals(2, late("--now", "25:10").exit());
    assertEquals(2, late("--done", "3").exit(), "the plan is for another day than today");
    assertEquals(2, late("--now", "14:10", "--ready", "14:20").exit());
    assertEquals(2, late("--now", "14:10", "--break", "maybe").exit());
    assertEquals(2, late("--now", "14:10", "--groomer", "Nobody").exit());
  }

  @Test
  void whoWantsNoTextsIsCalled() {
    String before = late("--now", "14:10", "--done", "3").out();
    assertTrue(before.contains("> Text Wil Pask"), before);
    TestRun stop = TestRun.warm("texts", book.toString(), "--answer", "Wil Pask=STOP");
    assertEquals(0, stop.exit(), stop.err());
    String after = late("--now", "14:10", "--done", "3").out();
    assertTrue(after.contains("> Call Wil Pask") && !after.contains("> Text Wil Pask"), after);
  }

  @Test
  void withoutAPlanItSaysHowToMakeOne() throws IOException {
    Files.delete(book.resolve("plan/plan.csv"));
    TestRun run = late("--now", "14:10", "--done", "3");
    assertEquals(3, run.exit(), run.out());
    String said = run.err().replaceAll("\\s+", " ");
    assertTrue(said.contains("make it first: dogleg plan " + book), run.err());
  }
}
