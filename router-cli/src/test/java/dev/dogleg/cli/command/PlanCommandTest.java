package dev.dogleg.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What no golden folder can show: yesterday's files, two runs at once, a plan edited by hand. */
class PlanCommandTest {
  private static final String DEMO = TestRun.ROOT.resolve("demo-data").toString();

  @TempDir Path temp;

  @Test
  void aRunThatStopsLeavesYesterdaysPlanWhole() throws IOException {
    Path book = brokenBook();
    Files.createDirectories(book.resolve("plan"));
    Files.writeString(book.resolve("plan/plan.csv"), "yesterday");
    TestRun run = TestRun.warm("plan", book.toString(), "--map", TestRun.MAP.toString());
    assertEquals(3, run.exit(), run.err());
    assertEquals("yesterday", Files.readString(book.resolve("plan/plan.csv")));
    assertEquals("", run.out());
  }

  @Test
  void aMapThatIsNoneStopsTheRun() throws IOException {
    Path map = Files.writeString(temp.resolve("no map.osm.pbf"), "not a map at all");
    Path out = temp.resolve("out");
    TestRun run = TestRun.warm("plan", DEMO, "--map", map.toString(), "--out", out.toString());
    assertEquals(3, run.exit(), run.err());
    assertFalse(Files.exists(out));
    assertTrue(run.err().contains("[map-not-osm]"), run.err());
  }

  @Test
  void aFileWhereTheFolderShouldBeIsNamedAndKept() throws IOException {
    Path file = Files.writeString(temp.resolve("plan of mine"), "mine");
    TestRun run = TestRun.warm("plan", DEMO, "--out", file.toString());
    assertEquals(3, run.exit(), run.err());
    assertTrue(run.err().contains("a folder is needed there"), run.err());
    assertEquals("mine", Files.readString(file));
  }

  @Test
  void sameInputSameBytes() throws IOException {
    assertEquals(planned("a"), planned("b"));
  }

  @Test
  void twoRunsAtOnceIntoOneFolderLeaveOneWholePlan() throws Exception {
    String alone = planned("alone");
    ExecutorService two = Executors.newFixedThreadPool(2);
    try {
      List<Future<TestRun>> runs = new ArrayList<>();
      for (int i = 0; i < 2; i++) {
        runs.add(
            two.submit(() -> TestRun.of("plan", DEMO, "--out", temp.resolve("shared").toString())));
      }
      for (Future<TestRun> run : runs) {
        assertEquals(0, run.get().exit(), run.get().err());
      }
    } finally {
      two.shutdownNow();
    }
    assertEquals(alone, Files.readString(temp.resolve("shared/plan.csv")));
  }

  @Test
  void ourOwnPlanPassesTheCheckAndAnEditedOneIsTimedAnew() throws IOException {
    planned("plan");
    Path plan = temp.resolve("plan/plan.csv");
    TestRun sound = TestRun.of("check", DEMO, "--plan", plan.toString());
    assertEquals(0, sound.exit(), sound.out() + sound.err());
    assertTrue(sound.out().contains("every limit is kept"), sound.out());

    List<String> lines = new ArrayList<>(Files.readAllLines(plan));
    int told = row(lines, "Greta Lind");
    int last = row(lines, "Wil Pask");
    String moved = lines.remove(Math.max(told, last));
    lines.add(Math.min(told, last), moved);
    lines.remove(row(lines, "Joss Tarn"));
    Path edited = Files.write(temp.resolve("edited.csv"), lines);
    TestRun check = TestRun.of("check", DEMO, "--plan", edited.toString());
    assertEquals(4, check.exit(), check.out() + check.err());
    String said = check.out().replaceAll("\\s+", " ");
    assertTrue(said.contains("The same order timed anew:"), check.out());
    assertTrue(said.contains("Greta Lind: The van is at the door at"), check.out());
    assertTrue(said.contains("allowed until 14:15:00"), check.out());
    assertTrue(said.contains("is in no row. [left-out]"), check.out());
  }

  @Test
  void aPlanOfANewerFormatIsRefusedInOneLine() throws IOException {
    planned("plan");
    Path plan = temp.resolve("plan/plan.csv");
    Files.writeString(plan, Files.readString(plan).replace("plan format 1", "plan format 2"));
    TestRun check = TestRun.of("check", DEMO, "--plan", plan.toString());
    assertEquals(3, check.exit(), check.out());
    assertTrue(check.out().contains("[newer-format]"), check.out());
  }

  @Test
  void nothingPrintedOrPlannedHoldsAPhoneOrAGateCode() throws IOException {
    TestRun run = TestRun.warm("plan", DEMO, "--days", "5", "--out", temp.toString());
    String all = run.out() + run.err() + Files.readString(temp.resolve("plan.csv"));
    assertFalse(all.contains("555"), all);
    assertFalse(all.contains("4471"), all);
  }

  private String planned(String folder) throws IOException {
    TestRun run = TestRun.warm("plan", DEMO, "--out", temp.resolve(folder).toString());
    assertEquals(0, run.exit(), run.err());
    return Files.readString(temp.resolve(folder).resolve("plan.csv"));
  }

  private static int row(List<String> lines, String client) {
    for (int i = 0; i < lines.size(); i++) {
      if (lines.get(i).contains(",visit,") && lines.get(i).contains("," + client + ",")) {
        return i;
      }
    }
    throw new AssertionError("no row of " + client + " in " + lines);
  }

  private Path brokenBook() throws IOException {
    Path book = Files.createDirectories(temp.resolve("a book"));
    Path golden = TestRun.ROOT.resolve("router-cli/src/test/golden/told-hit/book");
    Files.copy(golden.resolve("business.yaml"), book.resolve("business.yaml"));
    Files.copy(golden.resolve("bookings.csv"), book.resolve("bookings.csv"));
    return book;
  }
}
