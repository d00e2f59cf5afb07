package dev.dogleg.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The page of codes names those that the audit gives, and no others. */
class FindingsPageTest {
  /** Names of rules in reasons, which are no codes of findings. */
  private static final Set<String> REASONS =
      Set.of("arrive-within", "done-by", "van-within", "day-end");

  @Test
  void thePageNamesEveryCodeAndNoOther() throws Exception {
    Path root = Path.of(System.getProperty("dogleg.root"));
    Set<String> given = new TreeSet<>(List.of("arrival", "cost"));
    try (Stream<Path> files = Files.list(Path.of("src/main/java/dev/dogleg/audit"))) {
      for (Path file : files.toList()) {
        given.addAll(found("\"([a-z]+(?:-[a-z]+)+)\"", Files.readString(file)));
      }
    }
    given.removeAll(REASONS);
    String page = Files.readString(root.resolve("docs/FINDINGS.md"));
    Set<String> named = new TreeSet<>();
    for (String row : page.split("\n")) {
      if (row.startsWith("| `")) {
        named.addAll(found("`([a-z]+(?:-[a-z]+)*)`", row.substring(0, row.indexOf('|', 1))));
      }
    }
    assertEquals(given, named);
  }

  /** Each code stands in a test of the library: one that no test fires is seen. */
  @Test
  void aTestNamesEveryCode() throws Exception {
    StringBuilder tests = new StringBuilder();
    try (Stream<Path> files = Files.walk(Path.of("src/test/java"))) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        tests.append(Files.readString(file));
      }
    }
    Set<String> fired = found("([a-z]+(?:-[a-z]+)*)", tests.toString());
    Set<String> named = new TreeSet<>();
    for (String row :
        Files.readString(Path.of(System.getProperty("dogleg.root")).resolve("docs/FINDINGS.md"))
            .split("\n")) {
      if (row.startsWith("| `")) {
        named.addAll(found("`([a-z]+(?:-[a-z]+)*)`", row.substring(0, row.indexOf('|', 1))));
      }
    }
    named.removeAll(fired);
    assertEquals(Set.of(), named);
  }

  private static Set<String> found(String pattern, String text) {
    Set<String> found = new TreeSet<>();
    Matcher matcher = Pattern.compile(pattern).matcher(text);
    while (matcher.find()) {
      found.add(matcher.group(1));
    }
    return found;
  }
}
