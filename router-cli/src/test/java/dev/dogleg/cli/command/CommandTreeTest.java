package dev.dogleg.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import picocli.CommandLine.Command;

/** A command is made only when it is typed, under the name that it has itself. */
class CommandTreeTest {
  @Test
  void everyCommandAnswersToItsOwnName() {
    CommandTree.commands(null, null)
        .forEach(
            (name, command) ->
                assertEquals(
                    command.get().getClass().getAnnotation(Command.class).name(),
                    name,
                    "a command is typed by another name than its help gives"));
  }

  @Test
  void helpAndFaultsNameAllCommands() {
    for (TestRun run : new TestRun[] {TestRun.of("--help"), TestRun.of("fti"), TestRun.of()}) {
      for (String name : CommandTree.commands(null, null).keySet()) {
        assertTrue((run.out() + run.err()).contains("  " + name + " "), name + ": " + run);
      }
    }
  }

  @Test
  void aTypedCommandKeepsItsHelpAndTheFirstNameInIt() {
    TestRun help = TestRun.of("fit", "--help");
    assertEquals(0, help.exit());
    assertTrue(help.out().startsWith("Usage: dogleg fit "), help.out());
    TestRun wrong = TestRun.of("fit", "--wrong");
    assertEquals(2, wrong.exit());
    assertTrue(wrong.err().contains("Usage: dogleg fit "), wrong.err());
  }
}
