package dev.dogleg.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the README shows is what happens. */
class ReadmeTest {
  private static final Path README = TestRun.ROOT.resolve("README.md");
  private static final Pattern SHELL = Pattern.compile("(?s)```sh\n(.*?)```");
  private static final Pattern DAY =
      Pattern.compile("(?s)(<!-- demo-day -->\n```[a-z]*\n)(.*?)(```\n<!-- /demo-day -->)");
  private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

  @TempDir Path project;

  @BeforeEach
  void layOut() throws IOException {
    for (String folder : List.of("demo-data", "maps-sample")) {
      Files.createDirectories(project.resolve(folder));
      try (Stream<Path> files = Files.list(TestRun.ROOT.resolve(folder))) {
        for (Path file : files.filter(Files::isRegularFile).toList()) {
          Files.copy(file, project.resolve(folder).resolve(file.getFileName()));
        }
      }
    }
  }

  @Test
  void theDayShownIsTheDayTheDemoPrints() throws IOException {
    TestRun demo = TestRun.in(project, "demo");
    assertEquals(0, demo.exit(), demo.err());
    String printed =
        demo.out().substring(0, demo.out().indexOf("Written: ")).stripTrailing() + "\n";
    String readme = Files.readString(README);
    Matcher shown = DAY.matcher(readme);
    assertTrue(shown.find(), "README has no block demo-day");
    if ("rewrite".equals(System.getProperty("dogleg.golden"))) {
      String changed =
          readme.substring(0, shown.start(2)) + printed + readme.substring(shown.end(2));
      Files.writeString(README, changed);
      return;
    }
    assertEquals(printed, shown.group(2), "rewrite with -Ddogleg.golden=rewrite and read the diff");
  }

  @Test
  void everyCommandShownRuns() throws IOException {
    List<List<String>> commands = commands();
    assertFalse(commands.isEmpty());
    for (List<String> command : commands) {
      TestRun run = TestRun.in(project, command.toArray(String[]::new));
      assertTrue(
          run.exit() == 0 || run.exit() == 4, command + " ended with " + run.exit() + run.err());
    }
    assertTrue(Files.exists(project.resolve("demo-out/plan.csv")));
    assertTrue(Files.exists(project.resolve("demo-data/plan/plan.csv")));
  }

  private List<List<String>> commands() throws IOException {
    List<List<String>> commands = new ArrayList<>();
    Matcher block = SHELL.matcher(Files.readString(README));
    while (block.find()) {
      for (String line : block.group(1).split("\n")) {
        String command = line.replaceAll("\\s+#.*", "").strip();
        if (command.startsWith("router-cli/bin/dogleg ")) {
          List<String> words = new ArrayList<>();
          Matcher word = WORD.matcher(command);
          while (word.find()) {
            String text = word.group(1) != null ? word.group(1) : word.group(2);
            words.add(text.equals("BOOK") ? project.resolve("demo-data").toString() : text);
          }
          commands.add(words.subList(1, words.size()));
        }
      }
    }
    return commands;
  }
}
