package dev.dogleg.cli.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.cli.words.WhenGrammar;
import dev.dogleg.model.WallSpan;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The pages of formats say what the readers do. */
class FormatsPageTest {
  private static final Path ROOT = Path.of(System.getProperty("dogleg.root"));
  private static final Pattern CODE = Pattern.compile("\\[([a-z0-9-]+)\\]$", Pattern.MULTILINE);

  @TempDir Path dir;

  private static String page() throws IOException {
    return Files.readString(ROOT.resolve("docs/FORMATS.md"))
        + Files.readString(ROOT.resolve("docs/formats-week.md"))
        + Files.readString(ROOT.resolve("docs/formats-texts.md"))
        + Files.readString(ROOT.resolve("docs/formats-learn.md"));
  }

  @Test
  void everyFaultOfTheBadBooksStandsOnThePage() throws IOException {
    String page = page();
    Set<String> missing = new TreeSet<>();
    try (Stream<Path> files = Files.walk(ROOT.resolve("router-cli/src/test/resources/bad-books"))) {
      for (Path file : files.filter(one -> one.endsWith("faults.txt")).toList()) {
        Matcher code = CODE.matcher(Files.readString(file));
        while (code.find()) {
          if (!page.contains("`" + code.group(1) + "`")) {
            missing.add(code.group(1));
          }
        }
      }
    }
    assertEquals(Set.of(), missing);
  }

  @Test
  void everyColumnAndEveryKeyOfTheStarterCardStandsOnThePage() throws IOException {
    String page = page();
    for (Column column : Column.values()) {
      assertTrue(page.contains("`" + column.label() + "`"), column.label());
    }
    String card = Files.readString(ROOT.resolve("seeds/business.yaml"));
    Matcher key = Pattern.compile("^[ #-]*([a-z_]{3,}):", Pattern.MULTILINE).matcher(card);
    while (key.find()) {
      assertTrue(page.contains("`" + key.group(1) + "`"), key.group(1));
    }
  }

  @Test
  void theExamplesOfWhenAreRead() throws IOException {
    Matcher line = Pattern.compile("^Examples: (.*)$", Pattern.MULTILINE).matcher(page());
    assertTrue(line.find());
    Matcher example = Pattern.compile("`([^`]+)`").matcher(line.group(1));
    int found = 0;
    while (example.find()) {
      found++;
      assertTrue(
          WhenGrammar.read(example.group(1), new WallSpan(28_800, 64_800)).value().isPresent(),
          example.group(1));
    }
    assertTrue(found >= 7);
  }

  @Test
  void theThreeLinesPlanADay() throws IOException {
    Matcher lines = Pattern.compile("((?:^    .*,.*,.*\\n){3})", Pattern.MULTILINE).matcher(page());
    assertTrue(lines.find());
    String table = lines.group(1).replaceAll("(?m)^    ", "");
    assertEquals(
        2,
        Folder.in(dir).with("bookings.csv", table).read().book().orElseThrow().bookings().size());
  }
}
