package dev.dogleg.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What no golden folder can show of a week: the plan before, and one edited by hand. */
class WeekCommandTest {
  private static final String DEMO = TestRun.ROOT.resolve("demo-data").toString();

  @TempDir Path temp;

  private TestRun plan(String... more) {
    List<String> args =
        new ArrayList<>(List.of("plan", DEMO, "--days", "5", "--out", temp.toString()));
    args.addAll(List.of(more));
    TestRun run = TestRun.warm(args.toArray(String[]::new));
    assertEquals(0, run.exit(), run.out() + run.err());
    return run;
  }

  @Test
  void aSecondRunKeepsTheFirstAndAFreshOneDoesNotLook() throws IOException {
    plan();
    String first = Files.readString(temp.resolve("plan.csv"));
    TestRun second = plan();
    assertTrue(second.out().contains("Of 31 stops in the earlier plan, 31 keep"), second.out());
    assertEquals(first, Files.readString(temp.resolve("plan.csv")));
    TestRun fresh = plan("--fresh");
    assertTrue(!fresh.out().contains("earlier plan"), fresh.out());
    assertEquals(first, Files.readString(temp.resolve("plan.csv")));
  }

  @Test
  void anEarlierPlanThatCannotBeReadIsSaidAndPassedOver() throws IOException {
    Files.writeString(temp.resolve("plan.csv"), "yesterday");
    TestRun run =
        TestRun.warm("plan", DEMO, "--days", "2", "--out", temp.toString(), "--effort", "1000000");
    assertEquals(4, run.exit(), run.err());
    assertTrue(run.err().contains("[missing-column]"), run.err());
    assertTrue(Files.readString(temp.resolve("plan.csv")).contains("plan format 1"));
  }

  @Test
  void ourOwnWeekPassesTheCheckAndBrokenRulesAreNamed() throws IOException {
    plan();
    Path plan = temp.resolve("plan.csv");
    TestRun sound = TestRun.of("check", DEMO, "--plan", plan.toString());
    assertEquals(0, sound.exit(), sound.out());

    List<String> lines = new ArrayList<>(Files.readAllLines(plan));
    // The contagious dog goes to the front of its day, the dog that takes two to a day without
    // help.
    String skip = lines.remove(row(lines, "Ned Farrow"));
    lines.add(row(lines, "2027-03-04,marlo-finch,bluebell,,leave") + 1, skip);
    String basil = lines.remove(row(lines, "Gil Trescott"));
    lines.add(
        row(lines, "2027-03-03,marlo-finch,bluebell,,leave") + 1,
        basil.replace("2027-03-05,marlo", "2027-03-03,marlo"));
    lines.remove(row(lines, ",errand,"));
    Path edited = Files.write(temp.resolve("edited.csv"), lines);
    TestRun check = TestRun.of("check", DEMO, "--plan", edited.toString());
    assertEquals(4, check.exit(), check.out());
    String said = check.out().replaceAll("\\s+", " ");
    assertTrue(said.contains("Rule \"contagious last\": visit"), check.out());
    assertTrue(said.contains("[rule-before]"), check.out());
    assertTrue(
        said.contains("Gil Trescott: forbidden on this day by two to lift. [rule]"), check.out());
    assertTrue(said.contains("errand Blades to sharpen is in no row. [left-out]"), check.out());
    assertTrue(said.contains("not for this day. [other-day]"), check.out());
  }

  private static int row(List<String> lines, String part) {
    for (int i = 0; i < lines.size(); i++) {
      if (lines.get(i).contains(part)) {
        return i;
      }
    }
    throw new AssertionError("no row with " + part + " in " + lines);
  }
}
